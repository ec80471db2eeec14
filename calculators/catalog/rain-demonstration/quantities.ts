import { amount, table, word } from '../../kit/quantities.ts';

const millilitres = (label: string, symbol: string) => amount(label, symbol, 'ml', -1);

export const quantities = {
  pourQt: amount('Water to put on each tray', 'V_{qt}', 'qt', 1),
  pourGal: amount('The same, for a larger jug', 'V_{gal}', 'gal', 2),
  pourMl: millilitres('Water put on', 'V_{ml}'),
  timedMl: amount('Water that was timed', 'V', 'ml', 1),
  timedInPerHr: amount('As rain on the tray', 'i', 'in/hr', 3),
  holeInPerHr: amount('One hole alone rains', 'i_h', 'in/hr', 4),
  holesExactCount: amount('Holes, not rounded', 'n_e', 'count', 2),
  needHolesCount: amount('Holes for the rain that you want', 'n_w', 'count'),
  holeGapIn: amount('From hole to hole, spread evenly', 'g', 'in', 1),
  rateInPerHr: amount('How hard the head rains', 'i', 'in/hr', 1),
  rainMin: amount('How long to let it rain', 't', 'min', 0),
  otherRains: table('Other depths of rain', {
    fallIn: amount('Rain', 'd', 'in', 2),
    fallQt: amount('Water', 'V', 'qt', 1),
    fallMin: amount('Time', 't', 'min', 0),
  }),
  slopePercent: amount('Slope of the trays', 'S', 'pct', 0),
  trayLb: amount('One wet tray weighs about', 'W', 'lb', -1),
  shouldRun: word('What people should see run off', {
    'rested-sod': 'It runs last and least, and nearly clear',
    'grazed-short': 'It runs sooner and more, and cloudy',
    bare: 'It runs first and most, and muddy',
    'bare-litter': 'It runs later and clearer than bare ground, sooner than sod',
    other: 'Ask people to guess before you pour',
  }),
  shouldSoak: word('And in the soil, when you turn it out', {
    'rested-sod': 'Wet deep, crumbs hold together, roots all through',
    'grazed-short': 'Wet part way, roots short',
    bare: 'A slick crust on top, often dry an inch below it',
    'bare-litter': 'No crust, and wet deeper than bare ground',
    other: 'Cut it open and see how deep it is wet',
  }),
  runMl: millilitres('Ran off the top', 'R'),
  downMl: millilitres('Came out below', 'T'),
  heldMl: millilitres('In neither jar', 'H'),
  inSoilMl: millilitres('Stayed in the tray', 'H'),
  runoffPercent: amount('Ran off the top', 'p_R', 'pct'),
  throughPercent: amount('Came out below', 'p_T', 'pct'),
  heldPercent: amount('Stayed in the tray', 'p_H', 'pct'),
  runoffIn: amount('Runoff, as depth on the tray', 'R_d', 'in', 2),
  firstRunIn: amount('Rain that was on when it began to run', 'd_r', 'in', 2),
  tells: word('What the jars can tell', {
    ranks: 'Which tray ran first and most, and no more than that',
    unlike: 'Nothing: the trays were not set up alike',
    'not-poured': 'Nothing yet',
  }),
} as const;
