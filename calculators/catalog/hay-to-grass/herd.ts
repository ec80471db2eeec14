import { choice, date, number, rows, type ValuesOf, yesNo } from '../../kit/inputs.ts';
import { dailyIntakeLb } from '../../math/herd/dailyIntakeLb.ts';
import { guideLine, type HerdStock } from '../../math/herd/guidePercents.ts';
import { intakeSwing } from '../../math/herd/intakeSwing.ts';
import { commonGrazer, likelyIntakePercent } from '../../math/herd/likelyIntakePercent.ts';
import type { Stage } from '../../math/herd/stageFromBirth.ts';
import { sumOf } from '../../math/special/sumOf.ts';

// The herd: what is asked of it, and what it eats.

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
  horse: 'Horse, donkey or mule',
  other: 'Something else',
} as const;

const cattle = 'Beef cattle';
const small = 'Sheep and goats';
// Weights are common ones and only start the field. A ram or an open cow eats as the dry animal of its kind.
const stock = choice('Kind of stock', 'cow', {
  options: {
    cow: { label: stockWords.cow, short: ['cow', 'cows'], group: cattle, fills: cow('average', 1250) },
    'cow-poor-hay': { label: stockWords['cow-poor-hay'], short: ['cow', 'cows'], group: cattle, fills: cow('low', 1250) },
    'cow-good-hay': { label: stockWords['cow-good-hay'], short: ['cow', 'cows'], group: cattle, fills: cow('high', 1250) },
    heifer: { label: stockWords.heifer, short: ['bred heifer', 'bred heifers'], group: cattle, fills: cow('average', 950) },
    bull: { label: stockWords.bull, short: ['bull', 'bulls'], group: cattle, fills: { ...commonGrazer('bull'), hasBirths: 'no' } },
    growing: {
      label: stockWords.growing,
      short: ['stocker', 'stockers'],
      group: cattle,
      fills: { weightLb: 600, intakePercent: likelyIntakePercent('growing-cattle', 'stocker'), hasBirths: 'no' },
    },
    calf: {
      label: stockWords.calf,
      short: ['calf', 'calves'],
      group: cattle,
      fills: { weightLb: 300, intakePercent: likelyIntakePercent('nursing-calf', 'forage beside milk'), hasBirths: 'no' },
    },
    ewe: {
      label: stockWords.ewe,
      short: ['ewe', 'ewes'],
      group: small,
      fills: {
        weightLb: 160,
        intakePercent: likelyIntakePercent('sheep', 'ewe, maintenance'),
        nursingPercent: likelyIntakePercent('sheep', 'ewe, nursing twins'),
      },
    },
    'ewe-late': {
      label: stockWords['ewe-late'],
      short: ['ewe', 'ewes'],
      group: small,
      fills: {
        weightLb: 170,
        intakePercent: likelyIntakePercent('sheep', 'ewe, late gestation'),
        nursingPercent: likelyIntakePercent('sheep', 'ewe, nursing twins'),
      },
    },
    lamb: {
      label: stockWords.lamb,
      short: ['lamb', 'lambs'],
      group: small,
      fills: { weightLb: 80, intakePercent: likelyIntakePercent('sheep', 'lamb, growing'), hasBirths: 'no' },
    },
    doe: {
      label: stockWords.doe,
      short: ['doe', 'does'],
      group: small,
      fills: { weightLb: 120, intakePercent: 2, nursingPercent: likelyIntakePercent('goat', 'doe') },
    },
    horse: {
      label: stockWords.horse,
      short: ['horse', 'horses'],
      group: 'Horses, donkeys, mules',
      fills: {
        weightLb: 1100,
        intakePercent: likelyIntakePercent('horse', 'maintenance'),
        nursingPercent: likelyIntakePercent('horse', 'nursing mare'),
      },
    },
    other: { label: stockWords.other, short: ['other', 'others'], group: 'Other' },
  },
  help: 'Choosing one fills in weight and appetite; change them to fit yours.',
  offeredBy: 'herd.kind',
});

