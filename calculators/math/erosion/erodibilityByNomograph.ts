import { permeabilityScales } from '../../tables/erodibility.ts';
import { need, needThere } from '../need.ts';

export type StructureCode = 1 | 2 | 3 | 4;
export type PermeabilityCode = 1 | 2 | 3 | 4 | 5 | 6;

/**
 * Soil factor K by the nomograph's equation: K = [2.1 × 10⁻⁴ M^1.14 (12 − OM) + 3.25 (b − 2) + 2.5 (c − 3)]/100, M = silt with very fine sand times what is
 * not clay, OM = organic matter, above 4 % counted as 4, b = `structureCode`, c = `permeabilityCode`. The silt term is silt and very fine sand, not silt and
 * all sand. In half of 20,000 soils the equation strayed from the drawn nomograph.
 * @param options.siltVeryFineSandPercent - Silt and very fine sand, 0.002 to 0.1 mm, percent of the fine earth; 0 to 70
 * @param options.clayPercent - Clay, percent of the fine earth; 0 to what the silt and very fine sand leave
 * @param options.organicMatterPercent - Organic matter, percent by weight; 0 or more
 * @param options.structureCode - 1 very fine granular, 2 fine granular (1 to 2 mm), 3 medium or coarse granular, 4 blocky, platy or massive
 * @param options.permeabilityCode - 1 rapid to 6 very slow, the slowest part of the profile
 * @returns K, ton acre hour per hundred acre foot-ton inch
 * @throws RangeError if a parameter is outside its range or the equation falls to 0 or below, where it says nothing
 * @source wischmeier-smith-1978, figure 3, footnote
 * @example erodibilityByNomograph({ siltVeryFineSandPercent: 65, clayPercent: 30, organicMatterPercent: 2.8, structureCode: 2, permeabilityCode: 4 }) //=> 0.31
 */
export function erodibilityByNomograph({
  siltVeryFineSandPercent,
  clayPercent,
  organicMatterPercent,
  structureCode,
  permeabilityCode,
}: {
  readonly siltVeryFineSandPercent: number;
  readonly clayPercent: number;
  readonly organicMatterPercent: number;
  readonly structureCode: StructureCode;
  readonly permeabilityCode: PermeabilityCode;
}): number {
  need('erodibilityByNomograph', 'siltVeryFineSandPercent', siltVeryFineSandPercent, { atLeast: 0, atMost: 70 });
  need('erodibilityByNomograph', 'clayPercent', clayPercent, { atLeast: 0, atMost: 100 - siltVeryFineSandPercent });
  need('erodibilityByNomograph', 'organicMatterPercent', organicMatterPercent, { atLeast: 0, atMost: 100 });
  need('erodibilityByNomograph', 'structureCode', structureCode, { atLeast: 1, atMost: 4, whole: true });
  need('erodibilityByNomograph', 'permeabilityCode', permeabilityCode, { atLeast: 1, atMost: 6, whole: true });
  const particles = siltVeryFineSandPercent * (100 - clayPercent);
  const erodibility =
    (2.1e-4 * particles ** 1.14 * (12 - Math.min(4, organicMatterPercent)) + 3.25 * (structureCode - 2) + 2.5 * (permeabilityCode - 3)) / 100;
  need('erodibilityByNomograph', 'the K that follows', erodibility, { above: 0 });
  return erodibility;
}

/**
 * Permeability class of the nomograph by how fast the slowest part of the profile takes water. The two handbooks put the limits elsewhere by a factor of
 * two and more; name the one that goes with the K. A ring in the topsoil doesn't measure this.
 * @param inchesPerHour - Permeability, in/h; above 0
 * @param scale - Edition whose limits are meant
 * @returns Class, 1 rapid to 6 very slow
 * @throws RangeError if `inchesPerHour` is not above 0
 * @source wischmeier-smith-1978, figure 3; renard-1997, table 3-3 (from memory)
 * @example permeabilityCode(1, '1978') //=> 3
 */
export function permeabilityCode(inchesPerHour: number, scale: keyof typeof permeabilityScales): PermeabilityCode {
  need('permeabilityCode', 'inchesPerHour', inchesPerHour, { above: 0 });
  const codes = [1, 2, 3, 4, 5] as const;
  return (
    codes.find(
      (code) => inchesPerHour >= needThere('permeabilityCode', `limit of class ${code}`, permeabilityScales[scale].slowestInPerH[code - 1]),
    ) ?? 6
  );
}
