// What a fresh form does once somebody gives a date, or says what day it is. Fetched once the form is live.

import type { Calculator } from '../../calculators/kit/define.ts';
import { holding } from '../../calculators/kit/holding.ts';
import { movedTexts } from '../../calculators/kit/movedTexts.ts';
import { type Texts, textIn } from '../../calculators/kit/state.ts';
import { textAt } from '../../calculators/kit/textAt.ts';
import { withTextAt } from '../../calculators/kit/withTextAt.ts';
import type { Change } from '../../calculators/ui/formProps.ts';
import type { Follow, Opening } from '../../calculators/ui/formState.ts';
import { dayOf } from '../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import type { Clock } from './clock.ts';
import type { Fresh } from './today.ts';

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
      movedTexts(texts, before.texts, after.texts),
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

interface Dates {
  readonly root: Element;
  readonly id: string;
  readonly calculator: Calculator;
  readonly clock: Clock;
  readonly exampleBy: (clock: Clock, calculator: Calculator, system: UnitSystem) => Fresh;
  readonly latest: () => Change | undefined;
  readonly open: (opening: Opening) => void;
}
/**
 * What goes by today and by the dates that a reader gives: all else that is dated, and what of a place fits those dates. Where the clock is doubted, today
 * is asked for.
 */
export function followDates({ root, id, calculator, clock: begun, exampleBy, latest, open }: Dates): Follow {
  let [clock, told]: [Clock, Texts] = [begun, {}];
  let stood: { readonly system: UnitSystem; readonly fresh: Fresh } | undefined;
  const followOn = (today: Clock, now: Parameters<Follow>[0]): Opening | undefined => {
    const given = toldDates(calculator, now);
    if (today === clock && JSON.stringify(given) === JSON.stringify(told)) return undefined;
    const freshBy = (day: Clock, dates: Texts): Fresh => exampleBy(day, holding(calculator, dates), now.system);
    // Kept, because each key in a date asks again.
    const before = stood?.system === now.system ? stood.fresh : freshBy(clock, told);
    const after = freshBy(today, given);
    // Nothing goes by dates that the form would refuse, such as a year that is half typed.
    if (after.notices.length > 0 && Object.keys(given).length > 0) return undefined;
    [clock, told, stood] = [today, given, { system: now.system, fresh: after }];
    return movedOn(now, before, after);
  };
  /** What has been given before this had come counts too. */
  const goOn = (today: Clock): void => {
    const change = latest();
    const opening = change && followOn(today, change);
    if (opening) open(opening);
  };
  goOn(begun);
  if (begun.isDoubted) void import('./askToday.tsx').then(({ askToday }) => askToday({ root, id, clock: begun, answered: goOn })).catch(console.info);
  return (now) => followOn(clock, now);
}
