/** `lines 3, 9, 12 and 2 more`. */
export function linesSaid(numbers: readonly number[]): string {
  const named = numbers.slice(0, 3).map((each) => each.toLocaleString('en-US'));
  const more = numbers.length - named.length;
  const list = more > 0 ? `${named.join(', ')} and ${more.toLocaleString('en-US')} more` : named.join(named.length === 2 ? ' and ' : ', ');
  return `${numbers.length === 1 ? 'line' : 'lines'} ${list}`;
}
/** `1 day`, `2,000 days`. */
export const counted = (count: number, what: string): string => `${count.toLocaleString('en-US')} ${what}${count === 1 ? '' : 's'}`;
