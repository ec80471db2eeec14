import type { Calculator, Outcome } from '../kit/define.ts';
import { withUnitOnce } from '../kit/hollowRanges.ts';
import { midSentence } from '../kit/midSentence.ts';
import { printName } from '../kit/print.ts';
import { digitsTold } from '../kit/quantities.ts';
import type { Between, PlainShown, SideNamed } from '../kit/shown.ts';
import { printIn, printNumber, roundedTo, unitBehind } from '../units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem } from '../units/units.ts';
import { type Figure, figureAlone, figureOf, leadOf, scalarAt, type ToldSide } from './Answer.tsx';
import { gapBetween } from './gap.ts';

// What lies between two sides.

const sayingOf = (calculator: Calculator, { values }: Outcome, { of, said }: PlainShown, system: UnitSystem): string =>
  [printName(calculator, values, of, system), ...(calculator.quantities[of]?.kind === 'number' && said !== undefined ? [said] : [])].join(' ');

type TwoSides = ToldSide & { readonly other: Outcome };
interface LeadBetween {
  readonly lead: PlainShown;
  /** How far its gap is to be believed, where it was measured on each side by itself. */
  readonly between?: Between;
}

const named = (side: Outcome): SideNamed<string> => ({
  number: (name) => Number(scalarAt(side, name)),
  word: (name) => String(scalarAt(side, name)),
  column: (table, column) => {
    const rows = side.values[table];
    return Array.isArray(rows) ? rows.map((row) => Number(row[column])) : [];
  },
});
/**
 * The result that two sides are told by: the first that knows how far its gap is to be believed; else the first; where that is the same for both, the
 * first that has words for its gap and is not.
 */
function leadBetween({ calculator, outcome, other, system }: TwoSides): LeadBetween | undefined {
  const told = ({ values, shown }: Outcome, { of }: PlainShown) => shown.includes(of) && printName(calculator, values, of, system);
  for (const each of calculator.results) {
    const isOnBoth = outcome.shown.includes(each.of) && other.shown.includes(each.of);
    const between = isOnBoth ? each.between?.(named(outcome), named(other)) : undefined;
    if (between) return { lead: each, between };
  }
  const isSame = (each: PlainShown): boolean => told(outcome, each) === told(other, each);
  const lead = leadOf(calculator, outcome);
  if (!lead || !isSame(lead)) return lead && { lead };
  const apart = calculator.results.find((each) => each.gap && told(outcome, each) && told(other, each) && !isSame(each));
  return { lead: apart ?? lead };
}

/** The gap between two sides in the result that they are told by. */
export function figureBetween(sides: TwoSides): Figure | undefined {
  const { calculator, outcome, other, system } = sides;
  const { lead, between: known } = leadBetween(sides) ?? {};
  if (!lead) return undefined;
  if (known && 'instead' in known) return { ...same, figure: known.instead, what: '' };
  const between = signedGap(calculator, [outcome, other], lead.of, system);
  if (!between || !other.shown.includes(lead.of)) {
    const theirs = leadOf(calculator, other);
    // A number beside words needs its own to be understood: 34 head *must go*.
    const words = [sayingOf(calculator, outcome, lead, system), theirs ? sayingOf(calculator, other, theirs, system) : '–'];
    return words[0] === words[1] ? same : { ...same, figure: `${words[0]}; on that side ${midSentence(words[1] ?? '')}`, what: '' };
  }
  const { gap, digits, unit } = between;
  const number = printNumber(Math.abs(gap), digits);
  if (calculator.quantities[lead.of]?.kind === 'day') {
    if (gap === 0) return { ...same, figure: 'The same day' };
    return { figure: number, unit: unitBehind(number, unit), what: `${gap > 0 ? 'later' : 'earlier'} on that side`, isWords: false };
  }
  if (!isTold(between)) return same;
  const [less, more] = lead.gap ?? [`less ${lead.said ?? ''} on that side`, `more ${lead.said ?? ''} on that side`];
  return figureOf(number, unit, gap < 0 ? less : more);
}
const same: Figure = { figure: 'The same', unit: '', what: 'for both', isWords: true };

