import { monthKeys } from '../../../calculators/units/months.ts';
import type { HerdGroup } from '../model/herdGroup.ts';
import type { Place } from '../model/place.ts';
import { counted, groupLbPerDay } from './herdEats.ts';
import { kindNames } from './kindNames.ts';
import { amount, monthDay, type OfferedRow, type OfferPart, offerMap, told, word, yesNo } from './offered.ts';
import { intakePercentAt, isBreeding, stageOf } from './stages.ts';
import { stockWords } from './words.ts';

const birthMonth = ({ birthsDay }: HerdGroup): string | undefined =>
  birthsDay === undefined ? undefined : monthKeys()[Number(birthsDay.slice(0, 2)) - 1];

/** A line for each kind of stock. */
export const herdRows = ({ herd }: Place, todayDay: number): readonly OfferedRow[] =>
  counted(herd).map((group) => {
    const stage = stageOf(group, todayDay);
    return {
      name: kindNames[group.kind],
      // Without a weight it cannot be told what they eat: those go last.
      size: groupLbPerDay(group, todayDay) ?? 0,
      cells: offerMap(
        word('herd.kind', stockWords(group.kind, stage, group.weightLb)),
        isBreeding(group.kind) ? word('herd.stage', stage) : [],
        told('herd.count', group, 'countHead'),
        told('herd.weight', group, 'weightLb'),
        amount('herd.intake', intakePercentAt(group, stage)),
        amount('herd.dryIntake', intakePercentAt(group, 'dry')),
        amount('herd.nursingIntake', intakePercentAt(group, 'nursing')),
        yesNo('herd.births', group.birthsDay !== undefined),
        monthDay('herd.birth', group.birthsDay),
        word('herd.birthMonth', birthMonth(group)),
      ),
    };
  });

/** A row for each kind, and what one of the main kind eats where somebody has set it. */
export const part: OfferPart = ({ place, todayDay }) => ({
  single: offerMap(amount('herd.yardstick', place.yardstickLbPerDay)),
  tables: { herd: herdRows(place, todayDay) },
});
