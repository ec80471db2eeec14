import { choice, number, rows } from '../../kit/inputs.ts';
import { commonGrazer } from '../../math/herd/likelyIntakePercent.ts';
import { type GrazerKind, grazers } from '../../tables/grazers.ts';

/** A kind of stock for the list; choosing it starts weight and appetite. */
const option = (kind: GrazerKind) => ({ label: grazers[kind].label, fills: commonGrazer(kind) });
const kind = choice({
  label: 'Kind of stock',
  belongsTo: 'place',
  help: 'Choosing one fills in weight and appetite; change them to fit yours.',
  default: 'cow-dry',
  options: {
    'cow-dry': { label: 'Dry cow on grass with green in it', fills: commonGrazer('cow-dry') },
    'cow-dry-cured': option('cow-dry-cured'),
    'cow-nursing': option('cow-nursing'),
    heifer: option('heifer'),
    bull: option('bull'),
    stocker: option('stocker'),
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
      default: commonGrazer('cow-dry').intakePercent,
      help: 'Counted with the water out.',
    }),
  },
  default: [
    { kind: 'cow-dry', countHead: 45, ...commonGrazer('cow-dry') },
    { kind: 'bull', countHead: 2, ...commonGrazer('bull') },
    { kind: 'heifer', countHead: 9, ...commonGrazer('heifer') },
  ],
});
