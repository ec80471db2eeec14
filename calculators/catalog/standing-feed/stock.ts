import { choice, number, rows } from '../../kit/inputs.ts';
import { intake } from '../../tables/intake.ts';

type Animal = (typeof intake)[number]['animal'];

/** The likely figure of the published ones, percent of weight. */
function likelyPercent(animal: Animal, stage: string, quality = 'any'): number {
  const found = intake.find((each) => each.animal === animal && each.stage === stage && each.quality === quality);
  if (!found) throw new RangeError(`likelyPercent needs a line of the table, got ${animal}, ${stage}, ${quality}`);
  return found.likelyPercent;
}
const dryCowPercent = likelyPercent('beef-cow', 'dry', 'average');
// Weights are common ones and only start the field.
const kind = choice({
  label: 'Kind of stock',
  belongsTo: 'place',
  help: 'Choosing one fills in weight and appetite; mend them to fit yours.',
  default: 'cow-dry',
  options: {
    'cow-dry': { label: 'Dry cow on grass with green in it', fills: { weightLb: 1250, intakePercent: dryCowPercent } },
    'cow-dry-cured': {
      label: 'Dry cow on cured grass (under 7 % protein)',
      fills: { weightLb: 1250, intakePercent: likelyPercent('beef-cow', 'dry', 'low') },
    },
    'cow-nursing': {
      label: 'Cow with a calf on her',
      fills: { weightLb: 1250, intakePercent: likelyPercent('beef-cow', 'lactating', 'average') },
    },
    heifer: { label: 'Bred heifer', fills: { weightLb: 950, intakePercent: dryCowPercent } },
    bull: { label: 'Bull', fills: { weightLb: 1900, intakePercent: 2 } },
    stocker: { label: 'Stocker or growing heifer', fills: { weightLb: 600, intakePercent: likelyPercent('growing-cattle', 'stocker') } },
    'ewe-dry': { label: 'Dry ewe', fills: { weightLb: 160, intakePercent: likelyPercent('sheep', 'ewe, maintenance') } },
    doe: { label: 'Doe', fills: { weightLb: 120, intakePercent: likelyPercent('goat', 'doe') } },
    horse: { label: 'Horse', fills: { weightLb: 1100, intakePercent: likelyPercent('horse', 'maintenance') } },
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
      default: 1250,
      ask: 'Take the mean of your cull tickets. Guesses by eye run light.',
    }),
    intakePercent: number({
      label: 'Eats a day, share of its weight',
      symbol: 'p',
      belongsTo: 'place',
      unit: 'pct',
      min: 0.5,
      max: 8,
      default: dryCowPercent,
      help: 'Counted with the water out.',
    }),
  },
  default: [
    { kind: 'cow-dry', countHead: 45, weightLb: 1250, intakePercent: dryCowPercent },
    { kind: 'bull', countHead: 2, weightLb: 1900, intakePercent: 2 },
    { kind: 'heifer', countHead: 9, weightLb: 950, intakePercent: dryCowPercent },
  ],
});
