import type { CalendarEntry } from '../../../calculators/kit/define.ts';
import { dayOf } from '../../../calculators/units/printQuantity.ts';
import { type Audience, type Outgoing, usualPlaceCode } from './audience.ts';
import { type Facts, isToldStep, stepWords } from './blocks.ts';
import { hiddenNames, withoutNames } from './names.ts';

/** An entry that keeps its identity when others come and go. */
export interface VisitEntry extends CalendarEntry {
  readonly id: string;
}
/** Days of a visit: steps and the next look that do not come before it, and the days that its results name. The same for whom the note is for. */
export function calendarDays(facts: Facts, audience: Audience, { blocks, results }: Outgoing): readonly VisitEntry[] {
  const { place, visit, note } = facts;
  const has = new Set(blocks.map(({ kind }) => kind));
  const code = note?.placeCode?.trim() || usualPlaceCode;
  const hidden = audience === 'office' ? hiddenNames(place, visit, code, note?.hasPastureNames === true) : [];
  const bare = (text: string): string => withoutNames(text, hidden);
  const where = bare(place.name);
  const entry = (id: string, iso: string | undefined, title: string, text: string): readonly VisitEntry[] => {
    const day = iso === undefined ? undefined : dayOf(iso);
    return day === undefined ? [] : [{ id, day, title: bare(title), text: bare(text) }];
  };
  /** A slip of the year would stand in a calendar as long past. */
  const comes = (iso: string | undefined): string | undefined => (iso !== undefined && iso >= visit.day ? iso : undefined);
  return [
    ...(has.has('agreed')
      ? visit.steps
          .filter(isToldStep)
          .flatMap((step) =>
            entry(`step-${step.id}`, comes(step.byDay), stepWords({ ...step, byDay: undefined }, audience === 'producer'), `Agreed for ${where}.`),
          )
      : []),
    ...(has.has('next') ? entry('next', comes(visit.nextDay), `Next look: ${where}`, 'The same spots, the same hands, ground about as wet.') : []),
    ...results.flatMap((result) =>
      result.days.flatMap(({ day, title, text }, index) =>
        entry(`result-${result.id}-${index + 1}`, day, title, `${text} (${result.title}, ${where})`),
      ),
    ),
  ];
}
