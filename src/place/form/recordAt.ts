// What the record of the open place puts into a form. Fetched only by forms that ask for it, at places that have one.
import type { Calculator } from '../../../calculators/kit/define.ts';
import { fetchReaders } from '../../../calculators/kit/record/fetchReaders.ts';
import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';
import type { RecordOffers } from '../offer/offered.ts';
import { recordOffers } from '../offer/recordOffers.ts';

/** By the day that a form takes for today. A line that cannot be read costs the form its record and nothing else. */
export async function recordAt({ inputs }: Calculator, place: Place, rows: readonly Row[]): Promise<(todayDay: number) => RecordOffers | undefined> {
  // A form whose record is read later reads this one at once.
  await fetchReaders(inputs);
  return (todayDay) => {
    try {
      return recordOffers(place, rows, todayDay);
    } catch (error) {
      console.info(error);
      return undefined;
    }
  };
}
