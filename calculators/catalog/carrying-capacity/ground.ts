import { choice, number, rows } from '../../kit/inputs.ts';

const byYield = { yieldFrom: 'survey' };
const byStockDays = { yieldFrom: 'stock-days' };

export const ground = {
  yieldFrom: choice('How much grass the place makes', 'survey', {
    options: {
      survey: 'Pounds an acre: soil survey, range site guide, or my own clips',
      'stock-days': 'I only know what I ran there in a usual year',
    },
  }),
  yieldMeans: choice('What those pounds are, and the share you take', 'eaten-of-growth', {
    options: {
      'eaten-of-growth': 'Whole year’s growth; I give the share eaten (harvest efficiency)',
      'gone-of-growth': 'Whole year’s growth; I give the share gone (utilization)',
      'above-stubble': 'Only what stands above the stubble; I give the share of that eaten',
    },
    shownWhen: byYield,
    help: 'Only one share is used. Taking half, and then a harvest share of that half, counts the stubble twice.',
    ask: 'Were the plots clipped to the ground, or at grazing height? Soil-survey yields are the whole year’s growth, to the ground.',
  }),
  yieldBasis: choice('Those pounds are weighed', 'air-dry', {
    options: { 'air-dry': 'air-dry, 90 % dry matter', 'oven-dry': 'oven-dry' },
    convention: true,
    shownWhen: byYield,
    help: 'Soil surveys and range guides mostly print air-dry pounds. What stock eat is counted oven-dry. Mixing them gives a tenth too many head.',
  }),
  reachFrom: choice('Ground that stock really use', 'guide', {
    options: { guide: 'From distance to water and slope', own: 'I have seen it: my own share' },
    shownWhen: byYield,
  }),
  pastures: rows({
    label: 'Pastures',
    rowName: 'pasture',
    help: 'Split one where the far end or the steep side is used less.',
    maxRows: 10,
    columns: {
      areaAc: number('Area', 'A', 'ac', [0.1, 100_000], 100, { usual: 'pastureAc', shownWhen: byYield }),
      waterDistanceMi: number('Farthest from water', 'w', 'mi', [0, 10], 0.5, {
        usual: 'waterMi',
        shownWhen: { ...byYield, reachFrom: 'guide' },
        help: 'Past a mile cattle use about half of it; past two, next to none.',
      }),
      slopePercent: number('Slope', 's', 'pct', [0, 100], 5, {
        shownWhen: { ...byYield, reachFrom: 'guide' },
        field: 'Hold a 10-ft board level down the hill. Each inch of drop at its end is 0.8 %.',
      }),
      ownUsablePercent: number('Share that they use', 'r_o', 'pct', [0, 100], 80, {
        shownWhen: { ...byYield, reachFrom: 'own' },
        field: 'Walk it in the fall. Dung and bitten grass show where they go.',
      }),
      normalLbPerAc: number('Yield in a normal year', 'Y_n', 'lb/ac', [0, 20_000], 2400, {
        usual: 'forageLbPerAc',
        shownWhen: byYield,
        ask: 'The soil survey prints yields for a favorable, a normal and an unfavorable year by soil. Or choose “what I ran there” above.',
      }),
      poorLbPerAc: number('Yield in a poor year', 'Y_p', 'lb/ac', [0, 20_000], 1300, {
        usual: 'forageLbPerAc',
        shownWhen: byYield,
        ask: 'Take the soil survey’s unfavorable year. With none, half of normal is a fair guess for a hard drought.',
      }),
      usualHead: number('Head that it fed in a usual year', 'n_u', 'head', [0, 20_000], 60, {
        usual: 'herdHead',
        whole: true,
        shownWhen: byStockDays,
        help: 'Turn all that grazed there into one kind: five dry ewes are about one cow.',
      }),
      lastedDays: number('For how many days', 't_u', 'd', [0, 366], 30, {
        shownWhen: byStockDays,
        ask: 'Feed books, the calendar on the wall, or the day the fence was last opened. A year when it came out right, not the best one.',
      }),
    },
    default: [
      // High bench, low bench, the breaks, creek bottom, ewe pasture, calving pasture of the demo place.
      {
        areaAc: 120,
        waterDistanceMi: 0.6,
        slopePercent: 4,
        ownUsablePercent: 95,
        normalLbPerAc: 2400,
        poorLbPerAc: 1200,
        usualHead: 60,
        lastedDays: 50,
      },
      {
        areaAc: 85,
        waterDistanceMi: 0.4,
        slopePercent: 4,
        ownUsablePercent: 95,
        normalLbPerAc: 3000,
        poorLbPerAc: 1700,
        usualHead: 60,
        lastedDays: 48,
      },
      {
        areaAc: 110,
        waterDistanceMi: 0.8,
        slopePercent: 20,
        ownUsablePercent: 70,
        normalLbPerAc: 1600,
        poorLbPerAc: 800,
        usualHead: 60,
        lastedDays: 28,
      },
      {
        areaAc: 35,
        waterDistanceMi: 0.2,
        slopePercent: 1,
        ownUsablePercent: 100,
        normalLbPerAc: 4200,
        poorLbPerAc: 2600,
        usualHead: 60,
        lastedDays: 32,
      },
      {
        areaAc: 50,
        waterDistanceMi: 0.3,
        slopePercent: 3,
        ownUsablePercent: 100,
        normalLbPerAc: 2800,
        poorLbPerAc: 1500,
        usualHead: 60,
        lastedDays: 24,
      },
      {
        areaAc: 30,
        waterDistanceMi: 0.2,
        slopePercent: 3,
        ownUsablePercent: 100,
        normalLbPerAc: 2200,
        poorLbPerAc: 1100,
        usualHead: 60,
        lastedDays: 12,
      },
    ],
  }),
  usualEatenLbPerDay: number('One of those head ate a day', 'e_u', 'lb/d', [0.2, 100], 31, {
    usual: 'eatenLbPerDay',
    shownWhen: byStockDays,
    help: 'With the water out. A nursing cow of 1,250 lb eats about 31 lb.',
  }),
  poorPercent: number('A poor year makes, of a usual one', 'q', 'pct', [0, 100], 50, {
    shownWhen: byStockDays,
    ask: 'In your last bad drought, how many weeks early did the grass run out? Six weeks early of twenty-four is 75 %.',
  }),
};
