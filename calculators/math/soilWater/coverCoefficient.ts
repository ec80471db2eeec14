import { need } from '../need.ts';

/**
 * Basal crop coefficient of a sward that covers only part of the ground: Kcb = Kmin + (Kfull − Kmin) min(1, 2 f, f^(1 / (1 + h))),
 * with Kfull = `fullCoefficient`, Kmin = `bareCoefficient`, f = `coverShare`, h = `heightM`. Grazed-off ground drinks less, so single-coefficient
 * balances reward it; pair this with the evaporation from the ground that it bares.
 * @param options.fullCoefficient - Basal coefficient at full cover, no unit; at least `bareCoefficient`
 * @param options.bareCoefficient - Coefficient of dry bare ground, no unit; at least 0; 0.15 if left out
 * @param options.coverShare - Share of the ground that green plants cover; 0 to 1
 * @param options.heightM - Height of the plants, meters; 0 to 10
 * @returns Basal crop coefficient, no unit
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 98
 * @example coverCoefficient({ fullCoefficient: 0.95, coverShare: 0.3, heightM: 0.1 }) //=> 0.418
 */
export function coverCoefficient({
  fullCoefficient,
  bareCoefficient = 0.15,
  coverShare,
  heightM,
}: {
  readonly fullCoefficient: number;
  readonly bareCoefficient?: number;
  readonly coverShare: number;
  readonly heightM: number;
}): number {
  need('coverCoefficient', 'bareCoefficient', bareCoefficient, { atLeast: 0 });
  need('coverCoefficient', 'fullCoefficient', fullCoefficient, { atLeast: bareCoefficient, atMost: 1.5 });
  need('coverCoefficient', 'coverShare', coverShare, { atLeast: 0, atMost: 1 });
  need('coverCoefficient', 'heightM', heightM, { atLeast: 0, atMost: 10 });
  return bareCoefficient + (fullCoefficient - bareCoefficient) * Math.min(1, 2 * coverShare, coverShare ** (1 / (1 + heightM)));
}
