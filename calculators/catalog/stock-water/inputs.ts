import { choice, number, type ValuesOf, yesNo } from '../../kit/inputs.ts';
import { pipeInsideIn } from '../../tables/stockWater.ts';
import { herd } from './herd.ts';

const pond = { supply: 'pond' } as const;
const stake = { ...pond, lossFrom: 'stake' } as const;

/** What the drought decides and the water that is there. */
export const placeInputs = {
  hotF: number('Hottest day to plan for', 'T', 'f', [-20, 120], 95, {
    help: 'The plan takes the most that any list says up to this heat.',
    offeredBy: 'place.hot',
  }),
  intakeFrom: choice('What one drinks', 'lists', {
    options: {
      lists: { label: 'From published lists, for that heat', short: 'by published lists' },
      known: { label: 'I measured it', short: 'as measured' },
    },
  }),
  wantedDays: number('How long must it last', 't_w', 'd', [1, 365], 120, {
    step: 5,
    whole: true,
    ask: 'On which date do you move off this water, or can you count on rain that fills it? Count the days from today.',
  }),
  supply: choice('Where the water comes from', 'pond', {
    options: {
      pond: { label: 'A pond', short: 'a pond' },
      flow: { label: 'A well, spring or water line', short: 'a well or spring' },
      hauled: { label: 'Hauled, or only what stands in tanks', short: 'hauled water' },
    },
    offeredBy: 'water.supply',
  }),
  surfaceFrom: choice('Water surface of the pond today', 'across', {
    options: {
      across: { label: 'I pace it across, two ways', short: 'paced across' },
      known: { label: 'I know the acres of water', short: 'acres known' },
      shore: { label: 'I can only pace round it', short: 'paced round' },
    },
    shownWhen: pond,
    offeredBy: 'water.surfaceFrom',
  }),
  lengthFt: number('Longest way across the water', 'l', 'ft', [5, 5000], 220, {
    step: 10,
    shownWhen: { ...pond, surfaceFrom: 'across' },
    field: 'Pace along the bank from end to end, or stretch a marked rope. Count your paces over a known hundred feet first.',
    offeredBy: 'water.length',
  }),
  widthFt: number('Widest way square to it', 'w', 'ft', [5, 5000], 150, {
    step: 10,
    shownWhen: { ...pond, surfaceFrom: 'across' },
    offeredBy: 'water.width',
  }),
  surfaceAc: number('Water surface', 'A_k', 'ac', [0.01, 200], 0.6, {
    shownWhen: { ...pond, surfaceFrom: 'known' },
    help: 'As it is now, not as the map has it when full.',
    offeredBy: 'water.surface',
  }),
  shoreFt: number('Way round the water’s edge', 'c', 'ft', [20, 15_000], 590, {
    step: 10,
    shownWhen: { ...pond, surfaceFrom: 'shore' },
    help: 'This gives the most that the pond can be. A long pond or one with bays holds less.',
    offeredBy: 'water.shore',
  }),
  maxDepthFt: number('Deepest water today', 'D', 'ft', [0.5, 40], 7, {
    step: 0.5,
    usual: 'pondFt',
    shownWhen: pond,
    field: 'A weight on a marked line, let down from a boat or thrown from the dam at three places. Take the deepest. Never go out alone or on ice.',
    offeredBy: 'water.maxDepth',
  }),
  lossFrom: choice('What sun and ground take', 'known', {
    options: { known: 'I give it by the day', stake: 'I have a stake in the water' },
    shownWhen: pond,
  }),
  evaporationInPerDay: number('Drying up by sun and wind', 'e', 'in/d', [0, 1], 0.3, {
    usual: 'evaporationInPerDay',
    shownWhen: { ...pond, lossFrom: 'known' },
    help: 'A quarter to four tenths of an inch (6 to 10 mm) a day in a hot, dry summer; less in spring and fall. From memory: a stake is better.',
    ask: 'Drive a stake and mark the water. How far is it down in a week without rain? Then choose “I have a stake in the water”.',
    offeredBy: 'water.evaporation',
  }),
  seepageInPerDay: number('Soaking away', 'z', 'in/d', [0, 2], 0.05, {
    usual: 'seepageInPerDay',
    shownWhen: { ...pond, lossFrom: 'known' },
    help: 'Little from a tight clay pond. A leaking one loses more than the sun takes.',
    offeredBy: 'water.seepage',
  }),
  dropIn: number('Fall on the stake', 's', 'in', [0.1, 60], 3, {
    shownWhen: stake,
    field: 'A stake with marks, at a spot where stock can’t knock it. Read it at the same hour, with no rain and no inflow between.',
  }),
  stakeDays: number('Days between the two readings', 't_s', 'd', [1, 60], 7, { shownWhen: stake, help: 'A week or more.' }),
  stakeDrunkGal: number('Drunk or pumped in those days', 'G_s', 'gal', [0, 2_000_000], 7000, {
    shownWhen: stake,
    help: '0 if stock were kept off. If in doubt put less: then the loss comes out larger, which errs the right way.',
    ask: 'How many head drank there for how many days? Count 15 gallons (57 L) a day for a cow, 2 (8 L) for a ewe.',
  }),
  flowFrom: choice('What it gives', 'bucket', {
    options: { known: { label: 'I know the flow', short: 'flow known' }, bucket: { label: 'I timed a bucket', short: 'timed by a bucket' } },
    shownWhen: { supply: 'flow' },
    offeredBy: 'water.flowFrom',
  }),
  knownGpm: number('Steady flow', 'q_k', 'gpm', [0.05, 500], 5, {
    usual: 'springGpm',
    shownWhen: { supply: 'flow', flowFrom: 'known' },
    help: 'After an hour of pumping, not in the first minutes.',
    ask: 'Time a bucket after an hour of pumping, and choose “I timed a bucket”.',
    offeredBy: 'water.flow',
  }),
  bucketGal: number('The bucket holds', 'V_b', 'gal', [0.1, 500], 5, { usual: 'bucketGal', shownWhen: { supply: 'flow', flowFrom: 'bucket' } }),
  bucketFillS: number('Time to fill it', 't_b', 's', [1, 7200], 60, {
    usual: 'bucketS',
    shownWhen: { supply: 'flow', flowFrom: 'bucket' },
    tool: { kind: 'stopwatch' },
  }),
  hasScum: yesNo('Is there green scum, or water like paint or pea soup?', false, {
    short: ['scum on it', 'no scum'],
    help: 'Look at the downwind bank.',
  }),
  slip: choice('Has a laboratory tested the water?', 'none', {
    options: { none: { label: 'No, or not this year', short: 'not tested' }, tested: { label: 'Yes, I have the slip', short: 'tested' } },
    offeredBy: 'water.slip',
  }),
  sulfateMgPerL: number('Sulfate on the slip', 'SO_4', 'mg/l', [0, 20_000], 300, {
    shownWhen: { slip: 'tested' },
    help: 'As sulfate (SO4). Parts per million is the same. A figure “as sulfur” times 3.',
    offeredBy: 'water.sulfate',
  }),
  saltMgPerL: number('Salts on the slip (total dissolved solids)', 'TDS', 'mg/l', [0, 50_000], 900, {
    shownWhen: { slip: 'tested' },
    offeredBy: 'water.salt',
  }),
};

