import type { ValuesOf } from '../../kit/inputs.ts';
import type { Between, SideNamed } from '../../kit/shown.ts';
import { conditionClass, type Grazing, type HydrologicCondition } from '../../math/runoff/conditionClass.ts';
import { coverChange } from '../../math/soil/coverChange.ts';
import { groundCover } from '../../math/soil/groundCover.ts';
import { pointsToSettle } from '../../math/soil/pointsToSettle.ts';
import { agriculturalCovers, rangeCovers } from '../../tables/curveNumbers.ts';
import type { inputs } from './inputs.ts';

/** From fewer steps no share is told as the answer: half of thirty can be 31 to 69 percent of the ground. Our own. */
const fewestSteps = 30;
/** Nobody walks more than this to settle a class. */
const mostSteps = 2000;

/** Limits that can decide the class under that grazing: grazing down to half never makes it good, and hard grazing is poor whatever the count. */
const limitsFor = (grazing: Grazing, lowerPercent: number, upperPercent: number): readonly number[] =>
  grazing === 'light' || grazing === 'rested' ? [lowerPercent, upperPercent] : [lowerPercent];

type Standing = HydrologicCondition | 'poor-or-fair' | 'fair-or-good' | 'any';
const between = (low: HydrologicCondition, high: HydrologicCondition): Standing =>
  low === high ? low : low === 'poor' ? (high === 'fair' ? 'poor-or-fair' : 'any') : 'fair-or-good';

export function compute({ country, plantCount, litterCount, rockCount, bareCount, grazing }: ValuesOf<typeof inputs>) {
  const stepsCount = plantCount + litterCount + rockCount + bareCount;
  const coverOf = (hits: number) => groundCover({ hits, points: stepsCount });
  const covered = coverOf(plantCount + litterCount + rockCount);
  const sod = coverOf(plantCount + litterCount);
  const line = <K extends string>(ground: K, hitCount: number) => {
    const { coverPercent, lowPercent, highPercent } = coverOf(hitCount);
    return { ground, hitCount, sharePercent: coverPercent, fromPercent: lowPercent, toPercent: highPercent };
  };
  const { poorBelowPercent, goodAbovePercent } = country === 'humid' ? agriculturalCovers : rangeCovers;
  const classAt = (groundCoverPercent: number) => conditionClass({ groundCoverPercent, grazing, poorBelowPercent, goodAbovePercent });
  const standing = between(classAt(sod.lowPercent), classAt(sod.highPercent));
  const isSettled = standing === 'poor' || standing === 'fair' || standing === 'good';
  const limitPercent = limitsFor(grazing, poorBelowPercent, goodAbovePercent).reduce((nearest, limit) =>
    Math.abs(sod.coverPercent - limit) < Math.abs(sod.coverPercent - nearest) ? limit : nearest,
  );
  const isAtLimit = sod.coverPercent === limitPercent;
  const wantedCount = isSettled || isAtLimit ? stepsCount : pointsToSettle({ sharePercent: sod.coverPercent, limitPercent });
  const isWorthIt = !isAtLimit && wantedCount <= Math.max(mostSteps, stepsCount);
  return {
    stepsCount,
    enough: stepsCount < fewestSteps ? ('too-few' as const) : ('yes' as const),
    coveredPercent: covered.coverPercent,
    coveredLowPercent: covered.lowPercent,
    coveredHighPercent: covered.highPercent,
    sodPercent: sod.coverPercent,
    sodLowPercent: sod.lowPercent,
    sodHighPercent: sod.highPercent,
    poorBelowPercent,
    goodAbovePercent,
    condition: classAt(sod.coverPercent),
    standing,
    limitPercent,
    distancePercent: Math.abs(sod.coverPercent - limitPercent),
    settles: isSettled ? ('settled' as const) : isWorthIt ? ('more-steps' as const) : ('at-limit' as const),
    wantedCount: isWorthIt ? wantedCount : stepsCount,
    moreCount: isWorthIt ? Math.max(0, wantedCount - stepsCount) : 0,
    kinds: [line('plant', plantCount), line('litter', litterCount), line('rock', rockCount), line('bare', bareCount)],
  };
}

type Counted = SideNamed<'stepsCount' | 'bareCount'>;
/** From where to where the cover of another count may lie over that of this one, 95 times in 100. */
export function coveredGap(here: Counted, there: Counted): Between {
  const countOf = ({ number }: Counted) => ({ hits: number('stepsCount') - number('bareCount'), points: number('stepsCount') });
  const [earlier, later] = [countOf(here), countOf(there)];
  const { low, high } = coverChange({ earlier, later, confidencePercent: 95 });
  const isFew = Math.min(earlier.points, later.points) < fewestSteps;
  return { low: 100 * low, high: 100 * high, ...(isFew ? { hint: `under ${fewestSteps} steps` } : {}) };
}
