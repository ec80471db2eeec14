import { choice, number, yesNo } from '../../kit/inputs.ts';

const read = { jars: 'read' };

export const inputs = {
  lengthIn: number('Inside length of a tray', 'l', 'in', [4, 72], 24, { help: 'Both trays the same size. Measure inside, where the rain lands.' }),
  widthIn: number('Inside width', 'w', 'in', [4, 72], 12),
  soilIn: number('Depth of soil in it', 'z', 'in', [0.5, 12], 3, {
    help: 'It sets the weight that somebody has to lift.',
    field: 'Cut the sod whole, with its roots, and ease it in. Press the edges down so that no water slips between soil and wall.',
  }),
  riseIn: number('The upper end stands higher by', 'r', 'in', [0, 24], 1.5, {
    help: 'The same for both trays.',
    field: 'Lay a level board along the tray and measure the gap under its low end.',
  }),
  alike: yesNo('Same slope, drop height, soil and moisture in both trays?', true, {
    short: ['both trays set up alike', 'trays not set up alike'],
    help: 'Only the cover may differ. Hang the drip head at one height over both.',
    ask: 'Cut both sods on one day, from one kind of soil, and leave them under one roof overnight.',
  }),
  rainIn: number('Rain to show', 'd', 'in', [0.1, 8], 1, { step: 0.25 }),
  wantedInPerHr: number('How hard it should rain', 'i_w', 'in/hr', [0.5, 12], 3, {
    // Common practice; the design storms of the ponding page peak at about the same.
    help: 'The hard part of a summer storm runs about 2 to 4 in an hour (50 to 100 mm an hour).',
    ask: 'Not sure? Take 3 in an hour (75 mm an hour). Slower, and even bare soil may take it all; much harder, and good sod sheds it too.',
  }),
  headFrom: choice('The drip head', 'jar', {
    options: {
      jar: { label: 'Is built: I timed a jar under all its holes', short: 'built' },
      'one-hole': { label: 'Is to be built: I timed one hole', short: 'to be built' },
    },
    help: 'A pan or bucket with small holes in its bottom, all of them over the tray.',
  }),
  holesCount: number('Holes in it', 'n', 'count', [1, 2000], 48, { whole: true, shownWhen: { headFrom: 'jar' } }),
  jar: choice('The jar', 'pint', {
    options: {
      pint: { label: 'A pint, filled level', short: 'a pint' },
      quart: { label: 'A quart, filled level', short: 'a quart' },
      other: { label: 'Another measure', short: 'another measure' },
    },
    shownWhen: { headFrom: 'jar' },
  }),
  otherMl: number('It holds', 'V', 'ml', [20, 10_000], 500, { shownWhen: { headFrom: 'jar', jar: 'other' } }),
  fillS: number('Seconds to fill it', 's', 's', [2, 3600], 120, {
    shownWhen: { headFrom: 'jar' },
    field: 'Fill the head to the mark where you will keep it. Catch all holes at once in a pan that drains to the jar. Time it twice.',
    tool: { kind: 'stopwatch' },
  }),
  spoonS: number('Seconds for one hole to give a tablespoon', 's_h', 's', [2, 3600], 180, {
    shownWhen: { headFrom: 'one-hole' },
    field: 'Make one hole with the needle or drill that you will use. Fill the head to its mark and hold a level tablespoon under the hole.',
    tool: { kind: 'stopwatch' },
  }),
  cover: choice('What grows or lies on this tray', 'grazed-short', {
    options: {
      'rested-sod': 'Sod rested between grazings, thick, dead grass under it',
      'grazed-short': 'Sod grazed short, thin, ground showing',
      bare: 'Bare or trampled ground',
      'bare-litter': 'Bare ground with dead grass or hay laid on it',
      other: 'Something else',
    },
    belongsTo: 'management',
  }),
  jars: choice('Have you poured?', 'read', {
    options: { 'not-yet': { label: 'Not yet, I am setting up', short: 'not poured yet' }, read: { label: 'Yes, I read the jars', short: 'poured' } },
    belongsTo: 'management',
    help: 'The readings below are an example until you put in your own. Answer “Not yet” to read what people should see.',
  }),
  ran: yesNo('Did any run off the top?', true, { short: ['some ran off', 'none ran off'], belongsTo: 'management', shownWhen: read }),
  firstRunS: number('Seconds from the first drop until it ran', 's_r', 's', [0, 7200], 150, {
    belongsTo: 'management',
    shownWhen: { ...read, ran: 'yes' },
    field: 'Count from the first drop on the tray to the first steady trickle in the runoff jar.',
    tool: { kind: 'stopwatch' },
  }),
  runoffMl: number('In the runoff jar', 'R', 'ml', [0, 100_000], 2600, {
    step: 100,
    belongsTo: 'management',
    help: 'Wait until it only drips, then read it level with your eye.',
    shownWhen: { ...read, ran: 'yes' },
  }),
  throughMl: number('In the jar under the tray', 'T', 'ml', [0, 100_000], 500, {
    belongsTo: 'management',
    help: 'What went all the way through. None came? Put 0.',
    shownWhen: read,
  }),
};