/** The rule for cold was made for beef cattle. */
export const cattleKinds: ReadonlySet<string> = new Set(['cow', 'cow-poor-hay', 'cow-good-hay', 'heifer', 'bull', 'growing', 'calf']);
interface Fed {
  readonly herd: readonly { readonly stock: string; readonly countHead: number }[];
}
const hasCattle = ({ herd }: Fed): boolean => herd.some(({ stock: kind, countHead }) => countHead > 0 && cattleKinds.has(kind));
export const hasOtherStock = ({ herd }: Fed): boolean => herd.some(({ stock: kind, countHead }) => countHead > 0 && !cattleKinds.has(kind));
/** Is cold to be counted, and are there cattle to count it for? */
export const countsCold = ({ isColdCounted, herd }: Fed & { readonly isColdCounted: boolean }): boolean => isColdCounted && hasCattle({ herd });

export const herd = rows({
  label: 'The herd',
  help: 'A line for each kind. The head count stands with the management, so that selling some can be set beside keeping all.',
  rowName: 'kind of stock',
  each: '{#countHead} {stock} of {weightLb}',
  maxRows: 10,
  columns: {
    stock,
    countHead: number('Head', 'n', 'head', [0, 20000], 45, {
      belongsTo: 'management',
      usual: 'herdHead',
      whole: true,
      help: 'Those that will be here and on hay.',
      offeredBy: 'herd.count',
    }),
    weightLb: number('Weight of one', 'W', 'lb', [20, 3500], 1250, {
      step: 10,
      usual: 'animalLb',
      field: 'Scale, or a tape around the heart girth.',
      ask: 'What did your last culls weigh on the sale tickets? Take the mean of three or more. Guesses run light.',
      offeredBy: 'herd.weight',
    }),
    intakePercent: number('Eats in a day, of its weight', 'i', 'pct', [0.5, 8], 2.2, {
      help: 'With the water out, as percent of weight. Before birth, if there is one: ewes are then counted at 3.5 % and does at 4 % in the last six weeks, or at this if it is more.',
      ask: 'Leave what the kind filled in. The result shows how far guides for that kind miss or differ.',
      offeredBy: 'herd.dryIntake',
    }),
    hasBirths: yesNo('Calves, lambs, kids or foals while on hay', true, { offeredBy: 'herd.births' }),
    birthDay: date('Middle of that season', '2027-03-10', {
      occurs: { nearest: ['fromDay', 'toDay'] },
      shownWhen: { hasBirths: 'yes' },
      ask: 'By which day will half of them have calved or lambed? Count 283 days from the middle of breeding for cows, 147 for ewes.',
      offeredBy: 'herd.birth',
    }),
    nursingPercent: number('Eats when nursing, of its weight', 'j', 'pct', [0.5, 8], 2.5, {
      shownWhen: { hasBirths: 'yes' },
      offeredBy: 'herd.nursingIntake',
    }),
  },
  default: [
    { stock: 'cow', countHead: 45, weightLb: 1250, intakePercent: 2.2, hasBirths: true, birthDay: '2027-03-10', nursingPercent: 2.5 },
    { stock: 'bull', countHead: 2, ...commonGrazer('bull'), hasBirths: false, birthDay: '2027-03-10', nursingPercent: 2.5 },
    { stock: 'ewe', countHead: 60, weightLb: 160, intakePercent: 2, hasBirths: true, birthDay: '2027-03-25', nursingPercent: 4 },
  ],
  offeredBy: 'herd',
});

/** Weeks before birth in which a ewe or a doe eats for what she carries: about 70 percent of its growth falls into the last six (nmsu-ewe-gestation). */
const lateDays = 42;
/** What the guides have for those weeks; of cows and mares they print no rise before birth. */
const latePercents: Partial<Readonly<Record<keyof typeof stockWords, number>>> = {
  ewe: likelyIntakePercent('sheep', 'ewe, late gestation'),
  doe: likelyIntakePercent('goat', 'doe'),
};

