import type { Place } from '../model/place.ts';
import { counted } from './herdEats.ts';
import { amount, derived, type OfferMap, type OfferPart, offerMap, sumIfAll } from './offered.ts';
import { grazingSeason, seasonDiet, withoutYear } from './seasonDiet.ts';
import { inYear } from './stages.ts';

const anyYear = 2001;
/** Days that grass feeds them: in a year that comes out right, from turn-in to the day on which the place means to begin with hay. Without both nobody knows. */
function grassDays({ season }: Place): OfferMap {
  if (season?.turnInDay === undefined || season.hayFromDay === undefined) return offerMap();
  const fromDay = inYear(season.turnInDay, anyYear);
  const inFirst = inYear(season.hayFromDay, anyYear);
  const hayDay = inFirst > fromDay ? inFirst : inYear(season.hayFromDay, anyYear + 1);
  return offerMap(amount('season.grassDays', hayDay - fromDay, `${withoutYear(fromDay)} to ${withoutYear(hayDay)}, your first day on hay`));
}
/** What all of the herd eat in a day, the mean of the season. */
function demand({ season, herd }: Place): OfferMap {
  const days = grazingSeason(season);
  const eaten = counted(herd).map((group) => group.weightLb && (group.countHead * group.weightLb * seasonDiet(group, days).intakePercent) / 100);
  return offerMap(derived('herd.seasonDemand', sumIfAll(eaten), days.says));
}
/** For forms of a whole season that ask for no line of the herd. */
export const part: OfferPart = ({ place }) => ({ single: new Map([...grassDays(place), ...demand(place)]) });
