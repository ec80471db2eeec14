import { need } from '../need.ts';

/**
 * Basal crop coefficient by leaf: Kcb = Kmin + (Kfull − Kmin) g, with Kfull = `fullCoefficient`, Kmin = `bareCoefficient`, g = `greenShare`. The handbook
 * writes 1 − e^(−0.7 LAI) for g, the share of the ground that green leaves shade. Grazed-off ground drinks less, so single-coefficient balances reward
 * it; pair this with the evaporation from the ground that it bares.
 * @param options.greenShare - Share of the ground that green leaves shade; 0 to 1
 * @param options.fullCoefficient - Basal coefficient at full cover, no unit; at least `bareCoefficient`, at most 1.5
 * @param options.bareCoefficient - Coefficient of dry bare ground, no unit; at least 0
 * @returns Basal crop coefficient, no unit
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 97 (from memory)
 * @example leafCoefficient({ greenShare: 0.5, fullCoefficient: 0.95, bareCoefficient: 0.15 }) //=> 0.55
 */
export function leafCoefficient({
  greenShare,
  fullCoefficient,
  bareCoefficient,
}: {
  readonly greenShare: number;
  readonly fullCoefficient: number;
  readonly bareCoefficient: number;
}): number {
  need('leafCoefficient', 'greenShare', greenShare, { atLeast: 0, atMost: 1 });
  need('leafCoefficient', 'bareCoefficient', bareCoefficient, { atLeast: 0 });
  need('leafCoefficient', 'fullCoefficient', fullCoefficient, { atLeast: bareCoefficient, atMost: 1.5 });
  return bareCoefficient + (fullCoefficient - bareCoefficient) * greenShare;
}
