import { printAsIs, printDay } from '../../../calculators/units/printQuantity.ts';
import type { HayStack } from '../model/hay.ts';
import type { HayRow } from '../model/row.ts';
import { dayIn } from '../record/days.ts';
import { dryLb } from '../record/hayFed.ts';
import { isLoad } from '../record/loads.ts';

/** A stack of which the place has told how many bales lie in it. */
export type CountedStack = HayStack & { readonly baleCount: number };
/** What lies there still, and what must be told beside it. */
export interface Left {
  readonly amount: number;
  readonly says?: string | undefined;
}

const notTakenOff = (why: string): string => `hay that your record has fed is not taken off: ${why}`;
/** Hay that may have come from a stack: fed after the day of its count, and where nobody told that day, since it was baled. On that day itself it was counted behind the feeding. */
function fedOf({ countedDay, baledDay }: HayStack, fed: readonly HayRow[]): readonly HayRow[] {
  if (countedDay !== undefined) return fed.filter(({ day }) => day > countedDay);
  return baledDay === undefined ? fed : fed.filter(({ day }) => day >= baledDay);
}
const sumOf = (parts: readonly (number | undefined)[]): number | undefined =>
  parts.reduce<number | undefined>((sum, each) => (sum === undefined || each === undefined ? undefined : sum + each), 0);

/** Bales that a row of the record took from a stack; a load of which only the pounds are known, as so many of its bales. */
function balesOf(row: HayRow, { baleLb, moisturePercent }: HayStack): number | undefined {
  if (!isLoad(row)) return row.baleCount;
  const [load, bale] = [dryLb(row), dryLb({ baleCount: 1, baleLb, moisturePercent })];
  return load === undefined || bale === undefined || bale === 0 ? undefined : load / bale;
}
/** Pounds as they lie, the water in them. */
const asLiesLb = (row: HayRow, { moisturePercent }: HayStack): number | undefined => {
  if (!isLoad(row)) return row.baleLb === undefined ? undefined : row.baleCount * row.baleLb;
  const [load, pound] = [dryLb(row), dryLb({ baleCount: 1, baleLb: 1, moisturePercent })];
  return load === undefined || pound === undefined || pound === 0 ? undefined : load / pound;
};

/** Bales that lie in a stack still. Of several stacks the record does not tell which one was fed from: then the count stands, and it is said. */
export function balesLeft(stack: CountedStack, fed: readonly HayRow[], isOnly: boolean): Left {
  const { baleCount, countedDay } = stack;
  const since = fedOf(stack, fed);
  const whole = (why: string): Left => ({ amount: baleCount, says: notTakenOff(why) });
  if (since.length === 0) return { amount: baleCount };
  if (!isOnly) return whole('it does not tell from which stack');
  if (countedDay === undefined) return whole('tell under Feed on which day you counted the bales');
  const bales = sumOf(since.map((row) => balesOf(row, stack)));
  if (bales === undefined) return whole('some of it is in pounds, and nobody told what a bale weighs');
  const counted = `${printAsIs(baleCount)} counted ${printDay(dayIn(countedDay))}`;
  if (bales > baleCount) return { amount: 0, says: `${counted}, and more fed since: count again` };
  return { amount: Math.round(baleCount - bales), says: `${counted}, ${printAsIs(Number(bales.toPrecision(4)))} fed since` };
}

/** Pounds of all stacks together that lie there still; nothing where a stack has no weight. */
export function poundsLeft(stacks: readonly CountedStack[], fed: readonly HayRow[]): Left | undefined {
  const all = sumOf(stacks.map(({ baleCount, baleLb }) => (baleLb === undefined ? undefined : baleCount * baleLb)));
  const [first, second] = stacks;
  if (first === undefined || all === undefined) return undefined;
  if (second === undefined) {
    const { amount, says } = balesLeft(first, fed, true);
    return { amount: amount * (first.baleLb ?? 0), says: says && (says.startsWith('hay') ? says : `bales: ${says}`) };
  }
  if (stacks.every((stack) => fedOf(stack, fed).length === 0)) return { amount: all };
  const days = stacks.flatMap(({ countedDay = [] }) => countedDay).toSorted();
  const [from, until] = [days[0], days.at(-1)];
  const since = until === undefined ? [] : fed.filter(({ day }) => day > until);
  const isBetween = from !== until && fed.some(({ day }) => from !== undefined && until !== undefined && day > from && day <= until);
  if (days.length < stacks.length || until === undefined || isBetween)
    return { amount: all, says: notTakenOff('count all stacks on one day, and tell it under Feed') };
  const fedLb = sumOf(since.map((row) => asLiesLb(row, first)));
  if (fedLb === undefined) return { amount: all, says: notTakenOff('nobody told what some of it weighs') };
  const counted = `counted ${printDay(dayIn(until))}`;
  if (fedLb > all) return { amount: 0, says: `more was fed than was ${counted}: count again` };
  return { amount: Math.round(all - fedLb), says: `${counted}, what was fed since is taken off` };
}
