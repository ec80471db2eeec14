import { exampleRain } from '../../asks/exampleRain.ts';
import { hayMoisturePercent } from '../../asks/hay.ts';
import { rainGauge } from '../../asks/rainGauge.ts';
import { grazingStock, stockKind } from '../../asks/stock.ts';
import { allRibbons } from '../../asks/textures.ts';
import { choice, date, months, number, type ValuesOf, yesNo } from '../../kit/inputs.ts';
import { laterRecord } from '../../kit/record/laterRecord.ts';

const stockKinds = ['cow-nursing', 'cow-dry', 'bull', 'heifer', 'stocker', 'ewe-nursing', 'ewe-dry', 'doe', 'doe-dry', 'horse'] as const;

/** The months are those of the invented Two Bench place: what its settings come to. */
const placeInputs = {
  texture: choice('Wet some topsoil and squeeze out a ribbon', 'silt-loam', {
    options: allRibbons,
    offeredBy: 'pastures.texture',
    help: 'Of the ground that carries most of the grass.',
  }),
  usualForageLbPerAc: number('What the pasture grows in a usual year', 'Y', 'lb/ac', [200, 12_000], 2400, {
    step: 100,
    usual: 'forageLbPerAc',
    offeredBy: 'pastures.normalDry',
    help: 'Standing at its peak with nothing grazing it, water out. A clipped cage tells it, dried; soil surveys mostly print air-dry pounds: take a tenth off.',
    ask: 'How much ground fed one cow for a month in a year that was neither good nor bad? About 800 lb (360 kg) over that ground is what she ate, a quarter to a third of what grew: take three to four times that.',
  }),
  stock: grazingStock({
    label: 'Stock, all year',
    kind: stockKind('cow-nursing', stockKinds, { appetiteOf: 'season' }),
    appetiteOf: 'season',
    ask: 'Average the weights on your cull tickets. Guesses by eye run light.',
    start: 'cow-nursing',
    herd: [
      ['cow-nursing', 45],
      ['bull', 2],
      ['heifer', 9],
      ['ewe-nursing', 60],
    ],
  }),
  weatherFrom: choice('Years of weather', 'made-up', {
    options: {
      'made-up': { label: 'Made up from usual months', short: 'made-up years' },
      record: { label: 'Those of my own rain record', short: 'years of a record' },
    },
    offeredBy: 'rain.yearsFrom',
    help: 'A record takes six hay years or more. It holds the true dry spells of one place; made-up years hold none that last.',
  }),
  rainRecord: laterRecord({
    ...rainGauge,
    maxRows: 60_000,
    takesTemperatures: true,
    default: exampleRain,
    standIn: 'This is the rain of the invented Two Bench place, not yours. Put your own record in, here or after opening a link.',
    shownWhen: { weatherFrom: 'record' },
    help: 'Paste it, or type a day and its rain on each line: 2026-03-02, 0.45. A year and its twelve months work too. Highs and lows beside the rain are used where a line above names them.',
    ask: 'No record of your own? Ask the nearest weather station for its daily rain, thirty years of it. It is still not your rain.',
    offeredBy: 'rain.record',
  }),
  monthRainIn: months('Rain in a usual month', 'P_m', 'in', [0, 40], [2.2, 2.1, 3.2, 3.9, 4.9, 4.6, 2.9, 2.5, 3.1, 3.2, 2.9, 2.4], {
    offeredBy: 'rain.station',
    help: 'Every weather station prints it, with the days of rain and the temperatures, as its normals. Beside a record it only fills what was not read.',
  }),
  monthWetDays: months('Days with rain in a usual month', 'n_m', 'd', [0.1, 28], [9.1, 8.7, 10.7, 11.2, 11.9, 10.2, 7.6, 6.8, 7.7, 7.6, 8.6, 8.8], {
    help: 'Days with a hundredth of an inch (0.25 mm) or more.',
  }),
  coldHighF: number('Coldest month, usual high of the day', 'H_c', 'f', [-20, 90], 42, { step: 1 }),
  coldLowF: number('Coldest month, usual low of the night', 'L_c', 'f', [-40, 75], 21, { step: 1 }),
  hotHighF: number('Hottest month, usual high of the day', 'H_h', 'f', [50, 120], 88, { step: 1 }),
  hotLowF: number('Hottest month, usual low of the night', 'L_h', 'f', [30, 95], 66, {
    step: 1,
    help: 'The months between follow a smooth wave from the one to the other.',
  }),
  latitude: choice('Nearest latitude', 'north-40', {
    options: {
      'north-25': { label: '25° north', short: '25° north' },
      'north-30': { label: '30° north', short: '30° north' },
      'north-35': { label: '35° north', short: '35° north' },
      'north-40': { label: '40° north', short: '40° north' },
      'north-45': { label: '45° north', short: '45° north' },
      'north-50': { label: '50° north', short: '50° north' },
      'north-55': { label: '55° north', short: '55° north' },
      'south-25': { label: '25° south', short: '25° south' },
      'south-35': { label: '35° south', short: '35° south' },
      'south-45': { label: '45° south', short: '45° south' },
    },
    offeredBy: 'place.latitude',
  }),
  runYears: number('Years of weather to make up', 'n_y', 'yr', [6, 60], 30, {
    isSetting: true,
    shownWhen: { weatherFrom: 'made-up' },
    whole: true,
    step: 5,
    help: 'Fewer than 30 cannot tell a need of one year in ten. More made-up years tell no more of your place than its months do.',
  }),
  throwCount: number('Throw of the dice', 'n_t', 'count', [1, 999], 50, {
    isSetting: true,
    whole: true,
    help: 'Another number makes up other years of the same kind. Try some: how far the answer jumps is how little thirty years can tell.',
  }),
  grass: choice('Most of the grass', 'cool', {
    options: {
      cool: { label: 'Cool-season: fescue, orchardgrass, brome, bluegrass', short: 'cool-season grass' },
      warm: { label: 'Warm-season: bermudagrass, bluestem, grama', short: 'warm-season grass' },
    },
  }),
  organicPercent: number('Organic matter in the topsoil', 'OM', 'pct', [0, 8], 2.6, { usual: 'soilPercent', offeredBy: 'pastures.organic' }),
  rootsIn: number('How deep most roots go', 'z', 'in', [3, 72], 24, {
    offeredBy: 'pastures.rootsMost',
    help: 'Dug and seen. Not dug: 24 in (610 mm), or the depth of the soil if that is less.',
  }),
  rainFactorRatio: number('Rain factor (R)', 'R', 'ratio', [1, 700], 160, {
    step: 10,
    offeredBy: 'place.rainFactor',
    help: 'How hard the rain beats in a year, in US units, from a local table. Only for the soil lost.',
  }),
  slopePercent: number('Slope', 's', 'pct', [0.2, 60], 5, { offeredBy: 'pastures.slope', help: 'Only for the soil lost.' }),
  slopeLengthFt: number('Slope length', 'l_s', 'ft', [15, 1000], 200, { offeredBy: 'pastures.slopeLength' }),
  grazedAc: number('Ground grazed', 'A', 'ac', [1, 100_000], 430, { step: 10, usual: 'pastureAc', offeredBy: 'pastures.area' }),
  meadowAc: number('Ground cut for hay', 'A_h', 'ac', [0, 100_000], 70, { step: 5, help: '0 if all hay is bought.', offeredBy: 'pastures.hayArea' }),
  usualHayTonPerAc: number('Yield of hay in a usual year', 'Y_h', 'ton/ac', [0.3, 8], 2, {
    step: 0.1,
    help: 'All cuttings, as it goes into the barn.',
  }),
  firstCutDay: date('First cutting', '2026-06-10', { occurs: 'thisYear' }),
  secondCutDay: date('Second cutting', '2026-08-20', { occurs: 'thisYear' }),
  grazesMeadow: yesNo('Stock graze the meadow in the fall', true, {
    short: ['grazed in the fall', 'not grazed'],
    help: 'From September 15 on, in the south from March 15.',
  }),
  winterPercent: number('Eaten in winter, share of what is eaten on grass', 'w_w', 'pct', [40, 150], 88, {
    isSetting: true,
    help: 'Dry cows eat less than nursing ones. By the usual tables 2.2 against 2.5 percent of their weight.',
  }),
  moisturePercent: hayMoisturePercent('place', 'hay.moisture'),
  densityLbPerAcIn: number('Pounds in an inch of height', 'd', 'lb/ac/in', [20, 1000], 250, {
    step: 10,
    usual: 'swardLbPerAcIn',
    offeredBy: 'pastures.density',
    help: 'With the water out. The lowest inches hold more: your own clips go before any list.',
  }),
  shortOfTenCount: number('Years in ten that may run short', 'k', 'count', [0, 5], 1, {
    isSetting: true,
    whole: true,
    help: 'The herd then lives on hay that somebody must find in a bad year.',
  }),
  carriedPercent: number('Leftover hay still good a year later', 'c_l', 'pct', [0, 100], 95, { help: '95 under a roof. On the ground, far less.' }),
  referenceRatio: number('Local correction of water use', 'f', 'ratio', [0.7, 1.3], 1, {
    isSetting: true,
    step: 0.05,
    help: 'Heat alone reads low on windy plains and high in damp places: about 0.92 in the humid South and East.',
  }),
  crownLbPerAc: number('Growth from the crowns, as if so much stood', 'G_0', 'lb/ac', [30, 600], 150, {
    isSetting: true,
    help: 'What lets bitten grass start again. Our own figure.',
  }),
  ceilingRatio: number('Most that can stand, over the usual yield', 'K_Y', 'ratio', [1.2, 4], 2, {
    isSetting: true,
    help: 'Where growth stops for lack of room. Our own figure.',
  }),
  weatheredPercent: number('Dead grass that falls in a month', 'b_f', 'pct', [1, 20], 7, { isSetting: true, help: 'By one trial 7 to 10 percent.' }),
  trampledRatio: number('Trampled for each pound eaten', 'a_t', 'ratio', [0.1, 1.5], 0.54, {
    isSetting: true,
    help: '0.54 is 65 percent eaten of what goes. Our own figure, the same on both sides.',
  }),
  fullIntakeLbPerAc: number('Stock eat their fill down to', 'G_f', 'lb/ac', [200, 2000], 750, {
    isSetting: true,
    help: 'Below it they take less, and hay makes up the rest. Guides for humid pasture print 1,200 lb/ac (1,345 kg/ha). On thin range set it to where your own stock begin to lose flesh.',
  }),
  shownYearCount: number('Hay year to draw', 'n_d', 'count', [1, 200], 12, {
    isSetting: true,
    whole: true,
    help: 'Counted from the first; where there are fewer, the last is drawn. The table under the answer has them all.',
  }),
  shownDay: date('Day to work through', '2026-07-15', {
    isSetting: true,
    occurs: 'thisYear',
    help: 'Its numbers stand in the working, for the first paddock.',
  }),
  abstraction: choice('Rain held before any runs off', 'late', {
    isSetting: true,
    options: {
      late: { label: '5 percent of what the ground could hold, as plots showed later', short: '5 % held first' },
      early: { label: '20 percent, as the old handbook has it', short: '20 % held first' },
    },
    help: 'The two differ most in small storms.',
  }),
};

