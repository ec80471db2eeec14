import { erodibilityByTexture } from '../math/erosion/erodibilityByTexture.ts';
import { slopeFactor } from '../math/erosion/slopeFactor.ts';
import { needThere } from '../math/need.ts';
import { tabledCover } from '../math/runoff/tabledCover.ts';
import { tabledCurveNumber } from '../math/runoff/tabledCurveNumber.ts';
import { soilGroupFromTexture } from '../math/soilGroup/soilGroupFromTexture.ts';
import type { Texture } from '../tables/soilGroups.ts';
import { soilWaterByTexture } from '../tables/soilWaterByTexture.ts';
import { textureCenters } from '../tables/textureCenters.ts';
import type { PaddockSoil } from './paddock.ts';
import type { Paddock } from './side.ts';

/** Ground as people know it: how the soil feels, how deep roots go, how it slopes. */
export interface Ground {
  readonly texture: Texture;
  readonly organicMatterPercent: number;
  readonly rootsIn: number;
  /** Rain factor R of soil loss, US units. */
  readonly rainFactor: number;
  readonly slopePercent: number;
  readonly slopeFt: number;
}

/** Textures that the table of surface water leaves out stand with their neighbor of like clay. */
const nextInTable = { 'sandy-clay-loam': 'loam', 'clay-loam': 'silty-clay-loam', 'sandy-clay': 'silty-clay' } as const;
function readilyEvaporableMm(texture: Texture): number {
  const listed = texture === 'sandy-clay-loam' || texture === 'clay-loam' || texture === 'sandy-clay' ? nextInTable[texture] : texture;
  const [low, high] = soilWaterByTexture.textures[listed].readilyEvaporableMm;
  return (low + high) / 2;
}

export const soilOf = ({ texture, organicMatterPercent, rootsIn }: Ground): PaddockSoil => ({
  ...textureCenters.centers[texture],
  organicMatterPercent,
  rootsIn,
  readilyEvaporableMm: readilyEvaporableMm(texture),
});

/** Curve numbers of a cover in poor, fair and good shape; of meadow, which has one only, pasture's fair stands for thin and its own for closed. */
export function runoffOf(
  { texture }: Ground,
  use: 'pasture' | 'meadow',
): Pick<Paddock, 'poor' | 'fair' | 'good' | 'poorBelowPercent' | 'goodAbovePercent'> {
  const group = soilGroupFromTexture(texture, Number.POSITIVE_INFINITY);
  const pasture = (condition: 'poor' | 'fair' | 'good'): number =>
    needThere('runoffOf', `curve number of ${condition} pasture`, tabledCurveNumber('pasture', condition, group));
  const cuts = needThere('runoffOf', 'cut points of pasture', tabledCover('pasture').cutPoints);
  const { poorBelowPercent, goodAbovePercent } = cuts;
  const closed = needThere('runoffOf', 'curve number of meadow', tabledCurveNumber('meadow', 'only', group));
  const numbers =
    use === 'pasture'
      ? { poor: pasture('poor'), fair: pasture('fair'), good: pasture('good') }
      : { poor: pasture('fair'), fair: pasture('good'), good: closed };
  return { ...numbers, poorBelowPercent, goodAbovePercent };
}

/** What bare, tilled ground would lose there in a year: R K LS, tons an acre. */
export function bareLossOf({ texture, organicMatterPercent, rainFactor, slopePercent, slopeFt }: Ground): number {
  // The first list has no clay.
  const k = erodibilityByTexture(texture, organicMatterPercent, texture === 'clay' ? 'stone-hilborn-2012' : 'stewart-1975');
  return rainFactor * needThere('bareLossOf', `erodibility of ${texture}`, k) * slopeFactor(slopeFt, slopePercent, '1997-moderate-rill');
}
