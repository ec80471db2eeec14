import { textureNames } from '../../asks/textures.ts';
import { choice, number, rows, type ValuesOf } from '../../kit/inputs.ts';
import { dayOfYear } from '../../math/weather/dayOfYear.ts';
import { extraterrestrialRadiationMj } from '../../math/weather/extraterrestrialRadiationMj.ts';
import { hargreavesMm } from '../../math/weather/hargreavesMm.ts';
import { pastureWaterUse } from '../../tables/pastureWaterUse.ts';
import { monthsByName } from '../../units/months.ts';

const filled = { dry: 'Dry', 'slightly-moist': 'Slightly moist', moist: 'Moist', wet: 'Wet', full: 'Full' } as const;

export const layers = rows({
  label: 'Layers, from the top down',
  rowName: 'layer',
  each: '{thicknessIn} of {texture}',
  help: 'A layer ends where the soil changes, or every foot. The last one ends at rock, hardpan or water, or where you stopped digging.',
  maxRows: 6,
  columns: {
    thicknessIn: number('Thickness of the layer', 'd', 'in', [1, 60], 12, {
      field: 'Dig a hole with one straight side and hold a tape against it.',
      offeredBy: 'layer.thickness',
    }),
    texture: choice('Texture', 'silt-loam', {
      options: textureNames,
      help: 'Wet a handful and squeeze a ribbon out between thumb and finger. Sand makes none, loam under an inch, clay loam one to two, clay more.',
      offeredBy: 'layer.texture',
    }),
    heldFrom: choice('What it can hold', 'survey', {
      options: { survey: 'from the soil survey', texture: 'from the texture: I have no survey' },
      help: 'The soil survey’s figure for your soil goes first. Texture is the stand-in.',
      offeredBy: 'layer.heldFrom',
    }),
    surveyRatio: number('Available water capacity in the survey', 'a', 'ratio', [0.01, 0.5], 0.2, {
      shownWhen: { heldFrom: 'survey' },
      help: 'Inches of water in an inch of soil. 0.20 is 2.4 in a foot. The survey has taken stones off already: then leave stones at 0.',
      ask: 'No survey at hand? Choose “from the texture”.',
      offeredBy: 'layer.survey',
    }),
    stonesPercent: number('Stones', 's', 'pct', [0, 90], 0, {
      help: 'Share of the side of the hole that is stone. Stones hold nothing.',
      offeredBy: 'layer.stones',
    }),
    feel: choice('Water in it today, by feel', 'moist', {
      options: {
        dry: `${filled.dry}: crumbles, no ball, no stain`,
        'slightly-moist': `${filled['slightly-moist']}: weak ball, no stain`,
        moist: `${filled.moist}: ball with finger marks, light stain`,
        wet: `${filled.wet}: ball, coats the hand`,
        full: `${filled.full}: soft ball, water shows when you squeeze or shake it`,
        measured: 'I measured it',
      },
      help: 'Never take it for full unseen. Take a handful from the middle of the layer and squeeze it hard.',
      field:
        'Dry: falls apart or is hard. Slightly moist: a weak ball, no stain on the fingers. Moist: a ball that keeps finger marks, a light stain. Wet: a ball, and soil and water coat the hand. Full: a soft ball, and water shows on it for a moment when you squeeze or shake it.',
    }),
    filledPercent: number('How full it is', 'f', 'pct', [0, 100], 50, {
      shownWhen: { feel: 'measured' },
      help: 'Share of the available water that is there: 0 where plants wilt for good, 100 after the soil has drained.',
    }),
  },
  default: [
    { thicknessIn: 8, texture: 'silt-loam', heldFrom: 'survey', surveyRatio: 0.22, stonesPercent: 0, feel: 'moist', filledPercent: 50 },
    { thicknessIn: 16, texture: 'silt-loam', heldFrom: 'survey', surveyRatio: 0.2, stonesPercent: 0, feel: 'wet', filledPercent: 50 },
    { thicknessIn: 24, texture: 'silty-clay-loam', heldFrom: 'survey', surveyRatio: 0.18, stonesPercent: 0, feel: 'wet', filledPercent: 50 },
  ],
  offeredBy: 'layers',
});

export const millimetersPerInch = 25.4;
const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
const months = monthsByName();
const latitudesDeg = {
  'north-25': 25,
  'north-30': 30,
  'north-35': 35,
  'north-40': 40,
  'north-45': 45,
  'north-50': 50,
  'north-55': 55,
  'south-25': -25,
  'south-35': -35,
  'south-45': -45,
} as const;

type Use = Pick<ValuesOf<typeof inputs>, 'useFrom' | 'useInPerDay' | 'month' | 'latitude' | 'highF' | 'lowF' | 'stand' | 'localPercent'>;

/** The month's middle day stands for it. A night warmer than the day is refused before it comes here. */
export function dailyUse({ useFrom, useInPerDay, month, latitude, highF, lowF, stand, localPercent }: Use) {
  const sunMj = extraterrestrialRadiationMj(latitudesDeg[latitude], dayOfYear(Object.keys(months).indexOf(month) + 1, 15));
  const [highC, lowC] = [celsius(highF), celsius(lowF)];
  const referenceMm = hargreavesMm({ minTempC: lowC, maxTempC: highC, extraterrestrialMj: sunMj });
  const coefficient = pastureWaterUse.coefficient[stand];
  return {
    sunMj,
    highC,
    lowC,
    referenceMm,
    coefficient,
    dayUseIn: useFrom === 'known' ? useInPerDay : (coefficient * referenceMm * (localPercent / 100)) / millimetersPerInch,
  };
}