/** Where part of the herd is sold at all. */
const someSold = { sells: ['dry', 'yearly'] };

const managementInputs = {
  paddocksCount: number('Paddocks', 'N', 'count', [1, 60], 4, {
    belongsTo: 'management',
    whole: true,
    offeredBy: 'pasture.paddocks',
    help: 'For the one herd, of about one size.',
  }),
  stayDays: number('Most days in one paddock', 't_s', 'd', [1, 365], 30, { belongsTo: 'management', whole: true, offeredBy: 'grazing.stay' }),
  restDays: number('Least days of rest', 't_r', 'd', [0, 200], 0, {
    belongsTo: 'management',
    whole: true,
    help: 'A paddock is not opened sooner. 0: nobody counts.',
  }),
  next: choice('Which paddock comes next', 'in-order', {
    options: {
      'in-order': { label: 'The next in order', short: 'in order' },
      'most-grass': { label: 'The one with most grass', short: 'most grass first' },
    },
    belongsTo: 'management',
  }),
  stubbleIn: number('Stubble to leave', 'h', 'in', [0.5, 24], 2, {
    belongsTo: 'management',
    step: 0.5,
    usual: 'stubbleIn',
    offeredBy: 'pastures.stopHeight',
  }),
  whenShort: choice('No paddock is ready', 'stay', {
    options: {
      stay: { label: 'Graze on, below the stubble', short: 'graze on' },
      pull: { label: 'Feed hay until one is ready', short: 'hay until one is ready' },
    },
    belongsTo: 'management',
  }),
  turnOutDay: date('Turn-out', '2026-04-20', { occurs: 'thisYear', belongsTo: 'management', offeredBy: 'season.turnIn' }),
  pullDay: date('First day on hay', '2026-11-01', { occurs: 'thisYear', belongsTo: 'management', offeredBy: 'season.hayFrom' }),
  pullBelowDays: number('Off the grass for the year when it would last less than', 'd_p', 'd', [0, 120], 0, {
    belongsTo: 'management',
    whole: true,
    help: '0: never. Counted on what stands above the stubble, half of it eaten.',
  }),
  keptPercent: number('Stock kept, of those above', 'k_s', 'pct', [0, 300], 100, {
    belongsTo: 'management',
    step: 5,
    help: 'Leave both sides at 100 to compare grazing alone. Few other things move the hay as much.',
  }),
  sells: choice('Sell part of the herd', 'never', {
    options: {
      never: { label: 'Never: all are kept', short: 'none sold' },
      dry: { label: 'In a year in which too little grass stands', short: 'sold if grass is short' },
      yearly: { label: 'Every year', short: 'some sold each year' },
    },
    belongsTo: 'management',
    help: 'On one day of the year. At the next turn-out the herd is whole again: bought back, or raised.',
  }),
  soldPercent: number('Sold, of the head', 's_h', 'pct', [0, 100], 20, {
    belongsTo: 'management',
    shownWhen: someSold,
    step: 5,
    help: 'The same share of each kind of stock.',
  }),
  saleDay: date('Day of the sale', '2026-07-15', { occurs: 'thisYear', belongsTo: 'management', shownWhen: someSold }),
  saleBelowDays: number('Sold if the grass would last less than', 'd_s', 'd', [1, 365], 30, {
    belongsTo: 'management',
    shownWhen: { sells: 'dry' },
    whole: true,
    help: 'Counted that morning on what stands above the stubble, half of it eaten.',
  }),
  rootsMoreIn: number('Roots deeper by', 'z_m', 'in', [-24, 24], 0, {
    belongsTo: 'management',
    help: 'Leave it at 0 until you have dug on both sides. Long trials found little difference.',
  }),
  feedingLossPercent: number('Lost in feeding, of what is put out', 'f_l', 'pct', [0, 60], 13, {
    belongsTo: 'management',
    help: 'A ring with a sheeted bottom loses about 13 percent, an open ring about 20, hay on the ground far more. “Hay needed to bridge a drought” has the list.',
  }),
  barnTon: number('Hay that you mean to have each fall', 'B', 'ton', [0, 100_000], 210, { belongsTo: 'management', step: 10 }),
  mostBoughtTon: number('Most hay that you could buy in a bad fall', 'B_b', 'ton', [0, 100_000], 60, {
    belongsTo: 'management',
    step: 10,
    help: 'In a drought everybody is buying.',
  }),
};

export const inputs = { ...placeInputs, ...managementInputs };
export type Asked = ValuesOf<typeof inputs>;
/** What the weather of all years is made of. */
export const weatherKeys = [
  'weatherFrom',
  'rainRecord',
  'monthRainIn',
  'monthWetDays',
  'coldHighF',
  'coldLowF',
  'hotHighF',
  'hotLowF',
  'latitude',
  'runYears',
  'throwCount',
] as const satisfies readonly (keyof Asked)[];
