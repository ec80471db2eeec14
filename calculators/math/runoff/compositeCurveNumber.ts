import { need } from '../need.ts';
import { areaWeightedMean } from './areaWeightedMean.ts';
import type { AbstractionRatio } from './initialAbstractionIn.ts';
import { stormRunoffIn } from './stormRunoffIn.ts';

/** A piece of ground that has one soil and one cover. */
export interface RunoffPart {
  readonly areaAc: number;
  readonly curveNumber: number;
}

/**
 * One curve number for ground of several soils and covers: CN = Σ(A CN) / ΣA over the `parts`.
 * It understates runoff from small rains where the parts differ much; `compositeRunoffIn` weights the runoff instead.
 * @param parts - Parts, each with its area in acres (0 or more) and its curve number (above 0, at most 100)
 * @returns Curve number, not rounded, no unit
 * @throws RangeError if an area is negative, a curve number is outside its range, or the areas add up to 0
 * @source tr55-1986, worksheet 2
 * @example compositeCurveNumber([{ areaAc: 75, curveNumber: 61 }, { areaAc: 175, curveNumber: 74 }]) //=> 70.1
 */
export function compositeCurveNumber(parts: readonly RunoffPart[]): number {
  for (const { curveNumber } of parts) need('compositeCurveNumber', 'curveNumber', curveNumber, { above: 0, atMost: 100 });
  return areaWeightedMean(parts.map(({ areaAc, curveNumber }) => ({ areaAc, value: curveNumber })));
}

/**
 * Runoff from ground of several soils and covers, each part run by itself: Q = Σ(A Q) / ΣA over the `parts`.
 * @param options.parts - Parts, each with its area in acres (0 or more) and its tabled curve number (above 0, at most 100)
 * @param options.rainIn - Rain of the storm, inches; 0 or more
 * @param options.abstractionRatio - Share of the retention used up first, no unit; 0.2 or 0.05
 * @returns Runoff over the whole area, inches
 * @throws RangeError if an area or the rain is negative, a curve number is outside its range, or the areas add up to 0
 * @source nrcs-neh630-10-2004, example 10-3
 * @example compositeRunoffIn({ parts: [{ areaAc: 400, curveNumber: 75 }, { areaAc: 230, curveNumber: 69 }], rainIn: 5.1, abstractionRatio: 0.2 }) //=> 2.35
 */
export function compositeRunoffIn({
  parts,
  rainIn,
  abstractionRatio,
}: {
  parts: readonly RunoffPart[];
  rainIn: number;
  abstractionRatio: AbstractionRatio;
}): number {
  return areaWeightedMean(parts.map(({ areaAc, curveNumber }) => ({ areaAc, value: stormRunoffIn({ rainIn, curveNumber, abstractionRatio }) })));
}
