import { need } from '../need.ts';

/**
 * One day of water on leaves and litter: the store S takes the rain that does not run off until it is full, the rest goes on to the ground; a store that
 * shrank since last evening drips; what is held dries at ETo at most, and what dries is taken from the day's reference use before plants and ground draw
 * on it, since wet and dry grass use about the same water. With S = `storeMm`, last evening's water = `heldMm`, rain = `keptMm`, ETo = `referenceMm`.
 * Rain that runs off is left out because the runoff equation's first loss already holds it. A tall bunchgrass sward held 1.8 mm, a short one 1.0 mm.
 * @param options.keptMm - Rain and melt less runoff, millimeters; at least 0
 * @param options.storeMm - Water that leaves and litter can hold, millimeters; 0 to 5
 * @param options.heldMm - Water held last evening, millimeters; at least 0
 * @param options.referenceMm - Reference evapotranspiration, millimeters; at least 0
 * @returns Water that reaches the ground, water that dried off, water held this evening, and what is left of the reference, millimeters
 * @throws RangeError if a parameter is outside its range
 * @source burgy-pomeroy-1958, abstract: total use the same wet and dry; sizes thurow-1987; a store that fills, dries and drips is our own
 * @example leafWaterDay({ keptMm: 10, storeMm: 1, heldMm: 0, referenceMm: 4 }) //=> ({ throughMm: 9, driedMm: 1, heldMm: 0, referenceLeftMm: 3 })
 */
export function leafWaterDay({
  keptMm,
  storeMm,
  heldMm,
  referenceMm,
}: {
  readonly keptMm: number;
  readonly storeMm: number;
  readonly heldMm: number;
  readonly referenceMm: number;
}): { readonly throughMm: number; readonly driedMm: number; readonly heldMm: number; readonly referenceLeftMm: number } {
  need('leafWaterDay', 'keptMm', keptMm, { atLeast: 0 });
  need('leafWaterDay', 'storeMm', storeMm, { atLeast: 0, atMost: 5 });
  need('leafWaterDay', 'heldMm', heldMm, { atLeast: 0 });
  need('leafWaterDay', 'referenceMm', referenceMm, { atLeast: 0 });
  const dripMm = Math.max(0, heldMm - storeMm);
  const caughtMm = Math.min(keptMm, storeMm - (heldMm - dripMm));
  const wetMm = heldMm - dripMm + caughtMm;
  const driedMm = Math.min(wetMm, referenceMm);
  return { throughMm: keptMm - caughtMm + dripMm, driedMm, heldMm: wetMm - driedMm, referenceLeftMm: referenceMm - driedMm };
}
