// A fresh form as it stands today.

import { exampleDates, todayMarks } from '../../calculators/kit/clock.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { exampleOn, holding } from '../../calculators/kit/occurs.ts';
import { changeSystem, startTexts, type Texts, textIn, withMoved } from '../../calculators/kit/state.ts';
import { textAt } from '../../calculators/kit/textAt.ts';
import { withTextAt } from '../../calculators/kit/withTextAt.ts';
import type { Follow } from '../../calculators/ui/formProps.ts';
import type { Opening } from '../../calculators/ui/formState.ts';
import type { PlaceMarks, Whose } from '../../calculators/ui/props.ts';
import { dayOf } from '../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import type { Clock } from './clock.ts';

/** A form that nobody has typed in yet. */
export interface Fresh {
  readonly texts: Texts;
  readonly today: ReadonlyMap<string, Whose>;
  readonly notices: readonly string[];
  /** What the open place put in, by path, and what it says. */
  readonly placed?: ReadonlySet<string>;
  readonly place?: PlaceMarks;
}
/** The example of a calculator as it stands today. */
export function exampleBy({ deviceDay, answeredDay }: Clock, calculator: Calculator, system: UnitSystem): Fresh {
  const [day, mark] = answeredDay === undefined ? [deviceDay, todayMarks.device] : [answeredDay, todayMarks.answer];
  const { texts, todayAt, isExampleDates } = exampleOn(calculator, startTexts(calculator.inputs), day);
  return {
    texts: system === 'us' ? texts : changeSystem(calculator.inputs, texts, 'us', system),
    today: new Map(todayAt.map((at) => [at, mark])),
    notices: isExampleDates ? [exampleDates] : [],
  };
}

/** With other figures of the example, or of the place, in all that nobody typed. */
function movedOn(now: Parameters<Follow>[0], before: Fresh, after: Fresh): Opening {
  const { form, touched, placed } = now;
  const own = [...touched].filter((at) => !placed.has(at));
  const moved = (texts: Texts): Texts =>
    own.reduce(
      (all, at) => {
        const text = textAt(texts, at);
        return text === undefined ? all : withTextAt(all, at, text);
      },
      withMoved(texts, before.texts, after.texts),
    );
  // An empty form waits for its reader.
  const texts = now.blank.size > 0 ? form.this : moved(form.this);
  const stands = [...(after.placed ?? [])].filter((at) => !own.includes(at) && textAt(texts, at) === textAt(after.texts, at));
  const nowPlaced = new Set([...[...placed].filter((at) => before.placed?.has(at) !== true), ...stands]);
  return {
    ...now,
    form: { this: texts, that: form.that && moved(form.that) },
    touched: new Set([...own, ...nowPlaced]),
    placed: nowPlaced,
    today: after.today,
    place: after.place,
    notices: after.notices,
  };
}

/** Dates at the top of a form that its reader has given. */
const toldDates = ({ inputs }: Calculator, { form, touched, placed }: Parameters<Follow>[0]): Texts =>
  Object.fromEntries(
    Object.entries(inputs).flatMap(([key, { kind }]) => {
      const text = textIn(form.this[key]);
      return kind === 'date' && touched.has(key) && !placed.has(key) && dayOf(text) !== undefined ? [[key, text]] : [];
    }),
  );

export interface Dates {
  readonly follow: Follow;
  /** The same once somebody has said what day it is. */
  readonly answered: (clock: Clock, now: Parameters<Follow>[0]) => ReturnType<Follow>;
}
/** What goes by today and by the dates that a reader gives: all else that is dated, and what of a place fits those dates. */
export function datesOf(calculator: Calculator, begun: Clock, exampleOf: typeof exampleBy): Dates {
  let [clock, told]: [Clock, Texts] = [begun, {}];
  const answered: Dates['answered'] = (today, now) => {
    const given = toldDates(calculator, now);
    if (today === clock && JSON.stringify(given) === JSON.stringify(told)) return undefined;
    const freshBy = (day: Clock, dates: Texts): Fresh => exampleOf(day, holding(calculator, dates), now.system);
    const [before, after] = [freshBy(clock, told), freshBy(today, given)];
    // Nothing goes by dates that the form would refuse, such as a year that is half typed.
    if (after.notices.length > 0 && Object.keys(given).length > 0) return undefined;
    [clock, told] = [today, given];
    return movedOn(now, before, after);
  };
  return { answered, follow: (now) => answered(clock, now) };
}
