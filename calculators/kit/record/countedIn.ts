import { convert } from '../../units/units.ts';
import { amountReader, type Counting, countingIn, countings, isCounting } from './amounts.ts';
import type { Answers } from './answers.ts';
import type { ReadCell } from './assemble.ts';
import type { Layout } from './columns.ts';
import type { DatedCell } from './datedCells.ts';
import { spanOf } from './dateOrder.ts';
import type { DateOrder } from './dates.ts';
import type { RecordLimits, Said } from './said.ts';

/** So many lines tell how a column writes its numbers. */
const enoughLines = 400;

/** More than a wet country gets in a day or in a month: then nobody may take the numbers for inches unasked. One slip of the pen is no sign. */
function areUnlikely({ unit }: RecordLimits, cells: readonly ReadCell[]): boolean {
  const amounts = cells.flatMap(({ what, days }) => (what.is === 'amount' && what.amount > 0 ? [what.amount / (days > 1 ? 5 : 1)] : []));
  const large = amounts.filter((amount) => amount > convert(10, 'in', unit)).length;
  return large > 0.01 * amounts.length && (large > 1 || amounts.length < 4);
}

interface Counted extends Said {
  readonly counting: Counting;
  readonly isUnitKnown: boolean;
  readonly cells: readonly ReadCell[];
}
/** Each cell as an amount, in the unit that a head names, or that people say. */
export function countedIn(input: RecordLimits, cells: readonly DatedCell[], { layout, rain, cutAt, order, answers }: CountedBy): Counted {
  const hasDecimalComma = cutAt !== ',' && cells.slice(0, enoughLines).some(({ cell }) => /^\s*\d+,\d+\s*$/.test(cell));
  const inHead = layout.dates.is === 'months' ? layout.head.join(' ') : (layout.head[rain] ?? '');
  const named = countingIn(inHead) ?? countingIn(layout.above);
  const asked = answers['unit'];
  const counting = isCounting(asked) ? asked : (named ?? (input.unit === 'mm' || answers['bare'] === 'mm' ? 'mm' : 'in'));
  const read = amountReader(input.unit, counting, hasDecimalComma);
  const readCells = cells.map((cell): ReadCell => ({ line: cell.line, ...spanOf(cell, order), what: read(cell.cell, cell.flag) }));
  const isUnitKnown = isCounting(asked) || named !== undefined || !areUnlikely(input, readCells);
  const isGuessed = isUnitKnown && named === undefined && asked === undefined;
  const options = Object.entries(countings).map(([value, label]) => ({ value, label }));
  return {
    counting,
    isUnitKnown,
    cells: readCells,
    questions: [{ name: 'unit', ask: 'The numbers are in', options, answer: isUnitKnown ? counting : '' }],
    told: [
      ...(hasDecimalComma ? ['A comma in a number was taken as the decimal point.'] : []),
      ...(isGuessed ? [`Nothing says what the numbers are in: taken as ${countings[counting]}.`] : []),
    ],
    problem: isUnitKnown
      ? undefined
      : `${input.label}: nothing says what its numbers are in, and for ${countings[counting]} some are too large. Say it below.`,
  };
}
interface CountedBy {
  readonly layout: Layout;
  readonly rain: number;
  readonly cutAt: string;
  readonly order: DateOrder | undefined;
  readonly answers: Answers;
}
