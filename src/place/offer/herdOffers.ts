import { monthKeys } from '../../../calculators/units/months.ts';
import type { HerdGroup } from '../model/herdGroup.ts';
import type { Place } from '../model/place.ts';
import { counted, eachLbPerDay, groupLbPerDay, mainOf } from './herdEats.ts';
import { kindNames } from './kindNames.ts';
import {
  amount,
  derived,
  meanIfAll,
  monthDay,
  type OfferedRow,
  type OfferMap,
  type OfferPart,
  offerMap,
  sumIfAll,
  told,
  word,
  yesNo,
} from './offered.ts';
import { daysSinceBirth, intakePercentAt, isBreeding, stageOf } from './stages.ts';
import { animalsOf, stockWords } from './words.ts';

const birthMonth = ({ birthsDay }: HerdGroup): string | undefined =>
  birthsDay === undefined ? undefined : monthKeys()[Number(birthsDay.slice(0, 2)) - 1];

/** A line for each kind of stock. */
const herdRows = ({ herd }: Place, todayDay: number): readonly OfferedRow[] =>
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

/** What is told of the whole herd, of its cows, and of the kind that eats most. */
function herdOffers({ herd, yardstickLbPerDay }: Place, todayDay: number): OfferMap {
  const groups = counted(herd);
  const cows = groups.filter(({ kind }) => kind === 'cow');
  const nursing = cows.filter((group) => stageOf(group, todayDay) === 'nursing');
  const ages = nursing.flatMap(({ birthsDay, countHead }) =>
    birthsDay === undefined ? [] : [{ value: daysSinceBirth(birthsDay, todayDay), weight: countHead }],
  );
  const age = meanIfAll(ages);
  const main = mainOf(groups, todayDay);
  const breeders = groups.filter(({ kind }) => isBreeding(kind));
  return offerMap(
    derived('herd.demand', sumIfAll(groups.map((group) => groupLbPerDay(group, todayDay)))),
    amount('herd.yardstick', yardstickLbPerDay),
    amount('herd.cows', sumIfAll(cows.map(({ countHead }) => countHead))),
    derived('herd.cowWeight', meanIfAll(cows.map(({ weightLb, countHead }) => ({ value: weightLb, weight: countHead })))),
    amount('herd.calfAge', age === undefined ? undefined : Math.round(age)),
    main ? [...word('herd.mainAnimals', animalsOf[main.kind]), ...amount('herd.mainWeight', main.weightLb)] : [],
    main ? derived('herd.mainEats', eachLbPerDay(main, todayDay)) : [],
    breeders.length > 0 && breeders.every(({ birthsDay }) => birthsDay !== undefined) ? word('herd.stageFrom', 'birth-month') : [],
    groups.length > 0 && groups.every(({ ownIntakePercent }) => ownIntakePercent !== undefined) ? word('herd.intakeFrom', 'own') : [],
  );
}

export const part: OfferPart = ({ place, todayDay }) => ({ single: herdOffers(place, todayDay), tables: { herd: herdRows(place, todayDay) } });
