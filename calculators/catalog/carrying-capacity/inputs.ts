import { growthCurve } from '../../asks/growthCurve.ts';
import { kindNames, stockKind } from '../../asks/stock.ts';
import { choice, date, number, rows } from '../../kit/inputs.ts';
import { commonGrazer } from '../../math/herd/likelyIntakePercent.ts';

const kinds = ['cow-nursing', 'cow-dry', 'bull', 'heifer', 'stocker', 'calf', 'ewe-nursing', 'ewe-dry', 'doe', 'doe-dry', 'horse'] as const;
export const kindWords = kindNames(kinds);

export const herd = rows({
  label: 'The herd',
  rowName: 'kind of stock',
  each: '{#countHead} {kind} of {weightLb}',
  help: 'Put the kind that would go first on the first line. The others are taken to stay.',
  maxRows: 8,
  columns: {
    kind: stockKind('cow-nursing', kinds, { appetiteOf: 'season' }),
    countHead: number('Head', 'n', 'head', [1, 20_000], 45, {
      whole: true,
      help: 'Those on the place now, taken to have been there since turn-in.',
      offeredBy: 'herd.count',
    }),
    weightLb: number('Weight of one', 'W', 'lb', [20, 3500], 1250, {
      step: 10,
      usual: 'animalLb',
      ask: 'What did your last culls weigh on the sale tickets? Take the mean of three or more. Guesses run light.',
      offeredBy: 'herd.weight',
    }),
    intakePercent: number('Eats a day, share of its weight', 'p', 'pct', [0.5, 8], commonGrazer('cow-nursing').intakePercent, {
      help: 'With the water out. Guides miss by about 15 % either way.',
      ask: 'Leave what the kind filled in.',
      offeredBy: 'herd.seasonIntake',
    }),
  },
  default: [
    { kind: 'cow-nursing', countHead: 45, ...commonGrazer('cow-nursing') },
    { kind: 'heifer', countHead: 9, ...commonGrazer('heifer') },
    { kind: 'bull', countHead: 2, ...commonGrazer('bull') },
    { kind: 'ewe-dry', countHead: 60, ...commonGrazer('ewe-dry') },
  ],
  offeredBy: 'herd',
});

const byYield = { yieldFrom: 'survey' };
const byStockDays = { yieldFrom: 'stock-days' };

const pasture = (
  [areaAc, waterDistanceMi, slopePercent, ownUsablePercent]: readonly [number, number, number, number],
  [normalLbPerAc, poorLbPerAc]: readonly [number, number],
  lastedDays: number,
) => ({ areaAc, waterDistanceMi, slopePercent, ownUsablePercent, normalLbPerAc, poorLbPerAc, usualHead: 60, lastedDays });
/** High bench, low bench, the breaks, creek bottom, ewe pasture, calving pasture of the demo place. */
const demoPastures = [
  pasture([120, 0.6, 4, 95], [2400, 1200], 50),
  pasture([85, 0.4, 4, 95], [3000, 1700], 48),
  pasture([110, 0.8, 20, 70], [1600, 800], 28),
  pasture([35, 0.2, 1, 100], [4200, 2600], 32),
  pasture([50, 0.3, 3, 100], [2800, 1500], 24),
  pasture([30, 0.2, 3, 100], [2200, 1100], 12),
];

