import type { Place } from '../model/place.ts';
import { counted } from './herdEats.ts';
import { herdRows } from './herdOffers.ts';
import { derived, type OfferedRow, type OfferPart, offerMap, word } from './offered.ts';
import { grazingSeason, seasonDiet, winter, winterDiet } from './seasonDiet.ts';
import { stockWords } from './words.ts';

/** The same lines, with what each eats over the grazing season, and over the winter. */
function seasonRows(place: Place, todayDay: number): readonly OfferedRow[] {
  const days = grazingSeason(place.season);
  const winterDays = winter(place.season);
  const groups = counted(place.herd);
  return herdRows(place, todayDay).map((row, index) => {
    const group = groups[index];
    if (group === undefined) return row;
    const { stage, intakePercent, says } = seasonDiet(group, days);
    const cold = winterDiet(group, winterDays);
    const cells = offerMap(
      word('herd.seasonKind', stockWords(group.kind, stage, group.weightLb)),
      derived('herd.seasonIntake', intakePercent, says),
      word('herd.winterKind', stockWords(group.kind, cold.stage, group.weightLb)),
      derived('herd.winterIntake', cold.intakePercent, cold.says),
    );
    return { ...row, cells: new Map([...row.cells, ...cells]) };
  });
}

/** For forms of a whole season or winter, on whatever day they are opened. */
export const part: OfferPart = ({ place, todayDay }) => ({ tables: { herd: seasonRows(place, todayDay) } });
