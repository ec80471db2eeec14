import { amount, type OfferPart, offerMap } from './offered.ts';
import { withoutYear } from './seasonDiet.ts';
import { inYear } from './stages.ts';

const anyYear = 2001;
/** Days that grass feeds them: in a year that comes out right, from turn-in to the day on which the place means to begin with hay. Without both nobody knows. */
export const part: OfferPart = ({ place: { season } }) => {
  if (season?.turnInDay === undefined || season.hayFromDay === undefined) return {};
  const fromDay = inYear(season.turnInDay, anyYear);
  const inFirst = inYear(season.hayFromDay, anyYear);
  const hayDay = inFirst > fromDay ? inFirst : inYear(season.hayFromDay, anyYear + 1);
  return {
    single: offerMap(amount('season.grassDays', hayDay - fromDay, `${withoutYear(fromDay)} to ${withoutYear(hayDay)}, your first day on hay`)),
  };
};
