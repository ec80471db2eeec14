import { choice, date, number, rows, yesNo } from '../../kit/inputs.ts';
import { likelyIntakePercent } from '../../math/herd/likelyIntakePercent.ts';

const cow = (quality: 'low' | 'average' | 'high', weightLb: number) => ({
  weightLb,
  intakePercent: likelyIntakePercent('beef-cow', 'dry', quality),
  nursingPercent: likelyIntakePercent('beef-cow', 'lactating', quality),
});
/** Kinds of stock by option. */
export const stockWords = {
  cow: 'Beef cow on fair hay',
  'cow-poor-hay': 'Beef cow on poor hay (under 7 % protein)',
  'cow-good-hay': 'Beef cow on good hay',
  heifer: 'Bred heifer',
  bull: 'Bull',
  growing: 'Stocker or growing heifer',
  calf: 'Calf on its mother, eating some hay',
  ewe: 'Ewe',
  'ewe-late': 'Ewe, last six weeks before lambing',
  lamb: 'Growing lamb',
  doe: 'Doe',
  horse: 'Horse or mare',
  other: 'Something else',
} as const;

const cattle = 'Beef cattle';
const small = 'Sheep and goats';
// Weights are common ones and only start the field. A ram or an open cow eats as the dry animal of its kind.
const stock = choice({
  label: 'Kind of stock',
  belongsTo: 'place',
  help: 'Choosing one fills in weight and appetite; mend them to fit yours.',
  options: {
    cow: { label: stockWords.cow, group: cattle, fills: cow('average', 1250) },
    'cow-poor-hay': { label: stockWords['cow-poor-hay'], group: cattle, fills: cow('low', 1250) },
    'cow-good-hay': { label: stockWords['cow-good-hay'], group: cattle, fills: cow('high', 1250) },
    heifer: { label: stockWords.heifer, group: cattle, fills: cow('average', 950) },
    bull: { label: stockWords.bull, group: cattle, fills: { weightLb: 1900, intakePercent: 2, hasBirths: 'no' } },
    growing: {
      label: stockWords.growing,
      group: cattle,
      fills: { weightLb: 600, intakePercent: likelyIntakePercent('growing-cattle', 'stocker'), hasBirths: 'no' },
    },
    calf: {
      label: stockWords.calf,
      group: cattle,
      fills: { weightLb: 300, intakePercent: likelyIntakePercent('nursing-calf', 'forage beside milk'), hasBirths: 'no' },
    },
    ewe: {
      label: stockWords.ewe,
      group: small,
      fills: {
        weightLb: 160,
        intakePercent: likelyIntakePercent('sheep', 'ewe, maintenance'),
        nursingPercent: likelyIntakePercent('sheep', 'ewe, nursing twins'),
      },
    },
    'ewe-late': {
      label: stockWords['ewe-late'],
      group: small,
      fills: {
        weightLb: 170,
        intakePercent: likelyIntakePercent('sheep', 'ewe, late gestation'),
        nursingPercent: likelyIntakePercent('sheep', 'ewe, nursing twins'),
      },
    },
    lamb: {
      label: stockWords.lamb,
      group: small,
      fills: { weightLb: 80, intakePercent: likelyIntakePercent('sheep', 'lamb, growing'), hasBirths: 'no' },
    },
    doe: { label: stockWords.doe, group: small, fills: { weightLb: 120, intakePercent: 2, nursingPercent: likelyIntakePercent('goat', 'doe') } },
    horse: {
      label: stockWords.horse,
      group: 'Horses',
      fills: {
        weightLb: 1100,
        intakePercent: likelyIntakePercent('horse', 'maintenance'),
        nursingPercent: likelyIntakePercent('horse', 'nursing mare'),
      },
    },
    other: { label: stockWords.other, group: 'Other' },
  },
  default: 'cow',
});

/** The rule for cold was made for beef cattle. */
export const cattleKinds: ReadonlySet<string> = new Set(['cow', 'cow-poor-hay', 'cow-good-hay', 'heifer', 'bull', 'growing', 'calf']);

export const herd = rows({
  label: 'The herd',
  help: 'A line for each kind. The head count stands with the management, so that selling some can be set beside keeping all.',
  rowName: 'kind of stock',
  maxRows: 10,
  columns: {
    stock,
    countHead: number({
      label: 'Head',
      symbol: 'n',
      belongsTo: 'management',
      unit: 'head',
      min: 0,
      max: 20000,
      usual: 'herdHead',
      default: 45,
      whole: true,
      help: 'Those that will be here and on hay.',
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
      field: 'Scale, or a tape around the heart girth.',
      ask: 'What did your last culls weigh on the sale tickets? Take the mean of three or more. Guesses run light.',
    }),
    intakePercent: number({
      label: 'Eats in a day, of its weight',
      symbol: 'i',
      belongsTo: 'place',
      unit: 'pct',
      min: 0.5,
      max: 8,
      default: 2.2,
      help: 'With the water out, as percent of weight. Before birth, if there is one.',
      ask: 'Leave what the kind filled in. Guides miss by about 15 % either way, and the result shows that range.',
    }),
    hasBirths: yesNo({ label: 'Calves, lambs, kids or foals while on hay', belongsTo: 'place', default: true }),
    birthDay: date({
      label: 'Middle of that season',
      belongsTo: 'place',
      default: '2027-03-10',
      shownWhen: { hasBirths: 'yes' },
      ask: 'By which day will half of them have calved or lambed? Count 283 days from the middle of breeding for cows, 147 for ewes.',
    }),
    nursingPercent: number({
      label: 'Eats when nursing, of its weight',
      symbol: 'j',
      belongsTo: 'place',
      unit: 'pct',
      min: 0.5,
      max: 8,
      default: 2.5,
      shownWhen: { hasBirths: 'yes' },
    }),
  },
  default: [
    { stock: 'cow', countHead: 45, weightLb: 1250, intakePercent: 2.2, hasBirths: true, birthDay: '2027-03-10', nursingPercent: 2.5 },
    { stock: 'bull', countHead: 2, weightLb: 1900, intakePercent: 2, hasBirths: false, birthDay: '2027-03-10', nursingPercent: 2.5 },
    { stock: 'ewe', countHead: 60, weightLb: 160, intakePercent: 2, hasBirths: true, birthDay: '2027-03-25', nursingPercent: 4 },
  ],
});
