import { designStorms } from '../../tables/designStorms.ts';
import type { RainType } from '../../tables/peakFlow.ts';
import { need, needThere } from '../need.ts';
import type { RainStep } from './stormInfiltration.ts';

const column = { i: 1, ia: 2, ii: 3, iii: 4 } as const;

/**
 * Share of a day's rain that has fallen by an hour, by the 24-hour distribution `rainType`, linear between the printed times.
 * @param rainType - 24-hour rain distribution; `i`, `ia`, `ii` or `iii`
 * @param hour - Hours from the start of the day; 0 to 24
 * @returns Share of the day's rain, 0 to 1
 * @throws RangeError if `hour` is outside 0 to 24
 * @source scs-1986-distributions, mass curves
 * @example designStormShare('ii', 12) //=> 0.663
 */
export function designStormShare(rainType: RainType, hour: number): number {
  need('designStormShare', 'hour', hour, { atLeast: 0, atMost: 24 });
  const { rows } = designStorms;
  const at = rows.findIndex(([each]) => each >= hour);
  const above = needThere('designStormShare', `time from ${hour} h`, rows[at]);
  const below = rows[at - 1] ?? above;
  const [high, low] = [above[column[rainType]], below[column[rainType]]];
  return above[0] === below[0] ? high : low + ((high - low) * (hour - below[0])) / (above[0] - below[0]);
}

/**
 * A day's rain cut into equal steps after a 24-hour distribution: each step gets `rainCm` times the share that falls in it.
 * @param options.rainType - 24-hour rain distribution; `i`, `ia`, `ii` or `iii`
 * @param options.rainCm - Rain of the day, cm; 0 or more
 * @param options.stepHours - Length of a step, hours; from 0.05, and 24 must be a whole number of steps
 * @returns Steps with hours and rain in cm, which add up to 24 hours and `rainCm`
 * @throws RangeError if a parameter is outside its range
 * @source scs-1986-distributions, mass curves
 * @example designStormSteps({ rainType: 'iii', rainCm: 10, stepHours: 12 }) //=> [{ hours: 12, rainCm: 5 }, { hours: 12, rainCm: 5 }]
 */
export function designStormSteps({ rainType, rainCm, stepHours }: { rainType: RainType; rainCm: number; stepHours: number }): RainStep[] {
  need('designStormSteps', 'rainCm', rainCm, { atLeast: 0 });
  need('designStormSteps', 'stepHours', stepHours, { atLeast: 0.05, atMost: 24 });
  const count = Math.round(24 / stepHours);
  need('designStormSteps', '24 / stepHours', Math.abs(24 / stepHours - count) < 1e-9 ? count : 24 / stepHours, { whole: true });
  return Array.from({ length: count }, (_, index) => ({
    hours: 24 / count,
    rainCm: rainCm * (designStormShare(rainType, ((index + 1) * 24) / count) - designStormShare(rainType, (index * 24) / count)),
  }));
}

/**
 * A day's rain cut at the very times at which the 24-hour distribution `rainType` is printed. Between two of them it rains at one rate, so that nothing
 * of the distribution is smoothed away: its hardest quarter hour stays as hard as it is printed.
 * @param rainType - 24-hour rain distribution; `i`, `ia`, `ii` or `iii`
 * @param rainCm - Rain of the day, cm; 0 or more
 * @returns Stretches with hours and rain in cm, which add up to 24 hours and `rainCm`
 * @throws RangeError if `rainCm` is negative
 * @source scs-1986-distributions, mass curves
 * @example designStormStretches('ii', 10).length //=> 22
 */
export function designStormStretches(rainType: RainType, rainCm: number): RainStep[] {
  need('designStormStretches', 'rainCm', rainCm, { atLeast: 0 });
  const times = designStorms.rows.map(([hour]) => hour);
  return times.slice(1).map((hour, index) => {
    const before = needThere('designStormStretches', 'time before', times[index]);
    return { hours: hour - before, rainCm: rainCm * (designStormShare(rainType, hour) - designStormShare(rainType, before)) };
  });
}