export const ground = {
  yieldFrom: choice('How much grass the place makes', 'survey', {
    options: {
      survey: 'Pounds an acre: soil survey, range site guide, or my own clips',
      'stock-days': 'I only know what I ran there in a usual year',
    },
    offeredBy: 'pastures.yieldFrom',
  }),
  yieldMeans: choice('What those pounds are, and the share you take', 'eaten-of-growth', {
    options: {
      'eaten-of-growth': { label: 'Whole year’s growth; I give the share eaten (harvest efficiency)', short: 'share eaten of growth' },
      'gone-of-growth': { label: 'Whole year’s growth; I give the share gone (utilization)', short: 'share gone of growth' },
      'above-stubble': { label: 'Only what stands above the stubble; I give the share of that eaten', short: 'share above the stubble' },
    },
    shownWhen: byYield,
    help: 'Only one share is used. Taking half, and then a harvest share of that half, counts the stubble twice.',
    ask: 'Were the plots clipped to the ground, or at grazing height? Soil-survey yields are the whole year’s growth, to the ground.',
  }),
  yieldBasis: choice('Those pounds are weighed', 'air-dry', {
    options: {
      'air-dry': { label: 'air-dry, 90 % dry matter', short: 'air-dry pounds' },
      'oven-dry': { label: 'oven-dry', short: 'oven-dry pounds' },
    },
    convention: true,
    shownWhen: byYield,
    help: 'Soil surveys and range guides mostly print air-dry pounds. What stock eat is counted oven-dry. Mixing them gives a tenth too many head.',
  }),
  reachFrom: choice('Ground that stock really use', 'guide', {
    options: {
      guide: { label: 'From distance to water and slope', short: 'use by water and slope' },
      own: { label: 'I have seen it: my own share', short: 'use as you saw it' },
    },
    shownWhen: byYield,
    offeredBy: 'pastures.reachFrom',
  }),
  pastures: rows({
    label: 'Pastures',
    rowName: 'pasture',
    each: '{areaAc} of {normalLbPerAc}, {usualHead} for {lastedDays}',
    help: 'Split one where the far end or the steep side is used less.',
    maxRows: 10,
    columns: {
      areaAc: number('Area', 'A', 'ac', [0.1, 100_000], 100, { usual: 'pastureAc', shownWhen: byYield, offeredBy: 'pasture.area' }),
      waterDistanceMi: number('Farthest from water', 'w', 'mi', [0, 10], 0.5, {
        usual: 'waterMi',
        shownWhen: { ...byYield, reachFrom: 'guide' },
        help: 'Taken as a round pasture with one water in the middle. Of its ground within a mile (1.6 km) all counts, from there to two (3.2 km) half, past that none.',
        ask: 'Is it long, square or watered in two places? Then more lies near water than this counts: give your own share.',
        offeredBy: 'pasture.waterDistance',
      }),
      slopePercent: number('Slope', 's', 'pct', [0, 100], 5, {
        shownWhen: { ...byYield, reachFrom: 'guide' },
        field: 'Hold a 10-ft board level down the hill. Each inch of drop at its end is 0.8 %.',
        offeredBy: 'pasture.slope',
      }),
      ownUsablePercent: number('Share that they use', 'r_o', 'pct', [0, 100], 80, {
        shownWhen: { ...byYield, reachFrom: 'own' },
        field: 'Walk it in the fall. Dung and bitten grass show where they go.',
        offeredBy: 'pasture.reach',
      }),
      normalLbPerAc: number('Yield in a normal year', 'Y_n', 'lb/ac', [0, 20_000], 2400, {
        usual: 'forageLbPerAc',
        shownWhen: byYield,
        ask: 'The soil survey prints yields for a favorable, a normal and an unfavorable year by soil. Or choose “what I ran there” above.',
        offeredBy: 'pasture.normal',
      }),
      poorLbPerAc: number('Yield in a poor year', 'Y_p', 'lb/ac', [0, 20_000], 1300, {
        usual: 'forageLbPerAc',
        shownWhen: byYield,
        ask: 'Take the soil survey’s unfavorable year. With none, half of normal is a fair guess for a hard drought.',
        offeredBy: 'pasture.poor',
      }),
      usualHead: number('Head that it fed in a usual year', 'n_u', 'head', [0, 20_000], 60, {
        usual: 'herdHead',
        whole: true,
        shownWhen: byStockDays,
        help: 'Count all that grazed there in one kind, by what one eats: ten dry ewes, or five with lambs, eat about as much as a nursing cow.',
        offeredBy: 'record.usualHead',
      }),
      lastedDays: number('For how many days', 't_u', 'd', [0, 366], 30, {
        shownWhen: byStockDays,
        ask: 'Feed books, the calendar on the wall, or the day the fence was last opened. A year when it came out right, not the best one.',
        offeredBy: 'record.lasted',
      }),
    },
    default: demoPastures,
    offeredBy: 'pastures',
  }),
  usualEatenLbPerDay: number('One of those head ate a day', 'e_u', 'lb/d', [0.2, 100], 31, {
    usual: 'eatenLbPerDay',
    shownWhen: byStockDays,
    help: 'With the water out. A nursing cow of 1,250 lb (567 kg) eats about 31 lb (14 kg), a dry ewe of 160 lb (73 kg) about 3.2 lb (1.5 kg).',
    offeredBy: 'herd.yardstick',
  }),
  poorPercent: number('A poor year makes, of a usual one', 'q', 'pct', [0, 100], 50, {
    shownWhen: byStockDays,
    ask: 'In your last bad drought, how many weeks early did the grass run out? Six weeks early of twenty-four is 75 %.',
  }),
};