const fromWeather = { useFrom: 'weather' };

export const inputs = {
  layers,
  topOrganicPercent: number('Organic matter that those figures stand for, top layer', 'O_1', 'pct', [0, 8], 2.6, {
    usual: 'soilPercent',
    help: 'As the soil survey gives it. If you don’t know it, put the same figure here and in the next field: then it changes nothing.',
    offeredBy: 'pasture.organic',
  }),
  organicPercent: number('Organic matter in the top layer now', 'O', 'pct', [0, 8], 2.6, {
    belongsTo: 'management',
    usual: 'soilPercent',
    help: 'By a soil test. It changes over years, not over a season.',
    offeredBy: 'pasture.organic',
  }),
  rootsMostIn: number('Depth of most roots, dug and seen', 'z', 'in', [1, 120], 13, {
    belongsTo: 'management',
    help: 'Both managements get the same depth until you have dug both. Long trials found little difference.',
    field: 'Dig a hole with one straight side, scrape it clean, and see where roots go from many to few.',
    ask: 'Dig. Without a hole, take 12 in (300 mm) for grazed pasture and read the answer with 6 in (150 mm) more below it.',
    offeredBy: 'pasture.rootsMost',
  }),
  rootsDeepestIn: number('Deepest root that you saw', 'z_{max}', 'in', [1, 120], 32, {
    belongsTo: 'management',
    help: 'A few deep roots can reach water far down. They feed little growth.',
    offeredBy: 'pasture.rootsDeepest',
  }),
  useFrom: choice('Water that the grass uses a day', 'known', {
    options: {
      known: { label: 'I have a figure', short: 'a figure of my own' },
      weather: { label: 'from the month, the place and the heat', short: 'by month and heat' },
    },
  }),
  useInPerDay: number('Use a day, with water enough', 'ET', 'in/d', [0.01, 0.6], 0.2, {
    step: 0.01,
    usual: 'useInPerDay',
    shownWhen: { useFrom: 'known' },
    help: 'One list has pasture grass at 1 to 1 1/2 in a week from May to September: 0.14 to 0.21 in a day (3.6 to 5.3 mm a day).',
    ask: 'A weather station’s or irrigation bulletin’s figure for pasture or grass. Or choose the month, the place and the heat.',
  }),
  // It stays July on a fresh form: the heat beside it is that of July.
  month: choice('Month', 'july', { options: months, shownWhen: fromWeather }),
  latitude: choice('Nearest latitude', 'north-40', {
    options: {
      'north-25': '25° north',
      'north-30': '30° north',
      'north-35': '35° north',
      'north-40': '40° north',
      'north-45': '45° north',
      'north-50': '50° north',
      'north-55': '55° north',
      'south-25': '25° south',
      'south-35': '35° south',
      'south-45': '45° south',
    },
    shownWhen: fromWeather,
    offeredBy: 'place.latitude',
  }),
  highF: number('Usual high of the day', 'T_{max}', 'f', [0, 125], 88, { shownWhen: fromWeather }),
  lowF: number('Usual low of the night', 'T_{min}', 'f', [-20, 100], 64, { shownWhen: fromWeather }),
  stand: choice('The pasture', 'rotated', {
    options: {
      rotated: { label: 'Good stand, grazed in turns', short: 'good stand' },
      extensive: { label: 'Thin stand, grazed all season', short: 'thin stand' },
    },
    shownWhen: fromWeather,
    help: 'The same for both managements: a grazed-off stand would look thrifty here, and its bare ground loses water that this does not count.',
  }),
  localPercent: number('Local correction', 'k', 'pct', [50, 200], 100, {
    shownWhen: fromWeather,
    help: 'Heat alone reads low on windy plains and high in damp places. If your weather station says so, correct it here.',
  }),
  easyFrom: choice('Share that grass takes before it slows', 'fitted', {
    options: {
      fitted: { label: '60 percent, fitted to the day’s use', short: 'fitted to the day’s use' },
      own: { label: 'my own share, the same every day', short: 'my own share' },
    },
    convention: true,
    help: 'The handbook has 60 percent for pasture at 0.2 in a day, less when the day takes more. Some take one share for every day.',
  }),
  easyPercent: number('My share', 'p_{o}', 'pct', [10, 80], 60, { shownWhen: { easyFrom: 'own' } }),
  growthPercent: number('Growth to wait for', 'k_g', 'pct', [5, 99], 25, { help: 'At a quarter of full growth a pasture gives next to nothing.' }),
  organicCount: choice('What one percent of organic matter holds', 'by-equation', {
    options: {
      'by-equation': { label: 'by the equation for its texture', short: 'by the equation' },
      'by-sheet': { label: '1.5 percent of the soil, as a 1998 sheet has it', short: 'by the 1998 sheet' },
    },
    convention: true,
    help: 'Published figures run from less than a half to more than two percent of the soil’s volume.',
  }),
  rainIn: number('A rain that falls today', 'P', 'in', [0, 10], 1, { usual: 'soakingIn', help: 'To see what it would buy. Put 0 for none.' }),
  lostPercent: number('Share of it that never goes in', 'q', 'pct', [0, 100], 20, {
    belongsTo: 'management',
    help: 'Runs off, or wets leaves and litter and dries again.',
    ask: '“Runoff from rainfall depth” tells what ran off. A light rain on thick grass may wet no more than leaves.',
  }),
};
