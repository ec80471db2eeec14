import { acresByPacing } from '../../asks/ground.ts';
import { allRibbons } from '../../asks/textures.ts';
import { choice, number } from '../../kit/inputs.ts';

export const inputs = {
  areaAc: number('Area', 'A_{ac}', 'ac', [0.1, 100_000], 120, {
    usual: 'pastureAc',
    help: 'Only for the truck loads.',
    field: acresByPacing,
    offeredBy: 'pasture.area',
  }),
  rainFrom: choice('How hard the rain beats in a year (rain factor R)', 'known', {
    options: {
      known: { label: 'From a local table or map', short: 'local rain factor' },
      'year-rain': { label: 'Last resort: I only know the rain of a year', short: 'rain factor guessed' },
    },
    help: 'Local tables and maps print it, by county.',
    field: 'Ask your conservation office for R in US units. A metric R is about 17 times as large; divide it by 17.02.',
    offeredBy: 'place.rainFrom',
  }),
  rainFactorRatio: number('Rain factor (R)', 'R_{local}', 'ratio', [1, 700], 190, {
    step: 5,
    help: 'In US units, hundred foot-tons times inches, an acre an hour.',
    shownWhen: { rainFrom: 'known' },
    offeredBy: 'place.rainFactor',
  }),
  yearRainIn: number('Rain in a usual year', 'P_{in}', 'in', [4, 118], 38, {
    usual: 'yearIn',
    help: 'The mean of many years, not of this one.',
    shownWhen: { rainFrom: 'year-rain' },
    offeredBy: 'place.yearRain',
  }),
  soilFrom: choice('How easily the soil washes (soil factor K)', 'texture', {
    options: { known: 'From the soil survey', texture: 'I don’t know: by texture' },
    help: 'The soil survey prints K for each soil. Its own number goes before any list by texture.',
  }),
  soilFactorRatio: number('Soil factor (K)', 'K_{survey}', 'ratio', [0.02, 0.7], 0.37, {
    help: 'In US units; surveys print it between 0.02 and 0.69.',
    shownWhen: { soilFrom: 'known' },
  }),
  texture: choice('Wet some topsoil and squeeze out a ribbon', 'silt-loam', {
    options: allRibbons,
    shownWhen: { soilFrom: 'texture' },
    offeredBy: 'pasture.texture',
  }),
  organicMatterPercent: number('Organic matter in the topsoil', 'OM', 'pct', [0, 10], 2.6, {
    usual: 'soilPercent',
    help: 'From a soil test, percent by weight.',
    ask: 'No test? By common practice, pale soil is near 1, brown near 2, dark brown near 3, nearly black 4 or more.',
    shownWhen: { soilFrom: 'texture' },
    offeredBy: 'pasture.organic',
  }),
  slopeFrom: choice('How steep it is', 'board', {
    options: {
      board: { label: 'Measured with a 10-ft board', short: 'slope by a board' },
      known: { label: 'I know the percent', short: 'slope in percent' },
    },
    offeredBy: 'pasture.slopeFrom',
  }),
  riseIn: number('Gap under the low end of the level board', 'h', 'in', [0.5, 72], 6, {
    step: 0.5,
    help: 'Rise over 10 feet (3.05 m).',
    field:
      'Lay one end of a straight 10-ft (3.05 m) board on the ground, pointing down the slope. Lift the other end until a level says it is level. Measure from that end down to the ground. Do it at three places and take the middle one.',
    shownWhen: { slopeFrom: 'board' },
  }),
  slopePercent: number('Slope', 's_{known}', 'pct', [0.2, 60], 8, {
    help: 'Feet of fall in 100 feet.',
    shownWhen: { slopeFrom: 'known' },
    offeredBy: 'pasture.slope',
  }),
  lengthFrom: choice('How far water runs down the slope', 'paces', {
    options: { paces: { label: 'Counted in steps', short: 'length in steps' }, known: { label: 'I know the feet', short: 'length in feet' } },
    help: 'From the crest to where water gathers in a draw, or slows and drops its soil. Not to the fence.',
    offeredBy: 'pasture.lengthFrom',
  }),
  stepsCount: number('Steps from the crest to where water gathers or slows', 'n', 'count', [10, 250], 80, {
    step: 5,
    whole: true,
    field: 'Walk straight down the slope. Stop at the first draw, ditch or terrace, or where the slope flattens and soil has settled.',
    shownWhen: { lengthFrom: 'paces' },
  }),
  stepFt: number('One step', 'p', 'ft', [1.5, 4], 2.5, {
    help: 'Walk 100 ft or 30 m of tape and divide that by your steps.',
    shownWhen: { lengthFrom: 'paces' },
    offeredBy: 'tools.pace',
  }),
  lengthFt: number('Slope length', 'L_{known}', 'ft', [15, 1000], 200, { shownWhen: { lengthFrom: 'known' }, offeredBy: 'pasture.slopeLength' }),
  groundCoverPercent: number('Covered ground in this pasture', 'G', 'pct', [0, 100], 45, {
    step: 5,
    belongsTo: 'management',
    help: 'Plants at the ground, litter and stones together, against bare soil. Take the usual of the year, not the best day.',
    ask: 'Walk a hundred steps. At each one look at the tip of your boot: plant, litter or stone counts one, bare soil counts nothing. The count is the percent.',
    offeredBy: 'pasture.groundCover',
  }),
  coverKind: choice('What covers it', 'grass', {
    options: {
      grass: { label: 'Grass, or litter lying on the ground', short: 'grass or litter' },
      weeds: { label: 'Mostly broadleaf weeds with few roots at the surface', short: 'broadleaf weeds' },
    },
    belongsTo: 'management',
  }),
  above: choice('Taller plants above that', 'none', {
    options: {
      none: { label: 'None worth counting', short: 'nothing taller above' },
      'short-brush': { label: 'Tall weeds or short brush, about knee high', short: 'knee-high brush' },
      'tall-brush': { label: 'Brush, about 6 ft', short: 'brush about 6 ft high', shortMetric: 'brush about 1.8 m high' },
      trees: { label: 'Trees without low brush', short: 'trees' },
    },
    belongsTo: 'management',
  }),
  canopyPercent: number('Ground under those, seen from above', 'G_{up}', 'pct', [0, 100], 25, {
    belongsTo: 'management',
    ask: 'At each of the hundred steps look straight up as well: leaves overhead count one.',
    shownWhen: { above: ['short-brush', 'tall-brush', 'trees'] },
  }),
  ploughed: choice('Plowed ground to set beside it', 'corn-soybeans', {
    options: {
      'corn-soybeans': { label: 'Corn and soybeans in turn, plowed in spring', short: 'corn and soybeans', group: 'Crop rotations' },
      'wheat-meadow-corn': { label: 'Wheat, meadow, then two years of corn', short: 'wheat, meadow and corn', group: 'Crop rotations' },
      'wheat-fallow': { label: 'Wheat and fallow in turn, plowed in fall', short: 'wheat and fallow', group: 'Crop rotations' },
      'wheat-stubble': { label: 'Wheat and fallow in turn, stubble left on top', short: 'wheat, stubble left', group: 'Crop rotations' },
      own: { label: 'A local rotation: I know its cover factor (C)', short: 'a local rotation', group: 'Your own' },
      'bare-fallow': { label: 'Bare fallow: tilled, no crop all year (C = 1)', short: 'bare fallow', group: 'The handbook’s yardstick, not a farm' },
    },
    help: 'The same soil, slope and rain, farmed as neighbors farm it.',
  }),
  ploughedCoverRatio: number('Cover factor of the rotation (C)', 'C_{own}', 'ratio', [0.005, 0.9], 0.4, {
    help: 'The mean over all years of the rotation.',
    field: 'The conservation office has it for the rotations of the county.',
    shownWhen: { ploughed: 'own' },
  }),
  practiceRatio: number('Practice factor of the crop ground (P)', 'P_f', 'ratio', [0.1, 1], 1, {
    help: '1 is farming up and down the slope. Contour rows and strips have less; the local handbook has it.',
    shownWhen: { ploughed: ['corn-soybeans', 'wheat-meadow-corn', 'wheat-fallow', 'wheat-stubble', 'own'] },
  }),
  toleranceFrom: choice('What the soil is said to bear (tolerance T)', 'depth', {
    options: { known: 'From the soil survey', depth: 'I don’t know: by how deep roots can go' },
  }),
  surveyTonPerAc: number('Tolerance (T)', 'T_{survey}', 'ton/ac', [1, 5], 5, {
    help: 'A year; surveys print 1 to 5 tons/ac (2.2 to 11.2 tonnes/ha).',
    shownWhen: { toleranceFrom: 'known' },
  }),
  rooting: choice('How deep roots can go', 'to-60', {
    options: {
      'to-10': { label: '10 in or less', short: 'to 10 in', shortMetric: 'to 255 mm' },
      'to-20': { label: 'More than 10, to 20 in', short: 'to 20 in', shortMetric: 'to 510 mm' },
      'to-40': { label: 'More than 20, to 40 in', short: 'to 40 in', shortMetric: 'to 1,015 mm' },
      'to-60': { label: 'More than 40, to 60 in', short: 'to 60 in', shortMetric: 'to 1,525 mm' },
      deeper: { label: 'Deeper than 60 in', short: 'past 60 in', shortMetric: 'past 1,525 mm' },
    },
    help: 'Down to rock, hardpan or standing water.',
    shownWhen: { toleranceFrom: 'depth' },
    offeredBy: 'pasture.rooting',
  }),
  subsoil: choice('Could the subsoil be made into fair topsoil with manure and lime?', 'fair', {
    options: { fair: { label: 'Yes, in time', short: 'fair subsoil' }, poor: { label: 'No: rock, gravel, or raw clay', short: 'poor subsoil' } },
    shownWhen: { toleranceFrom: 'depth' },
  }),
  truckTon: number('One truck load', 'w', 'ton', [0.5, 40], 15, {
    help: 'By common practice a dump truck with two rear axles carries about 15 tons (14 tonnes).',
  }),
  densityGPerCm3: number('Weight of the topsoil (bulk density)', '\\rho', 'g/cc', [0.7, 1.9], 1.3, {
    usual: 'soilGPerCm3',
    help: 'Only for the thickness. 1.3 is usual for a loam.',
  }),
  erodibilityList: choice('Soil factor by texture from', 'stewart-1975', {
    options: {
      'stewart-1975': { label: 'the US list, three levels of organic matter', short: 'the US list' },
      'stone-hilborn-2012': { label: 'the Ontario list, below or above 2 %', short: 'the Ontario list' },
    },
    convention: true,
    help: 'The two lists differ by up to a half on sandy ground.',
    shownWhen: { soilFrom: 'texture' },
  }),
  coverBetween: choice('Cover factor between the columns of the pasture table', 'straight', {
    options: { straight: 'on straight lines', logarithms: 'on straight lines of its logarithm' },
    convention: true,
    help: 'The table steps by 20 percent. A published permit reads straight lines between. The factor falls more like a curve, so logarithms give about a tenth less midway, and up to a fifth less on well-covered ground.',
  }),
  slopeBook: choice('Slope worked by', 'revised-1997', {
    options: {
      'revised-1997': { label: 'the later form (1997)', short: 'the 1997 form' },
      'handbook-1978': { label: 'the older form (1978)', short: 'the 1978 form' },
    },
    convention: true,
    help: 'The later form knows that sod rills less than tilled ground, and gives less on steep slopes. Past 18 percent the two part: at 50 percent the older one counts the steepness about twice as high.',
  }),
};