/** What people decide: what is kept out, pumped, hauled and stored. */
export const managementInputs = {
  drinkFrom: choice('They drink from', 'bank', {
    options: {
      bank: { label: 'The pond’s edge', short: 'drunk from its edge' },
      trough: { label: 'A trough or tank below or beside it', short: 'drunk from a trough' },
    },
    belongsTo: 'management',
    shownWhen: { supply: 'pond' },
  }),
  deadDepthFt: number('Depth to leave in the pond', 'd', 'ft', [0, 15], 2, {
    belongsTo: 'management',
    shownWhen: { supply: 'pond' },
    help: 'The last 1 to 2 ft (0.3 to 0.6 m) are mud, foul water and bogged stock.',
    offeredBy: 'water.deadDepth',
  }),
  pumpedHr: number('It runs, in a day', 'h', 'hr', [0.1, 24], 24, {
    belongsTo: 'management',
    shownWhen: { supply: 'flow' },
    help: '24 for a spring. A pump needs rest, sun or power: count the hours that it really runs.',
  }),
  loadGal: number('Water in a load', 'V_l', 'gal', [10, 20_000], 1000, { belongsTo: 'management', shownWhen: { supply: 'hauled' } }),
  weeklyLoadsCount: number('Loads in a week', 'N_l', 'count', [0, 200], 7, {
    belongsTo: 'management',
    shownWhen: { supply: 'hauled' },
    help: '0 if there is only what stands in the tanks.',
  }),
  storage: choice('Water stored beside that', 'round', {
    options: {
      none: { label: 'None', short: 'no tanks' },
      round: { label: 'Round tanks', short: 'round tanks' },
      square: { label: 'Square-cornered tanks', short: 'square-cornered tanks' },
      'round-end': { label: 'Tanks with round ends', short: 'tanks with round ends' },
      known: { label: 'I know how much', short: 'amount known' },
    },
    belongsTo: 'management',
    help: 'In tanks and troughs, full. With a pond it is counted as the reserve, not into the days.',
    offeredBy: 'water.storage',
  }),
  ownStoredGal: number('Water held in storage', 'V_k', 'gal', [0, 2_000_000], 2500, { belongsTo: 'management', shownWhen: { storage: 'known' } }),
  tanksCount: number('Tanks of this size', 'N_t', 'count', [1, 50], 1, {
    belongsTo: 'management',
    whole: true,
    shownWhen: { storage: ['round', 'square', 'round-end'] },
    offeredBy: 'water.tanks',
  }),
  tankAcrossFt: number('Across, inside', 'd_t', 'ft', [0.5, 60], 10, {
    belongsTo: 'management',
    shownWhen: { storage: 'round' },
    offeredBy: 'water.tankAcross',
  }),
  tankLengthFt: number('Length, inside', 'l_t', 'ft', [0.5, 60], 8, {
    belongsTo: 'management',
    shownWhen: { storage: ['square', 'round-end'] },
    offeredBy: 'water.tankLength',
  }),
  tankWidthFt: number('Width, inside', 'w_t', 'ft', [0.5, 60], 2, {
    belongsTo: 'management',
    shownWhen: { storage: ['square', 'round-end'] },
    offeredBy: 'water.tankWidth',
  }),
  tankDepthFt: number('Water in it, deep', 'h_t', 'ft', [0, 30], 2, {
    belongsTo: 'management',
    usual: 'troughFt',
    shownWhen: { storage: ['round', 'square', 'round-end'] },
    offeredBy: 'water.tankDepth',
  }),
  walkFt: number('Farthest that they graze from the water', 'L', 'ft', [0, 30_000], 1500, {
    belongsTo: 'management',
    usual: 'walkFt',
    help: 'Beyond about 900 ft (275 m) they come as a herd, all at once.',
  }),
};

