import { need } from '../need.ts';

/**
 * Most of a ration that a high feed may be, so that the whole stays at a limit: s = 100 (L − l) / (h − l), with L = `limitPpm`, h = `highPpm`, l = `lowPpm`,
 * all on dry matter. It counts feed only: nitrate in the water comes on top, and a mix that animals can sort is no mix.
 * @param options.limitPpm - Limit for the whole ration, ppm; above `lowPpm`
 * @param options.highPpm - The high feed, ppm; above 0
 * @param options.lowPpm - The feed that it is mixed with, ppm; 0 or more
 * @returns Share of the high feed, percent of the ration's dry matter; 100 if it is at or under the limit itself
 * @throws RangeError if a value is outside its range
 * @source amaglab-nitrate-mixing, equation solved for the share
 * @example dilutionSharePercent({ limitPpm: 1500, highPpm: 4500, lowPpm: 500 }) //=> 25
 */
export function dilutionSharePercent({
  limitPpm,
  highPpm,
  lowPpm,
}: {
  readonly limitPpm: number;
  readonly highPpm: number;
  readonly lowPpm: number;
}): number {
  need('dilutionSharePercent', 'lowPpm', lowPpm, { atLeast: 0 });
  need('dilutionSharePercent', 'limitPpm', limitPpm, { above: lowPpm });
  need('dilutionSharePercent', 'highPpm', highPpm, { above: 0 });
  return highPpm <= limitPpm ? 100 : (100 * (limitPpm - lowPpm)) / (highPpm - lowPpm);
}

/**
 * Parts of a low feed for one part of a high one: x = (h − L) / (L − l), letters as in `dilutionSharePercent`.
 * @param options.limitPpm - Limit for the whole ration, ppm; above `lowPpm`
 * @param options.highPpm - The high feed, ppm; at least `limitPpm`
 * @param options.lowPpm - The feed that it is mixed with, ppm; 0 or more
 * @returns Parts of the low feed, by weight of dry matter, for one part of the high feed
 * @throws RangeError if a value is outside its range
 * @source amaglab-nitrate-mixing, equation
 * @example dilutionParts({ limitPpm: 1500, highPpm: 4500, lowPpm: 500 }) //=> 3
 */
export function dilutionParts({
  limitPpm,
  highPpm,
  lowPpm,
}: {
  readonly limitPpm: number;
  readonly highPpm: number;
  readonly lowPpm: number;
}): number {
  need('dilutionParts', 'lowPpm', lowPpm, { atLeast: 0 });
  need('dilutionParts', 'limitPpm', limitPpm, { above: lowPpm });
  need('dilutionParts', 'highPpm', highPpm, { atLeast: limitPpm });
  return (highPpm - limitPpm) / (limitPpm - lowPpm);
}
