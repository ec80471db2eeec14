import type { Calculator, Outcome } from '../../../calculators/kit/define.ts';
import { leavesRecord } from '../../../calculators/kit/link.ts';
import { noteOf } from '../../../calculators/kit/note.ts';
import { printName } from '../../../calculators/kit/print.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { type Result, resultVersion } from '../model/result.ts';
import type { Begun } from './newVisit.ts';

interface Keeping {
  readonly begun: Begun;
  readonly calculator: Calculator;
  readonly link: string;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
  /** What lies between two sides, in a line. */
  readonly between: string;
  readonly system: UnitSystem;
  readonly placeId: string;
  readonly visitId: string;
  readonly pastureIds: readonly string[];
  readonly keptDay: string;
  readonly edition: string;
  readonly sources: readonly string[];
  /** Whose figures they are, where not all are the reader’s own. */
  readonly stamp: string;
}
const nameOf = (text: string): string => text.slice(0, 200) || '–';
/** Each once. One that stands for one of two sides alone begins with the name of that side. */
function cautionsOf(outcome: Outcome, other: Outcome | null, titles: Keeping['titles']): Result['cautions'] {
  const isIn = (side: Outcome, say: string): boolean => side.cautions.some((each) => each.say === say);
  const alone = (side: Outcome, title: string, beside: Outcome | null) =>
    side.cautions.map(({ lead, say, source }) =>
      beside === null || isIn(beside, say) ? { lead, say, source } : { lead: `${title}: ${lead}`, say: `${title}: ${say}`, source },
    );
  const all = [...alone(outcome, titles[0] || 'This', other), ...(other ? alone(other, titles[1] || 'That', outcome) : [])];
  return all.filter(({ say }, index) => all.findIndex((each) => each.say === say) === index);
}
/** What stands under a form, as it is kept: words and numbers, not only the link that gives them. */
export function keptResult({
  begun,
  calculator,
  link,
  outcome,
  other,
  titles,
  between,
  system,
  sources,
  pastureIds,
  stamp,
  ...where
}: Keeping): Result {
  const figures = (side: Outcome, title: string) =>
    side.shown
      .filter((name) => calculator.quantities[name]?.kind !== 'rows')
      .map((name) => {
        const label = calculator.quantities[name]?.label ?? name;
        const range = side.ranges[name];
        return {
          label: nameOf(title === '' ? label : `${title}: ${label}`),
          text: printName(calculator, side.values, name, system),
          ...(range === undefined ? {} : { range }),
        };
      });
  return {
    ...begun,
    v: resultVersion,
    ...where,
    pastureIds: [...pastureIds],
    slug: calculator.slug,
    version: calculator.version,
    title: nameOf(calculator.title),
    link,
    // Whom to call stands in the note once, not under each result.
    note: noteOf({ ...calculator, weighsOnPeople: false }, outcome, other, titles, between),
    ...(stamp === '' ? {} : { stamp: nameOf(stamp) }),
    shown: other ? [...figures(outcome, titles[0]), ...figures(other, titles[1])] : figures(outcome, ''),
    cautions: cautionsOf(outcome, other, titles),
    ...(other ? { sides: [nameOf(titles[0]), nameOf(titles[1])] as [string, string] } : {}),
    sources: [...sources],
    days: outcome.calendar.map(({ day, title, text }) => ({ day: isoDay(day), title: nameOf(title), text })),
    hasRecord: [outcome, other].some((each) => each && leavesRecord(calculator.inputs, each.values)),
    weighsOnPeople: calculator.weighsOnPeople,
  };
}
