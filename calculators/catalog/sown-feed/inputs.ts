import { choice, date, number, yesNo } from '../../kit/inputs.ts';
import { cropOptions, textureOptions } from './crops.ts';

const byFeel = { storedFrom: 'feel' };
const acreCost = (label: string, symbol: string, start: number, help?: string) =>
  number(label, symbol, 'usd', [0, 2000], start, { belongsTo: 'management', ...(help === undefined ? {} : { help }) });
const percent = (label: string, symbol: string, start: number, max: number, help?: string) =>
  number(label, symbol, 'pct', [0, max], start, { belongsTo: 'management', ...(help === undefined ? {} : { help }) });

export const inputs = {
  sowDay: date('Day when you can sow', '2027-05-20'),
  frostDay: date('Usual day of the first killing frost', '2027-10-15', {
    help: 'The one after the sowing. For a crop that heat ends, the day when it is usually done.',
    ask: 'When did frost blacken the garden, these last five falls? Take the earliest but one.',
  }),
  isSoilWarm: yesNo('Will the soil be 65 °F two inches down by then, and stay so?', true, {
    field: 'A kitchen thermometer pushed two inches in, mid-morning, three days running.',
  }),
  crop: choice('What you would sow', 'sorghum-sudangrass', {
    options: cropOptions,
    belongsTo: 'management',
    help: 'Choosing one fills in the next three; mend them to what your county gets. Where a list lacks a number a cousin lends it: pearl millet takes sudangrass’s water, late oats and turnips take spring oats’ water, turnips the yield of oats with turnips.',
  }),
  growDays: number('Days from sowing until it is used', 't', 'd', [20, 365], 40, {
    belongsTo: 'management',
    help: 'Filled in: the longer of the published waits. Dry soil makes it longer.',
  }),
  waterPerTonIn: number('Water for a ton of dry feed, on an acre', 'q', 'in', [1, 15], 3, {
    belongsTo: 'management',
    help: 'Measured where water was plentiful. A thin or weedy stand wants more.',
  }),
  mostTonPerAc: number('Most it makes with all the water it wants, dry', 'y_m', 'ton/ac', [0.2, 15], 4.75, { belongsTo: 'management' }),
  storedFrom: choice('Water in the soil now', 'feel', { options: { feel: 'Work it out from a shovel hole', known: 'I know the inches' } }),
  knownStoredIn: number('Water stored in reach of roots', 'w_k', 'in', [0, 20], 3, { shownWhen: { storedFrom: 'known' } }),
  texture: choice('What the soil is', 'silt-loam', {
    options: textureOptions,
    shownWhen: byFeel,
    help: 'Wet some and squeeze a ribbon between thumb and finger.',
  }),
  rootDepthIn: number('Depth that its roots will reach', 'z', 'in', [3, 72], 36, {
    shownWhen: byFeel,
    field: 'As deep as a shovel or bar goes without hitting rock, a hard layer or dry powder that roots won’t enter; at most 3 or 4 ft.',
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
    usual: 'seasonIn',
    help: 'The middle year, not the mean: half the years had less.',
  }),
  usedPercent: number('Share of the rain that the crop gets', 'e_r', 'pct', [0, 100], 70, {
    help: 'The rest runs off, dries from bare ground or goes deep. Bare, crusted ground gets far less.',
  }),
  failCount: number('In ten tries like this one, how many would fail?', 'n_f', 'count', [0, 9], 2, {
    whole: true,
    help: 'Your own judgement: no stand, hail, grasshoppers, no rain at all. Nobody can look this up for you.',
    ask: 'Of the late or dry sowings you know of around here, how many of ten came to nothing?',
  }),
  use: choice('How it is used', 'graze', { options: { graze: 'Grazed', bale: 'Cut and baled' }, belongsTo: 'management' }),
  eatenPercent: number('Share that stock eat', 'e', 'pct', [10, 100], 60, {
    belongsTo: 'management',
    help: 'Grazed standing, half to two thirds in strips; less if they have it all at once. Baled, 75 to 90.',
  }),
  seedUsd: acreCost('Seed, an acre', 's_1', 35),
  sowingUsd: acreCost('Sowing and getting the ground ready, an acre', 's_2', 30),
  feedUsd: acreCost('Fertilizer and spray, an acre', 's_3', 30, 'In drought, go easy with nitrogen: what the crop can’t use stays in it as nitrate.'),
  otherUsd: acreCost('Rent, fence and water, an acre', 's_4', 25),
  balingUsdPerTon: number('Cutting, baling and hauling, a dry ton', 'h', 'usd/ton', [0, 300], 45, {
    belongsTo: 'management',
    shownWhen: { use: 'bale' },
  }),
  areaAc: number('Acres to sow', 'A', 'ac', [0.1, 100_000], 20, { belongsTo: 'management', usual: 'pastureAc' }),
  hayPriceUsdPerTon: number('Price of hay, delivered', 'p', 'usd/ton', [10, 1000], 140, { usual: 'hayUsdPerTon' }),
  hayMoisturePercent: percent('Water in that hay', 'm', 15, 85),
  hayStoragePercent: percent('Hay lost in storage', 'l_s', 5, 90),
  hayFeedingPercent: percent('Hay wasted at feeding', 'l_f', 15, 90),
} as const;
