import { max, mean, min } from 'd3-array';
import { rootStoppage } from '../../tables/rootStoppage.ts';
import { need, needThere } from '../need.ts';
import { interpolated } from '../special/interpolated.ts';

/**
 * Roots that stop growing for some days after one clipping, by the share of the top that was taken: the four published tests, straight between their rows,
 * as mean, lowest and highest. The single column that is copied everywhere is one of the four.
 * @param removedPercent - Share of the top taken, percent; 0 to 90
 * @returns Roots stopped three days later, percent: mean of the tests, lowest, highest
 * @throws RangeError if `removedPercent` is outside its range
 * @source crider-1955, tests 1 to 4
 * @example rootsStoppedPercent(50) //=> { meanPercent: 15.25, lowPercent: 2, highPercent: 38 }
 */
export function rootsStoppedPercent(removedPercent: number): {
  readonly meanPercent: number;
  readonly lowPercent: number;
  readonly highPercent: number;
} {
  need('rootsStoppedPercent', 'removedPercent', removedPercent, { atLeast: 0, atMost: 90 });
  const stopped = rootStoppage.stoppedPercent.map((test) => interpolated(removedPercent, rootStoppage.removedPercent, test));
  const of = (found: number | undefined): number => needThere('rootsStoppedPercent', 'test', found);
  return { meanPercent: of(mean(stopped)), lowPercent: of(min(stopped)), highPercent: of(max(stopped)) };
}
