import { need } from '../need.ts';
import { inverseNormal } from '../special/inverseNormal.ts';
import type { RandomSource } from './seededRandom.ts';

/**
 * Draws one number from a gamma distribution with α = `shape`, β = `scale`: cube of a shifted normal number, kept or thrown away by a uniform one;
 * below α = 1, a draw for α + 1 times u^(1/α).
 * @param shape - Shape α, no unit; above 0, at most 1000
 * @param scale - Scale β, unit of the answer; above 0
 * @param random - Random source
 * @returns Number above 0, in the unit of `scale`
 * @throws RangeError if `shape` or `scale` is outside its range
 * @source marsaglia-tsang-2000, the algorithm and its note for shapes below 1 (from memory)
 * @example gammaDeviate(1, 1, () => 0.5) //=> 0.6667
 */
export function gammaDeviate(shape: number, scale: number, random: RandomSource): number {
  need('gammaDeviate', 'shape', shape, { above: 0, atMost: 1000 });
  need('gammaDeviate', 'scale', scale, { above: 0 });
  if (shape < 1) return gammaDeviate(shape + 1, scale, random) * random() ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const normal = inverseNormal(random());
    const cube = (1 + c * normal) ** 3;
    if (cube > 0 && Math.log(random()) < (normal * normal) / 2 + d * (1 - cube + Math.log(cube))) return d * cube * scale;
  }
}
