/**
 * What a person uses in the field to get a number: drawn beside its field by the form, for any calculator. Data, so that form and tests agree. It writes the
 * field's text as if typed and nothing else; a link carries that text and never the tool.
 */

/** On a number in seconds, minutes or hours: start, stop, start over. What it measured goes into the field in the unit that the field shows. */
export interface Stopwatch {
  readonly kind: 'stopwatch';
}
/** A clock that calls out at given seconds. On a number in a unit of time it also writes what it measured; on a choice or a table it only calls. */
export interface Marks {
  readonly kind: 'marks';
  /** What starts with it: `The soil goes into the water`. */
  readonly label: string;
  /** Seconds after the start, rising. */
  readonly atS: readonly number[];
  /** What to do or look at, one for each mark. */
  readonly says: readonly string[];
}
/** On whole numbers that start at 0. Those of one group are drawn together as big buttons, with their total. */
export interface Tally {
  readonly kind: 'tally';
  /** What is counted, in the plural, and the same words for every input of the group: `steps`. The total says `37 of 100 steps`. */
  readonly group: string;
  /** How many make a whole count; the same for every input of the group. */
  readonly until: number;
  /** On the button. Short. */
  readonly label: string;
}
export type Tool = Stopwatch | Marks | Tally;
