import type { ValuesOf } from '../../kit/inputs.ts';
import type { Between, SideNamed } from '../../kit/shown.ts';
import { headDaysForShare } from '../../math/forage/headDaysForShare.ts';
import { shareTaken } from '../../math/forage/shareTaken.ts';
import { gapRange } from '../../math/special/gapRange.ts';
import { studentQuantile } from '../../math/special/studentQuantile.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import type { inputs } from './inputs.ts';

/** The least that the method was printed with. */
export const fewestPlants = 20;

export function compute(asked: ValuesOf<typeof inputs>) {
  const { wantedPercent, knowsHeadDays, headDaysCount } = asked;
  const classes = (
    [
      [0, asked.noneCount],
      [10, asked.tenCount],
      [30, asked.thirtyCount],
      [50, asked.fiftyCount],
      [70, asked.seventyCount],
      [90, asked.ninetyCount],
    ] as const
  ).map(([takenPercent, plantsCount]) => ({ takenPercent, plantsCount }));
  const { takenPercent, lowPercent, highPercent, spreadPercent } = shareTaken(classes);
  const plantsCount = sumOf(classes, (each) => each.plantsCount);
  const lines = classes.map(({ takenPercent: classPercent, plantsCount: inClassCount }) => ({
    classPercent,
    inClassCount,
    product: classPercent * inClassCount,
    gaps: inClassCount * (classPercent - takenPercent) ** 2,
  }));
  const shareOf = (count: number): number => (100 * count) / plantsCount;
  const hardCount = asked.seventyCount + asked.ninetyCount;
  const stands: 'under' | 'open' | 'over' = highPercent <= wantedPercent ? 'under' : lowPercent > wantedPercent ? 'over' : 'open';
  const wasTaken = takenPercent > 0;
  const totalCount = wasTaken && knowsHeadDays ? headDaysForShare({ headDays: headDaysCount, wantedPercent, takenPercent }) : 0;
  const studentTimes = plantsCount > 1 ? studentQuantile(0.975, plantsCount - 1) : 0;
  return {
    enough: plantsCount < fewestPlants ? ('too-few' as const) : ('yes' as const),
    takenPercent,
    lowPercent,
    highPercent,
    stands,
    plantsCount,
    productSum: sumOf(lines, ({ product }) => product),
    gapSum: sumOf(lines, ({ gaps }) => gaps),
    lines,
    spreadPercent,
    studentTimes,
    offPercent: (studentTimes * spreadPercent) / Math.sqrt(plantsCount),
    bittenPercent: shareOf(plantsCount - asked.noneCount),
    hardCount,
    lightCount: asked.tenCount + asked.thirtyCount,
    hardPercent: shareOf(hardCount),
    totalCount,
    leftCount: Math.max(0, totalCount - headDaysCount),
    overCount: totalCount > 0 ? Math.max(0, headDaysCount - totalCount) : 0,
  };
}

type Taken = SideNamed<'takenPercent' | 'lowPercent' | 'highPercent' | 'plantsCount'>;
/** From where to where another share taken may lie over this one, 95 times in 100. */
export function takenGap(here: Taken, there: Taken): Between {
  const rangeOf = ({ number }: Taken) => ({ value: number('takenPercent'), low: number('lowPercent'), high: number('highPercent') });
  const { low, high } = gapRange({ earlier: rangeOf(here), later: rangeOf(there) });
  const isFew = Math.min(here.number('plantsCount'), there.number('plantsCount')) < fewestPlants;
  return { low, high, ...(isFew ? { hint: `under ${fewestPlants} plants` } : {}) };
}
