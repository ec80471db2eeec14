import { checkList } from '../checks.ts';
import { coreDensity } from './coreDensity.ts';
import { dryWeightG } from './gravimetricWaterPercent.ts';

const problems = { source: 'ucdavis-ssc100', seen: 'print' } as const;

export default checkList('coreDensity', [
  {
    what: '575 g dry in 400 cm3',
    ours: () => coreDensity({ dryG: 575, volumeCm3: 400 }).wholeGPerCm3,
    printed: '1.44',
    where: 'problem 1',
    ...problems,
  },
  {
    what: '600 g with 10 % water in 400 cm3',
    ours: () => coreDensity({ dryG: dryWeightG(600, 10), volumeCm3: 400 }).wholeGPerCm3,
    printed: '1.36',
    where: 'problem 2',
    ...problems,
  },
  {
    what: '650 g with 12 % water in 446.4 cm3',
    ours: () => coreDensity({ dryG: dryWeightG(650, 12), volumeCm3: 446.4 }).wholeGPerCm3,
    printed: '1.3',
    where: 'problem 3',
    ...problems,
  },
  {
    what: '320 g with 15 % water in 12 by 6 by 4 cm',
    ours: () => coreDensity({ dryG: dryWeightG(320, 15), volumeCm3: 12 * 6 * 4 }).wholeGPerCm3,
    printed: '0.97',
    where: 'problem 4',
    ...problems,
  },
  {
    what: '497 g dry in 350 cm3',
    ours: () => coreDensity({ dryG: 497, volumeCm3: 350 }).wholeGPerCm3,
    printed: '1.42',
    where: 'problem 5',
    ...problems,
  },
  {
    what: 'loam with 20 % stones by weight: density of the fine earth back from the whole',
    ours: () => coreDensity({ dryG: 157.7, volumeCm3: 100, stoneG: 31.54 }).fineGPerCm3,
    printed: '1.432',
    source: 'saxton-rawls-2006',
    where: 'equations 19 and 20 turned round, worked in another program',
    seen: 'computed',
  },
]);
