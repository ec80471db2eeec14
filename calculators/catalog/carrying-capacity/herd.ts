import { choice, number, rows } from '../../kit/inputs.ts';
import { intake } from '../../tables/intake.ts';

type Animal = (typeof intake)[number]['animal'];

/** The likely figure of the published ones, percent of weight. */
function likelyPercent(animal: Animal, stage: string, quality = 'any'): number {
  const found = intake.find((each) => each.animal === animal && each.stage === stage && each.quality === quality);
  if (!found) throw new RangeError(`likelyPercent needs a line of the table, got ${animal}, ${stage}, ${quality}`);
  return found.likelyPercent;
}
const nursingPercent = likelyPercent('beef-cow', 'lactating', 'average');
const dryPercent = likelyPercent('beef-cow', 'dry', 'average');
const ewePercent = likelyPercent('sheep', 'ewe, maintenance');

export const kindWords = {
  'cow-nursing': 'Cow with a calf on her',
  'cow-dry': 'Dry cow',
  bull: 'Bull',
  heifer: 'Bred heifer',
  stocker: 'Stocker or growing heifer',
  calf: 'Calf on its mother that grazes some',
  'ewe-nursing': 'Ewe with lambs',
  'ewe-dry': 'Dry ewe',
  doe: 'Doe',
  horse: 'Horse',
  other: 'Other',
} as const;

export const herd = rows({
  label: 'The herd',
  rowName: 'kind of stock',
  help: 'Put the kind that would go first on the first line. The others are taken to stay.',
  maxRows: 8,
  columns: {
    // Weights are common ones and only start the field.
    kind: choice({
      label: 'Kind of stock',
      belongsTo: 'place',
      help: 'Choosing one fills in weight and appetite; mend them to fit yours.',
      default: 'cow-nursing',
      options: {
        'cow-nursing': { label: kindWords['cow-nursing'], fills: { weightLb: 1250, intakePercent: nursingPercent } },
        'cow-dry': { label: kindWords['cow-dry'], fills: { weightLb: 1250, intakePercent: dryPercent } },
        // As a dry cow of his weight.
        bull: { label: kindWords.bull, fills: { weightLb: 1900, intakePercent: dryPercent } },
        heifer: { label: kindWords.heifer, fills: { weightLb: 950, intakePercent: dryPercent } },
        stocker: { label: kindWords.stocker, fills: { weightLb: 600, intakePercent: likelyPercent('growing-cattle', 'stocker') } },
        calf: { label: kindWords.calf, fills: { weightLb: 300, intakePercent: likelyPercent('nursing-calf', 'forage beside milk') } },
        'ewe-nursing': { label: kindWords['ewe-nursing'], fills: { weightLb: 160, intakePercent: likelyPercent('sheep', 'ewe, nursing twins') } },
        'ewe-dry': { label: kindWords['ewe-dry'], fills: { weightLb: 160, intakePercent: ewePercent } },
        doe: { label: kindWords.doe, fills: { weightLb: 120, intakePercent: likelyPercent('goat', 'doe') } },
        horse: { label: kindWords.horse, fills: { weightLb: 1100, intakePercent: likelyPercent('horse', 'maintenance') } },
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
      default: nursingPercent,
      help: 'With the water out. Guides miss by about 15 % either way.',
      ask: 'Leave what the kind filled in.',
    }),
  },
  default: [
    { kind: 'cow-nursing', countHead: 45, weightLb: 1250, intakePercent: nursingPercent },
    { kind: 'heifer', countHead: 9, weightLb: 950, intakePercent: dryPercent },
    { kind: 'bull', countHead: 2, weightLb: 1900, intakePercent: dryPercent },
    { kind: 'ewe-dry', countHead: 60, weightLb: 160, intakePercent: ewePercent },
  ],
});
