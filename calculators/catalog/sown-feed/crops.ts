import { strictestPrussicRule } from '../../math/hazards/strictestPrussicRule.ts';
import { availableWaterByTexture } from '../../tables/availableWater.ts';
import { type FeedCrop, feedCrops } from '../../tables/feedCrops.ts';

const crops: readonly FeedCrop[] = feedCrops;
const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;
function row(crop: string): FeedCrop {
  const found = crops.find((each) => each.crop === crop);
  if (!found) throw new RangeError(`row needs a crop of the table, got ${crop}`);
  return found;
}

type Pair = readonly [low: number, high: number];
/** Iowa’s 50 to 60 days, for the one summer annual that the Louisiana list leaves out. */
const iowaDays = { crop: 'foxtail-millet', days: [50, 60] } as const;
function daysOf(crop: string): Pair {
  if (crop === iowaDays.crop) return iowaDays.days;
  const printed = row(crop).daysToGrazing;
  if (!printed) throw new RangeError(`daysOf needs printed days to grazing for ${crop}`);
  return printed.value;
}

/** What choosing a crop writes: the longer of the published waits, and the middles of water for a ton and of yield. `like` lends what its own row lacks. */
function fillsOf(crop: string, like = crop): Readonly<Record<string, number>> {
  const own = row(crop);
  const lent = row(like);
  const water = own.inchesPerTon ?? lent.inchesPerTon;
  const tons = own.tonsPerAc ?? lent.tonsPerAc;
  if (!water || !tons) throw new RangeError(`fillsOf needs water and yield for ${crop}`);
  return { growDays: daysOf(crop)[1], waterPerTonIn: middle(water.value), mostTonPerAc: middle(tons.value) };
}

const warm = 'Warm-season: sown in warm soil, killed by frost';
const cool = 'Cool-season';
export const cropOptions = {
  sudangrass: { label: 'Sudangrass', group: warm, fills: fillsOf('sudangrass') },
  'sorghum-sudangrass': { label: 'Sorghum-sudangrass', group: warm, fills: fillsOf('sorghum-sudangrass') },
  'pearl-millet': { label: 'Pearl millet', group: warm, fills: fillsOf('pearl-millet', 'sudangrass') },
  'foxtail-millet': { label: 'Foxtail millet, for one cutting', group: warm, fills: fillsOf('foxtail-millet') },
  'oats-fall': { label: 'Late-summer oats', group: cool, fills: fillsOf('oats-fall', 'oats-spring') },
  turnips: {
    label: 'Turnips',
    group: cool,
    fills: { ...fillsOf('oats-fall', 'oats-spring'), growDays: daysOf('turnips')[1] },
  },
  own: { label: 'Something else: I give the numbers', group: 'Your own' },
} as const;
export type Crop = keyof typeof cropOptions;
type Tabled = Exclude<Crop, 'own'>;

export const isWarmSeason = (crop: Crop): boolean => crop !== 'own' && row(crop).season === 'warm';

const isTabled = (crop: string): crop is Tabled => crop !== 'own';
/** Days from sowing to the first use, soonest and latest, for every crop of the list. */
export const daysByCrop = Object.keys(cropOptions)
  .filter((crop): crop is Tabled => Object.hasOwn(cropOptions, crop) && isTabled(crop))
  .map((crop) => ({ crop, fewDays: daysOf(crop)[0], manyDays: daysOf(crop)[1] }));

export type Hazard = 'prussic-nitrate' | 'nitrate' | 'nitrate-bloat' | 'unknown';
export const hazardOf = (crop: Crop): Hazard =>
  crop === 'own'
    ? 'unknown'
    : crop === 'turnips'
      ? 'nitrate-bloat'
      : crop === 'sudangrass' || crop === 'sorghum-sudangrass'
        ? 'prussic-nitrate'
        : 'nitrate';
/** Height that a sorghum must reach before stock go in; 0 for crops that have no such rule. */
export const grazeHeightOf = (crop: Crop): number =>
  crop === 'sudangrass' || crop === 'sorghum-sudangrass' ? strictestPrussicRule(crop, 'height').least : 0;

export const textureOptions = {
  sand: { label: 'Sand or loamy sand: gritty, no ribbon' },
  'sandy-loam': { label: 'Sandy loam: gritty, a short ribbon' },
  'silt-loam': { label: 'Loam or silt loam: smooth, a short ribbon' },
  'clay-loam': { label: 'Clay loam: a ribbon of 1 to 2 in' },
  clay: { label: 'Clay: a ribbon over 2 in' },
} as const;
export const heldInPerFt = (texture: keyof typeof textureOptions): number => {
  const { low, high } = availableWaterByTexture.inPerFt[texture];
  return middle([low, high]);
};