export const inputs = {
  ...ground,
  herd,
  fromDay: date('Turn-in, first day on grass this year', '2026-04-20', { occurs: { lastBy: 'today' }, offeredBy: 'season.turnIn' }),
  toDay: date('Day until which the grass must last', '2026-10-31', {
    occurs: { nextFrom: 'fromDay' },
    help: 'Within 12 months of turn-in, before growth starts anew. It may lie past New Year.',
    offeredBy: 'season.end',
  }),
  todayDay: date('Today', '2026-06-20', { occurs: 'today' }),
  ...growthCurve('Last month with growth'),
  soFarPercent: number('Growth so far, of what is usual by today', 'a', 'pct', [0, 150], 80, {
    step: 5,
    ask: 'What stands now, and what they have already eaten, against the same day in a usual year: half, two thirds, all of it?',
    field: 'Look at a caged spot, or at a pasture that nobody has grazed yet.',
  }),
  restPercent: number('Growth still to come, of what is usual', 'b', 'pct', [0, 100], 70, {
    step: 5,
    help: 'Nobody knows it. The range under the answer runs from all of it to none.',
    ask: 'How wet is the ground a foot down? Dry: take 50 % or less. Rain after the best month seldom makes up.',
  }),
  land: choice('What land it is, and how it is grazed', 'season-long', {
    options: {
      range: { label: 'Range: native grass in large pastures', short: 'range', fills: { harvestPercent: 25 } },
      'season-long': { label: 'Pasture, grazed all season or moved now and then', short: 'pasture, seldom moved', fills: { harvestPercent: 35 } },
      moved: { label: 'Pasture, moved every 3 or 4 days', short: 'pasture, moved often', fills: { harvestPercent: 50 } },
      own: { label: 'My own share', short: 'own share' },
    },
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'eaten-of-growth' },
    help: 'Choosing one fills in the share eaten. It decides the head count more than anything else here.',
    since: { version: 2, before: 'own' },
  }),
  harvestPercent: number('Share eaten, of the whole growth', 'h', 'pct', [5, 80], 35, {
    step: 5,
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'eaten-of-growth' },
    help: 'Range: 25 %. Pasture grazed all season: 30 to 40 %. Moved every 3 or 4 days: 50 to 60 %. The stubble is already left.',
    since: { version: 3, before: '40pct' },
  }),
  gonePercent: number('Share gone when grazing ends', 'u', 'pct', [5, 90], 50, {
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'gone-of-growth' },
    help: 'Eaten, trampled and blown away together: take half, leave half is 50 %.',
  }),
  eatenOfGonePercent: number('Share of what is gone that they ate', 'v', 'pct', [10, 100], 50, {
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'gone-of-growth' },
    help: 'About half on range.',
  }),
  grazedPercent: number('Share eaten, of what stands above the stubble', 'g', 'pct', [10, 100], 65, {
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'above-stubble' },
    help: 'A day in a paddock: 80 %. A week: 60 %. The rest is trampled or passed over.',
  }),
  goDay: date('Day by which they could go', '2026-07-10', {
    occurs: { daysAfterToday: 20 },
    belongsTo: 'management',
    help: 'The sale, or the truck.',
  }),
};