/** How far a gap is to be believed, in words. What can be chance is told so whatever its ends round to; where no gap is told nothing is chance. */
function wordsOf(known: Between, gap: Gap, from: UnitName): string | undefined {
  if ('instead' in known) return known.because;
  if ('unbounded' in known) return known.unbounded;
  const { low, high, times, hint } = known;
  const isChance = times === undefined ? low <= 0 && high >= 0 : low <= 1 && high >= 1;
  const range = times === undefined ? gapRangeOf([low, high], isChance, gap, from) : `${printTimes(low)} to ${printTimes(high)} times ${times}`;
  if (isChance && isTold(gap)) return `it can be chance: ${range}`;
  if (isChance) return /[1-9]/.test(range) ? `${range}, 95 times in 100` : undefined;
  return hint === undefined ? `${range}, 95 times in 100` : `a hint, no more: ${range}; ${hint}`;
}
/** Two digits count, below 1 too. */
const printTimes = (value: number): string => printNumber(value, digitsTold(value, { digits: 3, significant: 2 }));
function gapRangeOf(ends: readonly [number, number], isChance: boolean, { gap, digits, unit }: Gap, from: UnitName): string {
  const [least, most] = [convert(ends[0], from, unit), convert(ends[1], from, unit)];
  const [less, more] = [least, most].map((end) => printIn(Math.abs(end), unit, digits));
  if (isChance) return `${printNumber(Math.abs(least), digits)} less to ${more} more`;
  return withUnitOnce(gap < 0 ? `${more} to ${less}` : `${less} to ${more}`);
}

/**
 * The gap at the same end of both ranges: what is unsure of the year is unsure of both sides. It is a range only around a gap that is told as a number in
 * the same unit and lies in it: where an end of a side is capped, or rounding has moved one, it says nothing of that gap.
 */
export function rangeBetween(sides: TwoSides): string | undefined {
  const { calculator, outcome, other, system } = sides;
  const { lead, between } = leadBetween(sides) ?? {};
  if (lead && between) {
    const [gap, quantity] = [signedGap(calculator, [outcome, other], lead.of, system), calculator.quantities[lead.of]];
    return gap && quantity?.kind === 'number' ? wordsOf(between, gap, quantity.unit) : undefined;
  }
  const [told, low, high] = [lead?.of, lead?.range?.low, lead?.range?.high].map((name = '') => signedGap(calculator, [outcome, other], name, system));
  if (!lead || !other.shown.includes(lead.of) || !told || !low || !high || told.unit !== low.unit) return undefined;
  if (low.gap * high.gap < 0) return 'the ranges cross: it can go either way';
  const digits = Math.min(low.digits, high.digits);
  const [least = 0, most = 0] = [low, high].map(({ gap }) => roundedTo(gap, digits)).toSorted((one, two) => one - two);
  if ((least === 0 && most === 0) || told.gap < least || told.gap > most) return undefined;
  const [from = '', to = ''] = [least, most]
    .map(Math.abs)
    .toSorted((one, two) => one - two)
    .map((gap) => printIn(gap, low.unit, digits));
  return from === to ? `${to} at either end of both ranges` : withUnitOnce(`${from} to ${to}, both at the same end`);
}

/** The gap in a line with how far it is to be believed: for a note. Nothing where two sides are set beside each other and no more. */
export function lineBetween(sides: TwoSides): string {
  const figure = leadBetween(sides)?.between && figureBetween(sides);
  return figure ? [[figure.figure, figure.unit, figure.what].filter((each) => each !== '').join(' '), rangeBetween(sides)].join('; ') : '';
}

/** Both, as a form tells them, and the line of its note. */
export const toldBetween = (sides: TwoSides): readonly [figure: Figure | undefined, range: string | undefined, line: string] => [
  figureBetween(sides),
  rangeBetween(sides),
  lineBetween(sides),
];

type Gap = ReturnType<typeof gapBetween>;
/** Whether any of a gap is left when it is rounded. */
const isTold = ({ gap, digits }: Gap): boolean => /[1-9]/.test(printNumber(Math.abs(gap), digits));
/** Of two results that are numbers or days; nothing of words. */
function signedGap(calculator: Calculator, sides: readonly [Outcome, Outcome], name: string, system: UnitSystem) {
  const quantity = calculator.quantities[name];
  const [one, two] = [scalarAt(sides[0], name), scalarAt(sides[1], name)];
  if (typeof one !== 'number' || typeof two !== 'number') return undefined;
  if (quantity?.kind === 'day') return { gap: two - one, digits: 0, unit: 'd' as const };
  return quantity?.kind === 'number' ? gapBetween(one, two, quantity, system) : undefined;
}

/** The figure that stands large: of one side, or between two. */
export const figureFor = (calculator: Calculator, outcome: Outcome, other: Outcome | null, system: UnitSystem): Figure | undefined =>
  other ? figureBetween({ calculator, outcome, other, system }) : figureAlone({ calculator, outcome, system });
