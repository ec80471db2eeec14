// What the results of earlier visits read with a form's own test. Fetched only where there are any.
import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Place } from '../model/place.ts';
import type { Result } from '../model/result.ts';
import type { EarlierTest } from '../offer/offered.ts';
import { areOwnReadings } from '../visit/ownReadings.ts';
import { isSameSeason, readingsOf, toolWords } from '../visit/readings.ts';

/** Up to a day; `dayOf` tells the day of a result. Left out: what holds figures of an example, what could not be judged, and what a form no longer takes. */
export function earlierTests(
  calculator: Calculator,
  place: Place,
  results: readonly Result[],
  dayOf: (resultId: string) => string | undefined,
): (before: string) => readonly EarlierTest[] {
  const tests = results.flatMap((result) => {
    const { id, link, pastureIds } = result;
    const day = dayOf(id);
    const read = day === undefined || !(place.isDemo === true || areOwnReadings(calculator, result)) ? undefined : readingsOf(calculator, link);
    if (day === undefined || read === undefined || read.bars.length > 0) return [];
    return [{ day, pastureIds, readings: read.readings, tool: toolWords(read) }];
  });
  return (before) => tests.filter(({ day }) => day < before).map((test) => ({ ...test, isOtherSeason: !isSameSeason(test.day, before) }));
}
