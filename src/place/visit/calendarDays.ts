import type { CalendarEntry } from '../../../calculators/kit/define.ts';
import { dayOf } from '../../../calculators/units/printQuantity.ts';
import { type Audience, bareStep, bareWords, type Outgoing, placeCodeOf } from './audience.ts';
import { type Facts, isToldStep, stepWords } from './blocks.ts';

/** An entry that keeps its identity when others come and go. */
export interface VisitEntry extends CalendarEntry {
  readonly id: string;
}
/** Days of a visit that are still to come: steps that are not done, the next look, and the days that its results name. The same for whom the note is for. */
export function calendarDays(facts: Facts, audience: Audience, { blocks, results }: Outgoing, today: string): readonly VisitEntry[] {
  const { place, visit } = facts;
  const has = new Set(blocks.map(({ kind }) => kind));
  const isForProducer = audience === 'producer';
  const where = isForProducer ? place.name : placeCodeOf(facts);
  const bare = isForProducer ? (text: string) => text : bareWords(facts);
  // A slip of the year would stand in a calendar as long past.
  const from = today > visit.day ? today : visit.day;
  const entry = (id: string, iso: string | undefined, title: string, text: string): readonly VisitEntry[] => {
    const day = iso === undefined || iso < from ? undefined : dayOf(iso);
    return day === undefined ? [] : [{ id, day, title, text }];
  };
  const steps = visit.steps.filter((step) => isToldStep(step) && step.isDone !== true);
  return [
    ...(has.has('agreed')
      ? steps.flatMap((step) =>
          entry(`step-${step.id}`, step.byDay, stepWords({ ...bareStep(step, bare), byDay: undefined }, isForProducer), `Agreed for ${where}.`),
        )
      : []),
    ...(has.has('next') ? entry('next', visit.nextDay, `Next look: ${where}`, 'The same spots, the same hands, ground about as wet.') : []),
    ...results.flatMap((result) =>
      result.days.flatMap(({ day, title, text }, index) =>
        entry(`result-${result.id}-${index + 1}`, day, title, `${text} (${result.title}, ${where})`),
      ),
    ),
  ];
}
