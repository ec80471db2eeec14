import { choice, number, rows } from '../../kit/inputs.ts';
import { commonGrazer } from '../../math/herd/likelyIntakePercent.ts';
import { type GrazerKind, grazers } from '../../tables/grazers.ts';

/** A kind of stock for the list; choosing it starts weight and appetite. */
const option = (kind: GrazerKind) => ({ label: grazers[kind].label, fills: commonGrazer(kind) });
/** As a dry cow of his weight. */
const bull = { weightLb: grazers.bull.weightLb, intakePercent: commonGrazer('cow-dry').intakePercent };

export const kindWords = {
  'cow-nursing': grazers['cow-nursing'].label,
  'cow-dry': grazers['cow-dry'].label,
  bull: grazers.bull.label,
  heifer: grazers.heifer.label,
  stocker: grazers.stocker.label,
  calf: grazers.calf.label,
  'ewe-nursing': grazers['ewe-nursing'].label,
  'ewe-dry': grazers['ewe-dry'].label,
  doe: grazers.doe.label,
  horse: grazers.horse.label,
  other: 'Other',
} as const;

export const herd = rows({
  label: 'The herd',
  rowName: 'kind of stock',
  help: 'Put the kind that would go first on the first line. The others are taken to stay.',
  maxRows: 8,
  columns: {
    kind: choice({
      label: 'Kind of stock',
      belongsTo: 'place',
      help: 'Choosing one fills in weight and appetite; mend them to fit yours.',
      default: 'cow-nursing',
      options: {
        'cow-nursing': option('cow-nursing'),
        'cow-dry': option('cow-dry'),
        bull: { label: grazers.bull.label, fills: bull },
        heifer: option('heifer'),
        stocker: option('stocker'),
        calf: option('calf'),
        'ewe-nursing': option('ewe-nursing'),
        'ewe-dry': option('ewe-dry'),
        doe: option('doe'),
        horse: option('horse'),
        other: { label: kindWords.other },
      },
    }),
    countHead: number({
      label: 'Head',
      symbol: 'n',
      belongsTo: 'place',
      unit: 'head',
      min: 1,
      max: 20_000,
      default: 45,
      whole: true,
      help: 'Those on the place now, taken to have been there since turn-in.',
    }),
    weightLb: number({
      label: 'Weight of one',
      symbol: 'W',
      belongsTo: 'place',
      unit: 'lb',
      min: 20,
      max: 3500,
      usual: 'animalLb',
      default: 1250,
      ask: 'What did your last culls weigh on the sale tickets? Take the mean of three or more. Guesses run light.',
    }),
    intakePercent: number({
      label: 'Eats a day, share of its weight',
      symbol: 'p',
      belongsTo: 'place',
      unit: 'pct',
      min: 0.5,
      max: 8,
      default: commonGrazer('cow-nursing').intakePercent,
      help: 'With the water out. Guides miss by about 15 % either way.',
      ask: 'Leave what the kind filled in.',
    }),
  },
  default: [
    { kind: 'cow-nursing', countHead: 45, ...commonGrazer('cow-nursing') },
    { kind: 'heifer', countHead: 9, ...commonGrazer('heifer') },
    { kind: 'bull', countHead: 2, ...bull },
    { kind: 'ewe-dry', countHead: 60, ...commonGrazer('ewe-dry') },
  ],
});
