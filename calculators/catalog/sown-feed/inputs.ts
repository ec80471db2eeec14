import { choice, date, number, yesNo } from '../../kit/inputs.ts';
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
  if (!printed) throw new RangeError(`daysOf needs days for ${crop}`);
  return printed.value;
}

/** What choosing a crop writes: the longer of the published waits, and the middles of water for a ton and of yield. `like` lends what its own row lacks. */
function fillsOf(crop: string, like = crop): Readonly<Record<string, number>> {
  const own = row(crop);
  const lent = row(like);
  const water = own.inchesPerTon ?? lent.inchesPerTon;
  const tons = own.tonsPerAc ?? lent.tonsPerAc;
  if (!water || !tons) throw new RangeError(`fillsOf needs water and tons for ${crop}`);
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
  turnips: { label: 'Turnips', group: cool, fills: { ...fillsOf('oats-fall', 'oats-spring'), growDays: daysOf('turnips')[1] } },
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

export type Hazard = 'prussic-nitrate' | 'nitrate' | 'nitrate-bloat' | 'nitrate-foam' | 'unknown';
export const hazardOf = (crop: Crop): Hazard =>
  crop === 'own'
    ? 'unknown'
    : crop === 'turnips'
      ? 'nitrate-bloat'
      : crop === 'sudangrass' || crop === 'sorghum-sudangrass'
        ? 'prussic-nitrate'
        : crop === 'oats-fall'
          ? 'nitrate-foam'
          : 'nitrate';
/** Height that a sorghum must reach before stock go in; 0 for crops that have no such rule. */
export const grazeHeightOf = (crop: Crop): number =>
  crop === 'sudangrass' || crop === 'sorghum-sudangrass' ? strictestPrussicRule(crop, 'height').least : 0;

export const textureOptions = {
  sand: { label: 'Sand or loamy sand: gritty, no ribbon', short: 'sand' },
  'sandy-loam': { label: 'Sandy loam: gritty, a short ribbon', short: 'sandy loam' },
  'silt-loam': { label: 'Loam or silt loam: smooth, a short ribbon', short: 'silt loam' },
  'clay-loam': { label: 'Clay loam: a ribbon of 1 to 2 in', short: 'clay loam' },
  clay: { label: 'Clay: a ribbon over 2 in', short: 'clay' },
} as const;
export const heldInPerFt = (texture: keyof typeof textureOptions): number => {
  const { low, high } = availableWaterByTexture.inPerFt[texture];
  return middle([low, high]);
};

const byFeel = { storedFrom: 'feel' };
const acreCost = (label: string, symbol: string, start: number, help?: string) =>
  number(label, symbol, 'usd/ac', [0, 2000], start, { belongsTo: 'management', ...(help === undefined ? {} : { help }) });
const percent = (label: string, symbol: string, start: number, max: number, help?: string) =>
  number(label, symbol, 'pct', [0, max], start, { belongsTo: 'management', ...(help === undefined ? {} : { help }) });

export const inputs = {
  sowDay: date('Day when you can sow', '2027-05-20', { occurs: { nextFrom: 'today' } }),
  frostDay: date('Usual day of the first killing frost', '2027-10-15', {
    occurs: { nextFrom: 'sowDay' },
    help: 'The one after the sowing. For a crop that heat ends, the day when it is usually done.',
    ask: 'When did frost blacken the garden, these last five falls? Take the earliest but one.',
    offeredBy: 'season.frost',
  }),
  isSoilWarm: yesNo('Will the soil be 65 °F (18 °C) two inches down by then, and stay so?', true, {
    short: ['soil warm', 'soil not warm'],
    field: 'A kitchen thermometer pushed two inches (50 mm) in, mid-morning, three days running.',
  }),
  crop: choice('What you would sow', 'sorghum-sudangrass', {
    options: cropOptions,
    belongsTo: 'management',
    help: 'Choosing one fills in the next three; change them to what your county gets. Where a list lacks a number a cousin lends it: pearl millet takes sudangrass’s water, late oats and turnips spring oats’, turnips the yield of oats with turnips.',
  }),
  growDays: number('Days from sowing until it is used', 't', 'd', [20, 365], 40, {
    belongsTo: 'management',
    help: 'The longer of the published waits. Dry soil makes it longer.',
  }),
  waterPerTonIn: number('Water that dry feed takes', 'q', 'in/ton/ac', [1, 15], 3, {
    usual: 'waterPerTonIn',
    belongsTo: 'management',
    help: 'Measured where water was plentiful. A thin or weedy stand wants more.',
  }),
  mostTonPerAc: number('Most it makes with all the water it wants, dry', 'y_m', 'ton/ac', [0.2, 15], 4.75, { belongsTo: 'management' }),
  storedFrom: choice('Water in the soil now', 'feel', {
    options: {
      feel: { label: 'Work it out from a shovel hole', short: 'by a shovel hole' },
      known: { label: 'I know how deep it would stand', short: 'depth known' },
    },
  }),
  knownStoredIn: number('Water stored in reach of roots', 'w_k', 'in', [0, 20], 3, { shownWhen: { storedFrom: 'known' } }),
  texture: choice('What the soil is', 'silt-loam', {
    options: textureOptions,
    shownWhen: byFeel,
    help: 'Wet some and squeeze a ribbon between thumb and finger.',
    offeredBy: 'pasture.texture',
  }),
  rootDepthIn: number('Depth that its roots will reach', 'z', 'in', [3, 72], 36, {
    shownWhen: byFeel,
    field:
      'As deep as a shovel or bar goes without hitting rock, a hard layer or dry powder that roots won’t enter; at most 3 or 4 ft (900 or 1,200 mm).',
  }),
  filledPercent: number('How full it is', 'f_w', 'pct', [0, 100], 50, {
    shownWhen: byFeel,
    ask: 'Squeeze a handful from each foot. Powder or hard clods: near 0. A ball that breaks when tossed: about half. A firm ball that wets the palm: near 100.',
  }),
  lowRainIn: number('Rain until it is used, in a dry year', 'P_{low}', 'in', [0, 60], 2.5, {
    usual: 'seasonIn',
    ask: 'Your own gauge over those weeks: the driest year but one of the last ten.',
  }),
  likelyRainIn: number('Rain until it is used, likely', 'P', 'in', [0, 60], 5, {
    step: 0.25,
    usual: 'seasonIn',
    help: 'The middle year, not the mean: half the years had less.',
  }),
  usedPercent: number('Share of the rain that the crop gets', 'e_r', 'pct', [0, 100], 70, {
    help: 'The rest runs off, dries from bare ground or goes deep. Bare, crusted ground gets far less.',
  }),
  failCount: number('In ten tries like this one, how many would fail?', 'n_f', 'count', [0, 9], 2, {
    whole: true,
    help: 'Your own judgement: no stand, hail, grasshoppers, no rain at all.',
    ask: 'Of ten late or dry sowings around here, how many came to nothing?',
  }),
  use: choice('How it is used', 'graze', {
    options: { graze: { label: 'Grazed', short: 'grazed' }, bale: { label: 'Cut and baled', short: 'baled' } },
    belongsTo: 'management',
  }),
  eatenPercent: number('Share that stock eat', 'e', 'pct', [10, 100], 60, {
    belongsTo: 'management',
    help: 'Grazed standing, half to two thirds in strips; less if they have it all at once. Baled, 75 to 90.',
  }),
  seedUsd: acreCost('Seed', 's_1', 35),
  sowingUsd: acreCost('Sowing and getting the ground ready', 's_2', 30),
  feedUsd: acreCost('Fertilizer and spray', 's_3', 30, 'In drought, go easy with nitrogen: what the crop can’t use stays in it as nitrate.'),
  otherUsd: acreCost('Rent, fence and water', 's_4', 25),
  balingUsdPerTon: number('Cutting, baling and hauling, dry', 'h', 'usd/ton', [0, 300], 45, { belongsTo: 'management', shownWhen: { use: 'bale' } }),
  areaAc: number('Land to sow', 'A', 'ac', [0.1, 100_000], 20, { step: 5, belongsTo: 'management', usual: 'pastureAc' }),
  hayPriceUsdPerTon: number('Price of hay, delivered', 'p', 'usd/ton', [10, 1000], 140, {
    step: 5,
    usual: 'hayUsdPerTon',
    offeredBy: 'prices.hayDelivered',
  }),
  hayMoisturePercent: { ...percent('Water in that hay', 'm', 15, 85), offeredBy: 'hay.moisture' },
  hayStoragePercent: percent('Hay lost in storage', 'l_s', 5, 90),
  hayFeedingPercent: percent('Hay wasted at feeding', 'l_f', 15, 90),
} as const;
