import { choice, number, rows, yesNo } from '../../kit/inputs.ts';

const minutes = { unit: 'min', min: 0.05, max: 1440, tool: { kind: 'stopwatch' } } as const;

export const inputs = {
  boreFrom: choice('Width of the ring, inside', 'measured', {
    options: { measured: 'I measured it', filled: 'I filled it and know how much water that took' },
    help: 'Any ring, pipe or can with both ends cut out. A wrong width counts twice.',
  }),
  boreIn: number('Inside width (bore)', 'b', 'in', [2, 48], 6, {
    step: 0.25,
    field: 'Measure inside, twice, crosswise, to a sixteenth of an inch. Take the middle of the two. A ring sold as 6 inches is often less inside.',
    shownWhen: { boreFrom: 'measured' },
    offeredBy: 'tools.ringBore',
  }),
  fillWaterMl: number('Water that filled it', 'V_{fill}', 'ml', [50, 100_000], 1390, {
    field: 'Stand the ring on a flat sheet of plastic over a pan, seal its foot with clay, fill to a mark. A gram of water is a milliliter.',
    shownWhen: { boreFrom: 'filled' },
  }),
  fillDepthIn: number('To this depth', 'z_{fill}', 'in', [0.5, 24], 3, { shownWhen: { boreFrom: 'filled' } }),
  insertedIn: number('Depth of the ring in the soil', 'd', 'in', [0.5, 12], 3, {
    help: 'The same for all rings, and the same at the next visit.',
    offeredBy: 'tools.ringInserted',
  }),
  waterMl: number('Water for one pouring', 'V', 'ml', [20, 100_000], 444, {
    help: '444 mL is the inch of a common test kit. In a ring 6 inches wide inside an inch is 463 mL. A pint is 473 mL.',
    field: 'Lay a piece of plastic film in the ring, pour onto it, then draw it out and start the watch.',
    offeredBy: 'tools.pouring',
  }),
  site: choice('Anything wrong where the rings stand?', 'none', {
    options: {
      none: 'No',
      cracks: 'Cracks run through it',
      burrow: 'A burrow, ant hill or old post hole',
      leak: 'Water came up outside a ring',
      frozen: 'The ground is frozen',
      standing: 'Water stood there already',
    },
    belongsTo: 'management',
    help: 'Look before you drive them, and again while the water goes down.',
  }),
  moisture: choice('Last soaking rain', 'moist', {
    options: { dry: 'Five days ago or more: dry', moist: 'One to four days ago: moist, drained', wet: 'Within a day: wet' },
    belongsTo: 'management',
    help: 'Write it down with every test: dry and wet ground take water at different rates.',
    offeredBy: 'visit.moisture',
  }),
  rings: rows({
    label: 'Rings',
    rowName: 'ring',
    each: 'a ring in {firstMin}, then {secondMin}, then {thirdMin}, {leftIn} of it left',
    help: 'Three are much better than one. Type each time as the watch shows it, 14:30, or in minutes, 14.5. Set them a few steps apart on ground that looks the same. Stop the watch when the soil just glistens; on uneven soil, when half of it does.',
    maxRows: 6,
    columns: {
      firstMin: number('Time of the first pouring', 't_1', minutes.unit, [minutes.min, minutes.max], 4, { ...minutes, belongsTo: 'management' }),
      pours: choice('Poured again into the same ring?', 'twice', {
        options: { once: 'No', twice: 'Once more', thrice: 'Twice more' },
        belongsTo: 'management',
        help: 'Right after the first. The second pouring is the one that counts.',
      }),
      secondMin: number('Time of the second pouring', 't_2', minutes.unit, [minutes.min, minutes.max], 18, {
        ...minutes,
        belongsTo: 'management',
        shownWhen: { pours: ['twice', 'thrice'] },
      }),
      thirdMin: number('Time of the third pouring', 't_3', minutes.unit, [minutes.min, minutes.max], 20, {
        ...minutes,
        belongsTo: 'management',
        shownWhen: { pours: 'thrice' },
      }),
      end: choice('Was the last pouring all gone?', 'gone', {
        options: { gone: 'Yes', left: 'No: I stopped and measured what was left' },
        belongsTo: 'management',
      }),
      leftIn: number('Depth of water left', 'l', 'in', [0, 24], 0.5, { belongsTo: 'management', shownWhen: { end: 'left' } }),
    },
    default: [
      { firstMin: 4, pours: 'twice', secondMin: 18, thirdMin: 20, end: 'gone', leftIn: 0.5 },
      { firstMin: 3, pours: 'twice', secondMin: 11, thirdMin: 20, end: 'gone', leftIn: 0.5 },
      { firstMin: 7, pours: 'twice', secondMin: 32, thirdMin: 20, end: 'gone', leftIn: 0.5 },
    ],
  }),
  beside: choice('Set it beside an earlier visit or another place?', 'no', {
    options: {
      no: { label: 'No', short: 'none set beside it' },
      visit: { label: 'An earlier visit to this place', short: 'an earlier visit' },
      place: { label: 'Another place on the same day', short: 'another place' },
    },
    help: 'Tells whether the change is more than chance.',
    offeredBy: 'earlier.beside',
  }),
  others: rows({
    label: 'Rates of those rings',
    rowName: 'ring',
    each: '{thenInPerHr}',
    help: 'As the table “Each ring” of that test gives them. Same ring, same depth of water, same pouring.',
    maxRows: 6,
    shownWhen: { beside: ['visit', 'place'] },
    columns: {
      thenInPerHr: number('Rate of its last pouring', 'r_0', 'in/hr', [0.001, 2000], 1, { usual: 'soakingInPerHr', offeredBy: 'earlier.rate' }),
    },
    default: [{ thenInPerHr: 0.8 }, { thenInPerHr: 1.5 }, { thenInPerHr: 2.1 }],
    offeredBy: 'earlier',
  }),
  alike: yesNo('Same season, same moisture, same hands both times?', true, {
    short: ['done alike', 'not done alike'],
    help: 'If not, the change may come from the weather or from whoever poured.',
    shownWhen: { beside: ['visit', 'place'] },
    offeredBy: 'earlier.alike',
  }),
};
