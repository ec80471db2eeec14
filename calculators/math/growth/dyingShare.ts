import { need } from '../need.ts';

/**
 * Share of the green that dies in a day: a + d (1 − W) + f on a day of hard frost, with a = `byAge`, d = `byDrought`, f = `byFrost`, W = `waterShare`.
 * @param options.waterShare - Share of their wanted water that plants got today; 0 to 1
 * @param options.isHardFrost - Whether the night was cold enough to kill leaves
 * @param options.byAge - Share that dies of age in a day; 0 to 1
 * @param options.byDrought - Share more that dies in a day without any water; 0 to 1
 * @param options.byFrost - Share more that dies after a hard frost; 0 to 1
 * @returns Share of the green, 0 to 1
 * @throws RangeError if a parameter is outside its range, or the three add up past 1
 * @source our own; the three shares are held to what is known to die uneaten
 * @example dyingShare({ waterShare: 0.5, isHardFrost: false, byAge: 0.008, byDrought: 0.012, byFrost: 0.03 }) //=> 0.014
 */
export function dyingShare({
  waterShare,
  isHardFrost,
  byAge,
  byDrought,
  byFrost,
}: {
  readonly waterShare: number;
  readonly isHardFrost: boolean;
  readonly byAge: number;
  readonly byDrought: number;
  readonly byFrost: number;
}): number {
  need('dyingShare', 'waterShare', waterShare, { atLeast: 0, atMost: 1 });
  need('dyingShare', 'byAge', byAge, { atLeast: 0, atMost: 1 });
  need('dyingShare', 'byDrought', byDrought, { atLeast: 0, atMost: 1 });
  need('dyingShare', 'byFrost', byFrost, { atLeast: 0, atMost: 1 });
  need('dyingShare', 'all three together', byAge + byDrought + byFrost, { atMost: 1 });
  return byAge + byDrought * (1 - waterShare) + byFrost * (isHardFrost ? 1 : 0);
}
