import { choice, number, rows } from '../../kit/inputs.ts';
import { commonGrazer } from '../../math/herd/likelyIntakePercent.ts';
import { type GrazerKind, grazers } from '../../tables/grazers.ts';

/** A kind of stock for the list; choosing it starts weight and appetite. */
const option = (kind: GrazerKind) => ({ label: grazers[kind].label, fills: commonGrazer(kind) });
const kind = choice({
  label: 'Kind of stock',
  belongsTo: 'place',
  help: 'Choosing one fills in weight and appetite; change them to fit yours.',
  default: 'cow-nursing',
  options: {
    'cow-nursing': option('cow-nursing'),
    'cow-dry': option('cow-dry'),
    bull: option('bull'),
    stocker: option('stocker'),
    calf: option('calf'),
    'ewe-nursing': option('ewe-nursing'),
    'ewe-dry': option('ewe-dry'),
    doe: option('doe'),
    horse: option('horse'),
    other: { label: 'Other' },
  },
});

export const stock = rows({
  label: 'All stock that graze here',
  rowName: 'kind of stock',
  maxRows: 8,
  columns: {
    kind,
    countHead: number({ label: 'Head', symbol: 'N', belongsTo: 'place', unit: 'head', min: 1, max: 20_000, default: 45, whole: true }),
    weightLb: number({
      label: 'Weight of one',
      symbol: 'W',
      belongsTo: 'place',
      unit: 'lb',
      min: 20,
      max: 3000,
      usual: 'animalLb',
      default: 1250,
      ask: 'Average the weights on your cull tickets. Guesses by eye run light.',
    }),
    intakePercent: number({
      label: 'Eats a day, share of its weight',
      symbol: 'p',
      belongsTo: 'place',
      unit: 'pct',
      min: 0.5,
      max: 8,
      default: commonGrazer('cow-nursing').intakePercent,
      help: 'Counted with the water out.',
    }),
  },
  default: [
    { kind: 'cow-nursing', countHead: 45, ...commonGrazer('cow-nursing') },
    { kind: 'bull', countHead: 2, ...commonGrazer('bull') },
    { kind: 'ewe-nursing', countHead: 60, ...commonGrazer('ewe-nursing') },
  ],
});
