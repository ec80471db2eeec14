import { type Input, type Inputs, type RowsInput, type ShownWhen, sharesRows } from './inputs.ts';
import { isShown, type Texts } from './state.ts';

// Which questions stand open on a calculator's page, in which order, and into which groups the rest folds.

type ColumnKeys<I> = { [K in keyof I & string]: I[K] extends RowsInput<infer C> ? `${K}.${keyof C & string}` : never }[keyof I & string];
/** An input, or one column of a table (`layers.feel`): a field for each row. A table by its own name is one line that tells its rows. */
export type Asked<I> = (keyof I & string) | ColumnKeys<I>;
/** One question, or some that stand for each other: of those exactly one shows at a time. */
type Slot<I> = Asked<I> | readonly [Asked<I>, Asked<I>, ...Asked<I>[]];
/** One to five, in order. With the example's answers none of them may be hidden. */
export type First<I> = readonly [Slot<I>, Slot<I>?, Slot<I>?, Slot<I>?, Slot<I>?];
/** Questions that fold behind one line. */
export interface Group<I> {
  readonly title: string;
  readonly inputs: readonly (keyof I & string)[];
  /**
   * What they hold, as a line: `{areaAc} of {soilGroup}`. A name prints its answer with its unit, `{#countHead}` without; an option by its `short`; a table by its
   * rows. What is not asked drops out with the comma before it. Without one, the first three answers stand there with their labels.
   */
  readonly summary?: string;
}
export interface PlainGroup {
  readonly title: string;
  readonly inputs: readonly string[];
  readonly summary?: string;
}
export interface Layout {
  readonly first: readonly (readonly string[])[];
  readonly groups: readonly PlainGroup[];
}

/** `layers.feel` asks of `layers`. */
export const inputNameOf = (asked: string): string => asked.split('.')[0] ?? asked;

/** The group of counts that an input belongs to, if it is one of a tally. */
export const tallyOf = (input: Input | undefined): string | undefined =>
  input?.kind === 'number' && input.tool?.kind === 'tally' ? input.tool.group : undefined;
/** What is drawn with an input: the counts of its tally, or nothing but itself. */
function drawnWith(inputs: Inputs, key: string): readonly [string, ...string[]] {
  const group = tallyOf(inputs[key]);
  if (group === undefined) return [key];
  const [first = key, ...others] = Object.keys(inputs).filter((each) => tallyOf(inputs[each]) === group);
  return [first, ...others];
}
/** Keys by what is drawn together: a tally whole, where the first of its counts is asked; every other key alone. */
export const drawnTogether = (inputs: Inputs, keys: readonly string[]): readonly (readonly [string, ...string[]])[] => [
  ...new Map(keys.map((key) => drawnWith(inputs, key)).map((together) => [together[0], together])).values(),
];

/** What nobody named folds into one last group, so that every input has its place. One count of a tally brings the others. */
export function layoutOf(inputs: Inputs, first: readonly (string | readonly string[] | undefined)[] = [], groups: readonly PlainGroup[]): Layout {
  const slots = first.flatMap((slot) =>
    slot === undefined ? [] : typeof slot === 'string' ? drawnWith(inputs, slot).map((each) => [each]) : [slot],
  );
  const whole = new Set(slots.flat());
  const named = new Set([...whole, ...groups.flatMap((group) => group.inputs)]);
  // A table of which one column is asked keeps its other columns in a group.
  const left = Object.keys(inputs).filter((key) => !named.has(key));
  return { first: slots, groups: left.length === 0 ? groups : [...groups, { title: `${left.length} more`, inputs: left }] };
}

const shownWhenOf = (inputs: Inputs, asked: string): ShownWhen => {
  const input = inputs[inputNameOf(asked)];
  return input?.shownWhen ?? {};
};

/** The questions that stand open with these answers. Where a choice in a group hides all of a slot, that choice stands in its place. */
export function askedNow(inputs: Inputs, { first }: Layout, texts: Texts): readonly string[] {
  const isOpen = (asked: string): boolean => {
    const input = inputs[inputNameOf(asked)];
    return input !== undefined && isShown(input, texts);
  };
  const asked = first.map((slot) => {
    const open = slot.find(isOpen);
    if (open !== undefined) return open;
    const hiding = slot.flatMap((each) => Object.keys(shownWhenOf(inputs, each))).find((key) => isOpen(key));
    return hiding ?? slot[0] ?? '';
  });
  return [...new Set(asked)].filter((each) => isOpen(each));
}

/** Does this input, or a column of this table, belong to people rather than to the place? */
export const isManaged = (input: Input): boolean =>
  input.kind === 'rows' ? Object.values(input.columns).some(({ belongsTo }) => belongsTo === 'management') : input.belongsTo === 'management';
/** A table with columns of both has the same rows on both sides. */
export const hasPlace = (input: Input): boolean => (input.kind === 'rows' ? sharesRows(input) : input.belongsTo === 'place');

/** What an input hides behind, or what its columns do. */
export const hidesBehind = (input: Input): readonly string[] => [
  ...Object.keys(input.shownWhen ?? {}),
  ...(input.kind === 'rows' ? Object.values(input.columns).flatMap(({ shownWhen = {} }) => Object.keys(shownWhen)) : []),
];

/** Is it asked in a table, or month by month? */
export const isTable = (input: Input | undefined): boolean => input?.kind === 'rows' || input?.kind === 'months';
/** What stands open at first, or with some answers. */
export const askedFirst = (inputs: Inputs, { first }: Layout): Inputs =>
  Object.fromEntries(Object.entries(inputs).filter(([key]) => first.flat().some((asked) => inputNameOf(asked) === key)));
