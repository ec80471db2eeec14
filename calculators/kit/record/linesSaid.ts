import { printNumber } from '../../units/printQuantity.ts';

/** `lines 3, 9, 12 and 2 more`. */
export function linesSaid(numbers: readonly number[]): string {
  const named = numbers.slice(0, 3).map((each) => printNumber(each, 0));
  const more = numbers.length - named.length;
  const list = more > 0 ? `${named.join(', ')} and ${printNumber(more, 0)} more` : named.join(named.length === 2 ? ' and ' : ', ');
  return `${numbers.length === 1 ? 'line' : 'lines'} ${list}`;
}
/** `1 day`, `2,000 days`. */
export const counted = (count: number, what: string): string => `${printNumber(count, 0)} ${what}${count === 1 ? '' : 's'}`;
