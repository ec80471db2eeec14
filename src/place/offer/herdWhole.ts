import type { Place } from '../model/place.ts';
import type { StockKind } from '../model/words.ts';
import { counted, eachLbPerDay } from './herdEats.ts';
import { mainOf } from './mainOf.ts';
import { amount, derived, meanIfAll, type OfferMap, type OfferPart, offerMap, sumIfAll, word } from './offered.ts';
import { daysSinceBirth, isBreeding, stageOf } from './stages.ts';

/** What eats and drinks it, as a form about poisons has it. */
export const animalsOf: Readonly<Record<StockKind, 'adult-cattle' | 'calves' | 'sheep-or-goats' | 'horses'>> = {
  cow: 'adult-cattle',
  heifer: 'adult-cattle',
  bull: 'adult-cattle',
  stocker: 'adult-cattle',
  calf: 'calves',
  ewe: 'sheep-or-goats',
  lamb: 'sheep-or-goats',
  doe: 'sheep-or-goats',
  horse: 'horses',
};

/** What is told of the whole herd, of its cows, and of the kind that eats most. */
function herdOffers({ herd }: Place, todayDay: number): OfferMap {
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
    amount('herd.cows', sumIfAll(cows.map(({ countHead }) => countHead))),
    derived('herd.cowWeight', meanIfAll(cows.map(({ weightLb, countHead }) => ({ value: weightLb, weight: countHead })))),
    amount('herd.calfAge', age === undefined ? undefined : Math.round(age)),
    main ? [...word('herd.mainAnimals', animalsOf[main.kind]), ...amount('herd.mainWeight', main.weightLb)] : [],
    main ? derived('herd.mainEats', eachLbPerDay(main, todayDay)) : [],
    breeders.length > 0 && breeders.every(({ birthsDay }) => birthsDay !== undefined) ? word('herd.stageFrom', 'birth-month') : [],
    groups.length > 0 && groups.every(({ ownIntakePercent }) => ownIntakePercent !== undefined) ? word('herd.intakeFrom', 'own') : [],
  );
}

export const part: OfferPart = ({ place, todayDay }) => ({ single: herdOffers(place, todayDay) });