/** The line of the intake guides for each kind while it does not nurse. Guides print none for bulls and for stock not listed: taken to miss as those for cows do. */
const guided: Readonly<Record<keyof typeof stockWords, readonly [HerdStock, Stage]>> = {
  cow: ['cow', 'dry'],
  'cow-poor-hay': ['cow', 'dry'],
  'cow-good-hay': ['cow', 'dry'],
  heifer: ['heifer', 'dry'],
  bull: ['bull', 'dry'],
  growing: ['growing', 'dry'],
  calf: ['calf', 'dry'],
  ewe: ['ewe', 'dry'],
  'ewe-late': ['ewe', 'late'],
  lamb: ['lamb', 'dry'],
  doe: ['doe', 'dry'],
  horse: ['horse', 'dry'],
  other: ['cow', 'dry'],
};
function swingOf(kind: keyof typeof stockWords, stageThen?: Stage) {
  const [stockKind, stage] = guided[kind];
  return intakeSwing(guideLine(stockKind, stageThen ?? stage, 'fair'));
}
/** Trials tell how far guides for grown cattle miss; for other kinds only the guides themselves differ. */
export const isTried = (kind: keyof typeof stockWords): boolean => {
  const [stockKind, stage] = guided[kind];
  return guideLine(stockKind, stage, 'fair').animal === 'beef-cow';
};

type Herd = ValuesOf<{ readonly herd: typeof herd }>['herd'];
/** What each kind eats from the first day on hay to turn-out, with what cold adds to the feed of cattle; and at the least and the most that its guides let expect. */
export function herdNeed(asked: { readonly herd: Herd; readonly fromDay: number; readonly toDay: number }, coldPercent: number) {
  const periodDays = asked.toDay - asked.fromDay;
  const lines = asked.herd.map((row) => {
    const toBirthDays = row.hasBirths ? row.birthDay - asked.fromDay : periodDays;
    const beforeDays = Math.min(Math.max(toBirthDays, 0), periodDays);
    const afterDays = periodDays - beforeDays;
    const nursingPercent = row.hasBirths ? row.nursingPercent : row.intakePercent;
    const latePercent = Math.max(row.intakePercent, (row.hasBirths && latePercents[row.stock]) || 0);
    const lateInDays = latePercent > row.intakePercent ? beforeDays - Math.min(Math.max(toBirthDays - lateDays, 0), beforeDays) : 0;
    const addedPercent = cattleKinds.has(row.stock) ? coldPercent : 0;
    const one = (intakePercent: number) => dailyIntakeLb({ head: 1, weightLb: row.weightLb, intakePercent });
    const parts = [
      { lb: one(row.intakePercent) * (beforeDays - lateInDays), swing: swingOf(row.stock) },
      { lb: one(latePercent) * lateInDays, swing: swingOf(row.stock, 'late') },
      { lb: one(nursingPercent) * afterDays, swing: swingOf(row.stock, 'nursing') },
    ];
    const partsLb = sumOf(parts, ({ lb }) => lb);
    const eachLbPerDay = (partsLb / periodDays) * (1 + addedPercent / 100);
    const kindLb = row.countHead * eachLbPerDay * periodDays;
    const lowRatio = sumOf(parts, ({ lb, swing }) => lb * swing.lowRatio) / partsLb;
    const highRatio = sumOf(parts, ({ lb, swing }) => lb * swing.highRatio) / partsLb;
    const endPercent = afterDays > 0 ? nursingPercent : lateInDays > 0 ? latePercent : row.intakePercent;
    return {
      kind: {
        stock: row.stock,
        countHead: row.countHead,
        weightLb: row.weightLb,
        toBirthDays,
        beforeDays,
        intakePercent: row.intakePercent,
        lateInDays,
        latePercent,
        afterDays,
        nursingPercent,
        addedPercent,
        eachLbPerDay,
        kindLb,
        endLbPerDay: row.countHead * one(endPercent),
      },
      ends: { stock: row.stock, kindLb, lowRatio, lowKindLb: kindLb * lowRatio, highRatio, highKindLb: kindLb * highRatio },
    };
  });
  const kinds = lines.map(({ kind }) => kind);
  const kindEnds = lines.map(({ ends }) => ends);
  return {
    kinds,
    dryMatterLb: sumOf(kinds, ({ kindLb }) => kindLb),
    herdEndLbPerDay: sumOf(kinds, ({ endLbPerDay }) => endLbPerDay),
    kindEnds,
    lowDryMatterLb: sumOf(kindEnds, ({ lowKindLb }) => lowKindLb),
    highDryMatterLb: sumOf(kindEnds, ({ highKindLb }) => highKindLb),
  };
}
