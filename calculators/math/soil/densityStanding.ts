import { type DensityLimits, type DensityListName, rootLimitingDensity } from '../../tables/rootLimitingDensity.ts';
import type { Texture } from '../../tables/soilGroups.ts';
import { need } from '../need.ts';

/** `open`: good for roots; `between`: neither called good nor harmful; `limiting`: roots may suffer; `stopping`: roots are kept out. */
export type DensityStanding = 'open' | 'between' | 'limiting' | 'stopping';

/**
 * Densities that one published list gives for a texture.
 * @param list - Name of the list: the lists disagree by up to 0.2 and are never mixed
 * @param texture - One of the twelve texture classes
 * @returns Limits, g/cm3 of fine earth, or undefined where the list does not name the texture (or names it twice)
 * @throws Nothing: a texture without a row is an answer
 * @source illinois-nres201-2011, by-class; ufl-critical-bulk-density, critical-range; nrcs-bulk-density-sheet, three-groups; arshad-1996, seven-rows
 * @example densityLimits('critical-range', 'loam') //=> { limitsFrom: 1.45, stopsAbove: 1.6 }
 */
export function densityLimits(list: DensityListName, texture: Texture): DensityLimits | undefined {
  const limits: Readonly<Record<string, DensityLimits | undefined>> = rootLimitingDensity[list].limits;
  return limits[texture];
}

/**
 * Where a measured density stands in one published list: `stopping` above the density that keeps roots out, `limiting` from the one that hurts them,
 * `open` below the ideal (or, in a list without an ideal, below every limit that it has), otherwise `between`.
 * @param list - Name of the list
 * @param texture - One of the twelve texture classes
 * @param fineDensityGPerCm3 - Bulk density of the fine earth, g/cm3; above 0, below 2.65
 * @returns Standing, or undefined where the list does not name the texture
 * @throws RangeError if `fineDensityGPerCm3` is outside its range
 * @source illinois-nres201-2011, by-class; ufl-critical-bulk-density, critical-range; nrcs-bulk-density-sheet, three-groups; arshad-1996, seven-rows
 * @example densityStanding('critical-range', 'loam', 1.5) //=> 'limiting'
 * @example densityStanding('three-groups', 'loam', 1.5) //=> undefined
 */
export function densityStanding(list: DensityListName, texture: Texture, fineDensityGPerCm3: number): DensityStanding | undefined {
  need('densityStanding', 'fineDensityGPerCm3', fineDensityGPerCm3, { above: 0, below: 2.65 });
  const limits = densityLimits(list, texture);
  if (!limits) return undefined;
  const { idealBelow, limitsFrom, stopsAbove } = limits;
  if (stopsAbove !== undefined && fineDensityGPerCm3 > stopsAbove) return 'stopping';
  if (limitsFrom !== undefined && fineDensityGPerCm3 >= limitsFrom) return 'limiting';
  return idealBelow === undefined || fineDensityGPerCm3 < idealBelow ? 'open' : 'between';
}