const piped = { supply: ['pond', 'flow'], pipe: 'piped' };

/** Common sizes by the names that stand in links. */
export const boreIn = {
  'three-quarter': pipeInsideIn['3/4'],
  one: pipeInsideIn['1'],
  'one-and-quarter': pipeInsideIn['1-1/4'],
  'one-and-half': pipeInsideIn['1-1/2'],
  two: pipeInsideIn['2'],
  three: pipeInsideIn['3'],
} as const;

/** The line from the water to the trough. */
export const pipeInputs = {
  pipe: choice('Must the water go through a long pipe to the trough?', 'none', {
    options: {
      none: { label: 'No, or I timed it at the trough', short: 'no long pipe' },
      piped: { label: 'Yes: work out what it brings', short: 'a long pipe' },
    },
    belongsTo: 'management',
    shownWhen: { supply: ['pond', 'flow'] },
    help: 'A long or thin pipe can bring less than the water at its head could give.',
  }),
  pipeSize: choice('Size of the pipe', 'one-and-quarter', {
    options: { 'three-quarter': '3/4 in', one: '1 in', 'one-and-quarter': '1 1/4 in', 'one-and-half': '1 1/2 in', two: '2 in', three: '3 in' },
    belongsTo: 'management',
    shownWhen: piped,
    help: 'As it is sold. Plastic pipe, smooth inside.',
  }),
  pipeLengthFt: number('Length of the pipe', 'l_p', 'ft', [1, 50_000], 2000, {
    belongsTo: 'management',
    shownWhen: piped,
    help: 'Add about a tenth for bends, valves and the float.',
  }),
  pipeHeadFt: number('Fall from the water down to the trough, or pressure as a height', 'h_p', 'ft', [0.1, 1500], 30, {
    belongsTo: 'management',
    shownWhen: piped,
    help: 'From the lowest water to the float. With a pump: 2.31 ft for each pound (psi), or 0.1 m for each kPa, on the gauge at its lowest, less what the pipe climbs.',
    field: 'A hand level or a clear hose gives the fall. A map is good to about 10 ft (3 m).',
  }),
};

export const inputs = { herd, ...placeInputs, ...managementInputs, ...pipeInputs };

export type Values = ValuesOf<typeof inputs>;
