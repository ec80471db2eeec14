import type { Calculator, Outcome } from '../kit/define.ts';
import { withUnitOnce } from '../kit/hollowRanges.ts';
import { midSentence } from '../kit/midSentence.ts';
import { printName } from '../kit/print.ts';
import type { PlainShown } from '../kit/shown.ts';
import { printIn, printNumber, roundedTo, unitBehind } from '../units/printQuantity.ts';
import type { UnitSystem } from '../units/units.ts';
import { type Figure, figureAlone, figureOf, leadOf, scalarAt, type ToldSide } from './Answer.tsx';
import { gapBetween } from './gap.ts';

// What lies between two sides.

const sayingOf = (calculator: Calculator, { values }: Outcome, { of, said }: PlainShown, system: UnitSystem): string =>
  [printName(calculator, values, of, system), ...(calculator.quantities[of]?.kind === 'number' && said !== undefined ? [said] : [])].join(' ');

type TwoSides = ToldSide & { readonly other: Outcome };

/** The result that two sides are told by: the first; where that is the same for both, the first that has words for its gap and is not. */
function leadBetween({ calculator, outcome, other, system }: TwoSides): PlainShown | undefined {
  const told = ({ values, shown }: Outcome, { of }: PlainShown) => shown.includes(of) && printName(calculator, values, of, system);
  const isSame = (each: PlainShown): boolean => told(outcome, each) === told(other, each);
  const lead = leadOf(calculator, outcome);
  if (!lead || !isSame(lead)) return lead;
  return calculator.results.find((each) => each.gap && told(outcome, each) && told(other, each) && !isSame(each)) ?? lead;
}

/** The gap between two sides in the result that they are told by. */
export function figureBetween(sides: TwoSides): Figure | undefined {
  const { calculator, outcome, other, system } = sides;
  const lead = leadBetween(sides);
  if (!lead) return undefined;
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
  if (!/[1-9]/.test(number)) return same;
  const [less, more] = lead.gap ?? [`less ${lead.said ?? ''} on that side`, `more ${lead.said ?? ''} on that side`];
  return figureOf(number, unit, gap < 0 ? less : more);
}
const same: Figure = { figure: 'The same', unit: '', what: 'for both', isWords: true };

/** The range of a gap between two counts, which is a share in percent in either system of units. */
function gapCounted({ low, high }: { readonly low: number; readonly high: number }, { gap, digits, unit }: Gap): string {
  const [least, most] = [roundedTo(low, digits), roundedTo(high, digits)];
  const [less, more] = [least, most].map((end) => printIn(Math.abs(end), unit, digits));
  if (least < 0 && most > 0) return `it can be chance: ${printNumber(-least, digits)} less to ${more} more`;
  return withUnitOnce(gap < 0 ? `${more} to ${less}, 95 times in 100` : `${less} to ${more}, 95 times in 100`);
}

/**
 * The gap at the same end of both ranges: what is unsure of the year is unsure of both sides. It is a range only around a gap that is told as a number in
 * the same unit and lies in it: where an end of a side is capped, or rounding has moved one, it says nothing of that gap.
 */
export function rangeBetween(sides: TwoSides): string | undefined {
  const { calculator, outcome, other, system } = sides;
  const lead = leadBetween(sides);
  const [told, low, high] = [lead?.of, lead?.range?.low, lead?.range?.high].map((name = '') => signedGap(calculator, [outcome, other], name, system));
  if (!lead || !other.shown.includes(lead.of) || !told || !low || !high || told.unit !== low.unit) return undefined;
  const { range } = lead;
  if (range?.counted) return gapCounted(range.counted(numberOf(outcome), numberOf(other)), told);
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

const numberOf =
  (side: Outcome) =>
  (name: string): number =>
    Number(scalarAt(side, name));

/** Both, as a form tells them. */
export const toldBetween = (sides: TwoSides): readonly [figure: Figure | undefined, range: string | undefined] => [
  figureBetween(sides),
  rangeBetween(sides),
];

type Gap = ReturnType<typeof gapBetween>;
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
