import { choice, date, number, rows } from '../../kit/inputs.ts';
import { intake } from '../../tables/intake.ts';
import { forageOptions } from './forages.ts';

type Animal = (typeof intake)[number]['animal'];

/** The likely figure of the published ones, percent of weight. */
function likelyPercent(animal: Animal, stage: string, quality = 'any'): number {
  const found = intake.find((each) => each.animal === animal && each.stage === stage && each.quality === quality);
  if (!found) throw new RangeError(`likelyPercent needs a line of the table, got ${animal}, ${stage}, ${quality}`);
  return found.likelyPercent;
}
const nursingCowPercent = likelyPercent('beef-cow', 'lactating', 'average');
const nursingEwePercent = likelyPercent('sheep', 'ewe, nursing twins');
// Weights are common ones and only start the field.
const kind = choice({
  label: 'Kind of stock',
  belongsTo: 'place',
  help: 'Choosing one fills in weight and appetite; mend them to fit yours.',
  default: 'cow-nursing',
  options: {
    'cow-nursing': { label: 'Cow with a calf on her', fills: { weightLb: 1250, intakePercent: nursingCowPercent } },
    'cow-dry': { label: 'Dry cow', fills: { weightLb: 1250, intakePercent: likelyPercent('beef-cow', 'dry', 'average') } },
    bull: { label: 'Bull', fills: { weightLb: 1900, intakePercent: 2 } },
    stocker: { label: 'Stocker or growing heifer', fills: { weightLb: 600, intakePercent: likelyPercent('growing-cattle', 'stocker') } },
    'ewe-nursing': { label: 'Ewe with lambs', fills: { weightLb: 160, intakePercent: nursingEwePercent } },
    'ewe-dry': { label: 'Dry ewe', fills: { weightLb: 160, intakePercent: likelyPercent('sheep', 'ewe, maintenance') } },
    doe: { label: 'Doe', fills: { weightLb: 120, intakePercent: likelyPercent('goat', 'doe') } },
    horse: { label: 'Horse', fills: { weightLb: 1100, intakePercent: likelyPercent('horse', 'maintenance') } },
    other: { label: 'Other' },
  },
});

