import { type ChoiceInput, choice, number, type Option, rows } from '../kit/inputs.ts';
import { amount, table } from '../kit/quantities.ts';
import { tex } from '../kit/steps.ts';
import { dailyIntakeLb } from '../math/herd/dailyIntakeLb.ts';
import { commonGrazer } from '../math/herd/likelyIntakePercent.ts';
import { type GrazerKind, grazers } from '../tables/grazers.ts';

/** Each kind as it is counted, one and many: `45 nursing cows`. */
export const counted = {
  'cow-nursing': ['nursing cow', 'nursing cows'],
  'cow-dry': ['dry cow', 'dry cows'],
  'cow-dry-cured': ['dry cow', 'dry cows'],
  bull: ['bull', 'bulls'],
  heifer: ['bred heifer', 'bred heifers'],
  stocker: ['stocker', 'stockers'],
  calf: ['grazing calf', 'grazing calves'],
  'ewe-nursing': ['nursing ewe', 'nursing ewes'],
  'ewe-dry': ['dry ewe', 'dry ewes'],
  doe: ['nursing doe', 'nursing does'],
  'doe-dry': ['dry doe', 'dry does'],
  horse: ['horse', 'horses'],
  other: ['other', 'others'],
} as const satisfies Readonly<Record<GrazerKind | 'other', Option['short']>>;

/** A kind of stock for the list; choosing it starts weight and appetite. */
const grazer = (kind: GrazerKind): Option => ({ label: grazers[kind].label, fills: commonGrazer(kind) });
const areKinds = <K extends GrazerKind>(kinds: readonly K[], built: object): built is Readonly<Record<K, Option>> =>
  kinds.every((kind) => Object.hasOwn(built, kind));

/** What a form asks of appetite: what they eat today, or on the mean of the grazing season or of the winter, on whatever day it is opened. */
type AppetiteOf = 'today' | 'season' | 'winter';
const kindOffers = { today: 'herd.kind', season: 'herd.seasonKind', winter: 'herd.winterKind' } as const;
const intakeOffers = { today: 'herd.intake', season: 'herd.seasonIntake', winter: 'herd.winterIntake' } as const;

/** The kinds that a list offers, in its order, and at its end one that fills in nothing. `own` is what a list says of a kind otherwise. */
export function stockKind<const K extends GrazerKind>(
  start: NoInfer<K>,
  kinds: readonly K[],
  { own = {}, appetiteOf = 'today' }: { readonly own?: Readonly<Record<string, Option>>; readonly appetiteOf?: AppetiteOf } = {},
): ChoiceInput<K | 'other'> {
  const options = Object.fromEntries(kinds.map((kind) => [kind, { ...(own[kind] ?? grazer(kind)), short: counted[kind] }]));
  if (!areKinds(kinds, options)) throw new TypeError('stockKind needs its kinds by name');
  return choice<K | 'other'>('Kind of stock', start, {
    options: { ...options, other: { label: 'Other', short: counted.other } },
    help: 'Choosing one fills in weight and appetite; change them to fit yours.',
    offeredBy: kindOffers[appetiteOf],
  });
}

/** What those kinds are called among the results. */
export function kindNames<const K extends GrazerKind>(kinds: readonly K[]): Readonly<Record<K | 'other', string>> {
  const names = { ...Object.fromEntries(kinds.map((kind) => [kind, grazers[kind].label])), other: 'Other' };
  if (!areNames(kinds, names)) throw new TypeError('kindNames needs its kinds by name');
  return names;
}
const areNames = <K extends GrazerKind>(kinds: readonly K[], built: { readonly other: string }): built is Readonly<Record<K | 'other', string>> =>
  kinds.every((kind) => Object.hasOwn(built, kind));

/** All stock that graze together: head, weight and appetite, a line for each kind. */
export const grazingStock = <const K extends string>({
  label,
  help,
  kind,
  ask,
  start,
  herd,
  countLabel = 'Head',
  appetiteOf = 'today',
}: {
  readonly label: string;
  readonly help?: string;
  /** What the head count is called where it is asked by itself. */
  readonly countLabel?: string;
  /** As its `kind` has it. */
  readonly appetiteOf?: AppetiteOf;
  readonly kind: ChoiceInput<K>;
  readonly ask: string;
  /** The kind whose appetite a new line shows. */
  readonly start: GrazerKind;
  readonly herd: readonly (readonly [kind: K & GrazerKind, countHead: number])[];
}) =>
  rows({
    label,
    rowName: 'kind of stock',
    each: '{#countHead} {kind} of {weightLb}',
    ...(help === undefined ? {} : { help }),
    maxRows: 8,
    offeredBy: 'herd',
    columns: {
      kind,
      countHead: number(countLabel, 'N', 'head', [1, 20_000], 45, { whole: true, offeredBy: 'herd.count' }),
      weightLb: number('Weight of one', 'W', 'lb', [20, 3000], 1250, { step: 10, usual: 'animalLb', ask, offeredBy: 'herd.weight' }),
      intakePercent: number('Eats a day, share of its weight', 'p', 'pct', [0.5, 8], commonGrazer(start).intakePercent, {
        help: 'Counted with the water out.',
        offeredBy: intakeOffers[appetiteOf],
      }),
    },
    default: herd.map(([each, countHead]) => ({ kind: each, countHead, ...commonGrazer(each) })),
  });

/** A herd to start with. */
export const nursingHerd = [
  ['cow-nursing', 45],
  ['bull', 2],
  ['ewe-nursing', 60],
] as const satisfies readonly (readonly [GrazerKind, number])[];

interface StockLine {
  readonly countHead: number;
  readonly weightLb: number;
  readonly intakePercent: number;
}
/** What each line eats in a day. */
export const stockLinesOf = (stock: readonly StockLine[]) =>
  stock.map(({ countHead, weightLb, intakePercent }) => ({
    countHead,
    weightLb,
    intakePercent,
    lineLbPerDay: dailyIntakeLb({ head: countHead, weightLb, intakePercent }),
  }));
/** The same as a table of results, with the letter that its working has for the share of weight. */
export const stockLinesTable = (shareSymbol: string) =>
  table('Each kind of stock', {
    countHead: amount('Head', 'N', 'head'),
    weightLb: amount('Weight of one', 'W', 'lb'),
    intakePercent: amount('Eats a day, share of its weight', shareSymbol, 'pct', 1),
    lineLbPerDay: amount('Eats', 'D_i', 'lb/d'),
  });
/** And its step in the working. */
export const stockLinesStep = {
  says: 'What the stock eat in a day.',
  source: 'common practice',
  formulas: { lineLbPerDay: tex`\q{countHead} \times \q{weightLb} \times \q{intakePercent} / 100` },
  sums: { demandLbPerDay: 'lineLbPerDay' },
} as const;
/** A share eaten that somebody gives instead of the table's. */
export const eatenAsGiven = {
  says: 'Share of that eaten, as you gave it.',
  onlyWhen: ({ eatenFrom }: { readonly eatenFrom: string }) => eatenFrom === 'own',
};
