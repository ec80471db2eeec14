import { need } from '../need.ts';

/**
 * One day of rain caught on grass and litter: the store S takes rain until it is full, the rest goes on to the ground, and what is caught dries off
 * at ETo at most, with S = `storeMm`, caught so far = `heldMm`, P = `rainMm`, ETo = `referenceMm`. A small store: a tall bunchgrass sward held 1.8
 * mm, a short one 1.0 mm.
 * @param options.rainMm - Rain of the day, millimeters; at least 0
 * @param options.storeMm - Water that grass and litter can hold, millimeters; 0 to 5
 * @param options.heldMm - Water held last evening, millimeters; 0 to `storeMm`
 * @param options.referenceMm - Reference evapotranspiration, millimeters; at least 0
 * @returns Rain that reaches the ground, water that dried off, and water held this evening, millimeters
 * @throws RangeError if a parameter is outside its range
 * @source thurow-1987, abstract; a store that fills and dries is our own
 * @example interceptionDay({ rainMm: 10, storeMm: 1, heldMm: 0, referenceMm: 4 }) //=> ({ throughMm: 9, driedMm: 1, heldMm: 0 })
 */
export function interceptionDay({
  rainMm,
  storeMm,
  heldMm,
  referenceMm,
}: {
  readonly rainMm: number;
  readonly storeMm: number;
  readonly heldMm: number;
  readonly referenceMm: number;
}): { readonly throughMm: number; readonly driedMm: number; readonly heldMm: number } {
  need('interceptionDay', 'rainMm', rainMm, { atLeast: 0 });
  need('interceptionDay', 'storeMm', storeMm, { atLeast: 0, atMost: 5 });
  need('interceptionDay', 'heldMm', heldMm, { atLeast: 0, atMost: storeMm });
  need('interceptionDay', 'referenceMm', referenceMm, { atLeast: 0 });
  const caughtMm = Math.min(rainMm, storeMm - heldMm);
  const driedMm = Math.min(heldMm + caughtMm, referenceMm);
  return { throughMm: rainMm - caughtMm, driedMm, heldMm: heldMm + caughtMm - driedMm };
}