const measured = { growthFrom: 'heights' };
export const inputs = {
  forage: choice({
    label: 'What grows there',
    belongsTo: 'place',
    default: 'cool-season-mix',
    help: 'Fills in the heights: the middle of the published heights to start, the taller of the stubbles to leave. Mend them to fit yours.',
    options: forageOptions,
  }),
  startHeightIn: number({
    label: 'Height when grazing starts',
    symbol: 'H_1',
    belongsTo: 'place',
    unit: 'in',
    min: 1,
    max: 60,
    default: 9,
    field:
      'Set a ruler on the soil among the plants and read where most leaves end, seed heads left out. Do it in twenty places over the paddock and take the mean.',
    ask: 'Your forage’s published height stands in when you choose what grows there.',
  }),
  densityLbPerAcIn: number({
    label: 'Pounds in an inch of height',
    symbol: 'd',
    belongsTo: 'place',
    unit: 'lb/ac/in',
    min: 20,
    max: 1000,
    default: 275,
    help: 'Hay with the water out, in one inch over one acre. Filled in for a good stand where a table has it; a thin stand has little more than half. For bermudagrass, alfalfa and clovers it is from memory.',
    field:
      'Three clips make the stick fit your place. Lay a frame of 4.8 sq ft, measure the height, clip to the stubble you leave, dry it, weigh it. Each gram is 20 lb an acre; divide by the inches that you cut off.',
    ask: 'Is the stand thick, or can you see the ground from above? Tables run from 50 for open native grass to 400 for thick sod.',
  }),
  growthFrom: choice({
    label: 'How fast it grows now',
    belongsTo: 'place',
    default: 'known',
    options: { known: { label: 'I know the growth a day' }, heights: { label: 'I measured the height on two days' } },
  }),
  growthLbPerAcDay: number({
    label: 'Growth a day',
    symbol: 'g',
    belongsTo: 'place',
    unit: 'lb/ac/d',
    min: 0,
    max: 300,
    default: 40,
    shownWhen: { growthFrom: 'known' },
    help: 'Now, on this ground. In good spring weather 60 to 100; in a drought it may be nothing.',
    ask: 'Measure the height twice, 7 to 10 days apart, under a cage or in a paddock at rest, and choose “I measured the height on two days”.',
  }),
  firstHeightIn: number({
    label: 'Height on the first day',
    symbol: 'h_1',
    belongsTo: 'place',
    unit: 'in',
    min: 0,
    max: 60,
    default: 4.5,
    shownWhen: measured,
    field: 'In a paddock at rest or under a cage, at stakes that you find again.',
  }),
  secondHeightIn: number({
    label: 'Height on the second day',
    symbol: 'h_2',
    belongsTo: 'place',
    unit: 'in',
    min: 0,
    max: 60,
    default: 5.5,
    shownWhen: measured,
    field: 'At the same stakes, measured the same way by the same person.',
  }),
  betweenDays: number({
    label: 'Days between the two',
    symbol: 't',
    belongsTo: 'place',
    unit: 'd',
    min: 3,
    max: 60,
    default: 10,
    shownWhen: measured,
    help: 'Seven to ten days do well. In fewer, the growth drowns in the error of the ruler.',
  }),
  stock: rows({
    label: 'All stock that graze these paddocks',
    rowName: 'kind of stock',
    help: 'Several herds are counted together: each passes through every paddock.',
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
        default: nursingCowPercent,
        help: 'Counted with the water out.',
      }),
    },
    default: [
      { kind: 'cow-nursing', countHead: 45, weightLb: 1250, intakePercent: nursingCowPercent },
      { kind: 'bull', countHead: 2, weightLb: 1900, intakePercent: 2 },
      { kind: 'ewe-nursing', countHead: 60, weightLb: 160, intakePercent: nursingEwePercent },
    ],
  }),
  startDay: date({ label: 'Day of the first move', belongsTo: 'place', default: '2026-05-01' }),
  stopHeightIn: number({
    label: 'Stubble left when grazing stops',
    symbol: 'H_0',
    belongsTo: 'management',
    unit: 'in',
    min: 0.5,
    max: 40,
    default: 4,
    help: 'In a drought leave more, not less: the leaf that stays is what grows the next.',
    ask: 'Your forage’s published stubble stands in when you choose what grows there.',
  }),
  paddockCount: number({
    label: 'Paddocks today',
    symbol: 'n',
    belongsTo: 'management',
    unit: 'count',
    min: 1,
    max: 100,
    default: 8,
    whole: true,
    help: 'Only those in this round: leave out hay ground and any that is set aside.',
  }),
  stayDays: number({ label: 'Days a herd stays in one', symbol: 's', belongsTo: 'management', unit: 'd', min: 1, max: 120, default: 4, whole: true }),
  herdCount: number({
    label: 'Herds',
    symbol: 'm',
    belongsTo: 'management',
    unit: 'count',
    min: 1,
    max: 4,
    default: 1,
    whole: true,
    help: 'Herds that go through the same paddocks, one right behind the other.',
  }),
  eatenFrom: choice({
    label: 'Share eaten of what stands above the stubble',
    belongsTo: 'management',
    default: 'by-stay',
    help: 'The rest is trampled or passed over. The stubble is already left out, so don’t halve it again.',
    options: { 'by-stay': { label: 'from the table, by days in the paddock' }, own: { label: 'my own figure' } },
  }),
  ownEatenPercent: number({
    label: 'Share eaten',
    symbol: 'u_{o}',
    belongsTo: 'management',
    unit: 'pct',
    min: 5,
    max: 100,
    default: 65,
    help: 'Eaten, of what stood above the stubble.',
    field: 'Measure the height before they go in and after they come out, and work out what is gone. What lies trampled is gone, but not eaten.',
    shownWhen: { eatenFrom: 'own' },
  }),
};
