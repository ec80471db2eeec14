import { choice, number, rows } from '../../kit/inputs.ts';
import { commonGrazer } from '../../math/herd/likelyIntakePercent.ts';
import { type GrazerKind, grazers } from '../../tables/grazers.ts';

/** A kind of stock for the list; choosing it starts weight and appetite. */
const option = (kind: GrazerKind) => ({ label: grazers[kind].label, fills: commonGrazer(kind) });
const kind = choice('Kind of stock', 'cow-nursing', {
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
    other: 'Other',
  },
  help: 'Choosing one fills in weight and appetite; change them to fit yours.',
});

export const stock = rows({
  label: 'All stock that graze here',
  rowName: 'kind of stock',
  maxRows: 8,
  columns: {
    kind,
    countHead: number('Head', 'N', 'head', [1, 20_000], 45, { whole: true }),
    weightLb: number('Weight of one', 'W', 'lb', [20, 3000], 1250, {
      usual: 'animalLb',
      ask: 'Average the weights on your cull tickets. Guesses by eye run light.',
    }),
    intakePercent: number('Eats a day, share of its weight', 'p', 'pct', [0.5, 8], commonGrazer('cow-nursing').intakePercent, {
      help: 'Counted with the water out.',
    }),
  },
  default: [
    { kind: 'cow-nursing', countHead: 45, ...commonGrazer('cow-nursing') },
    { kind: 'bull', countHead: 2, ...commonGrazer('bull') },
    { kind: 'ewe-nursing', countHead: 60, ...commonGrazer('ewe-nursing') },
  ],
});
