import { isoDay, roundedTo } from '../units/printQuantity.ts';
import { isBare } from '../units/units.ts';
import type { Inputs } from './inputs.ts';
import type { PlainValues, Quantity, Rows, Scalar } from './quantities.ts';

// Where a result leads: to another calculator, whose link carries the figures that are known by then, or to a guide.

/** What another form calls a word of ours: one word, or several with the number that each stands for, of which the nearest is taken. */
export type OtherWords = Readonly<Record<string, string | Readonly<Record<string, number>>>>;
/** A table of ours as a table of theirs, row by row. Names of theirs are those of links. */
export interface LeadRows {
  readonly of: string;
  readonly into: string;
  /** A column of theirs by a column of ours that holds words. A row whose word they do not have is left out, and told. */
  readonly words: { readonly into: string; readonly of: string; readonly as: OtherWords; readonly nearestBy: string };
  /** Columns of theirs by columns of ours. */
  readonly columns: Readonly<Record<string, string>>;
  /** Columns of theirs that follow from our word, by that word. Where it tells nothing they go empty, and their form asks. */
  readonly tells?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}
interface CommonLead<V> {
  /** What the next page answers, in a few words. */
  readonly says: string;
  readonly when?: (values: V) => boolean;
}
export interface CalculatorLead<V> extends CommonLead<V> {
  readonly calculator: string;
  /** Link names of theirs by inputs and results of ours. */
  readonly gives?: Readonly<Record<string, keyof V & string>>;
  /** Texts that go along as they stand. */
  readonly sets?: Readonly<Record<string, string>>;
  /** Link names that go empty: they need it, nobody has given it, and an example would not fit what is given. */
  readonly asks?: readonly string[];
  readonly rows?: LeadRows;
}
export interface GuideLead<V> extends CommonLead<V> {
  readonly guide: string;
}
export type Lead<V> = CalculatorLead<V> | GuideLead<V>;
/** The same with its conditions closed over. */
export type PlainLead = Omit<CalculatorLead<Readonly<Record<string, unknown>>>, 'when'> | Omit<GuideLead<unknown>, 'when'>;

/** One that applies, ready to be followed. */
export interface Led {
  readonly says: string;
  /** `calculators/hay-to-grass`, below the site’s own address. */
  readonly page: string;
  /** The figures as a link carries them; empty for a guide. */
  readonly query: string;
  /** What their form has no word for, as ours calls it: to be added by hand. */
  readonly leftOut: readonly string[];
}
interface Ours {
  readonly inputs: Inputs;
  readonly quantities: Readonly<Record<string, Quantity>>;
}
export interface Leading<V> {
  readonly list: readonly Lead<V>[];
  readonly follow: (all: V, plain: PlainValues, ours: Ours) => readonly Led[];
}

/** As precise as a form needs it, and no more. */
const digitsOfInput = 6;
type Named = Inputs[string] | Quantity | undefined;
function textOf(value: Scalar, named: Named): string {
  if (typeof value === 'string' || named === undefined) return String(value);
  if (named.kind === 'date' || named.kind === 'day') return isoDay(value);
  if (named.kind !== 'number') return String(value);
  const number = 'digits' in named ? roundedTo(value, Math.max(0, named.digits)) : Number(value.toPrecision(digitsOfInput));
  return isBare(named.unit) ? String(number) : `${number}${named.unit}`;
}
/** Their word for a row; nothing where they have none. */
function wordOf(row: Rows[number], { of, as, nearestBy }: LeadRows['words']): string | undefined {
  const found = as[String(row[of])];
  if (found === undefined || typeof found === 'string') return found;
  const size = Number(row[nearestBy]);
  return Object.entries(found).toSorted(([, one], [, other]) => Math.abs(one - size) - Math.abs(other - size))[0]?.[0];
}
function rowsLed(rows: LeadRows, plain: PlainValues, { inputs }: Ours): { readonly pairs: readonly string[]; readonly leftOut: readonly string[] } {
  const [input, list] = [inputs[rows.of], plain[rows.of]];
  const columns = input?.kind === 'rows' ? input.columns : {};
  const all = (Array.isArray(list) ? list : []).map((row: Rows[number]) => ({ row, word: wordOf(row, rows.words) }));
  const kept = all.filter(({ word }) => word !== undefined);
  const kinds = columns[rows.words.of];
  const nameOf = (row: Rows[number]): string => {
    const word = String(row[rows.words.of]);
    return (kinds?.kind === 'choice' ? kinds.options[word]?.label : undefined) ?? word;
  };
  const leftOut = [...new Set(all.flatMap(({ row, word }) => (word === undefined ? [nameOf(row)] : [])))];
  if (kept.length === 0) return { pairs: [], leftOut };
  const pair = (name: string, cell: (each: (typeof kept)[number]) => string): string => `${rows.into}.${name}=${kept.map(cell).join(',')}`;
  return {
    pairs: [
      pair(rows.words.into, ({ word }) => String(word)),
      ...Object.entries(rows.columns).map(([theirs, ours]) => pair(theirs, ({ row }) => textOf(row[ours] ?? '', columns[ours]))),
      ...Object.entries(rows.tells ?? {}).map(([theirs, texts]) => pair(theirs, ({ row }) => texts[String(row[rows.words.of])] ?? '')),
    ],
    leftOut,
  };
}
function followed<V>(lead: Lead<V>, plain: PlainValues, ours: Ours): Led {
  if ('guide' in lead) return { says: lead.says, page: `guides/${lead.guide}`, query: '', leftOut: [] };
  const rows = lead.rows ? rowsLed(lead.rows, plain, ours) : { pairs: [], leftOut: [] };
  const given = Object.entries<string>(lead.gives ?? {}).map(([theirs, name]) => {
    const value = plain[name];
    if (typeof value !== 'number' && typeof value !== 'string') throw new RangeError(`a lead gives one number, date or word, not ${name}`);
    return `${theirs}=${textOf(value, ours.inputs[name] ?? ours.quantities[name])}`;
  });
  const pairs = [
    ...given,
    ...Object.entries(lead.sets ?? {}).map(([theirs, text]) => `${theirs}=${text}`),
    ...(lead.asks ?? []).map((theirs) => `${theirs}=`),
    ...rows.pairs,
  ];
  return { says: lead.says, page: `calculators/${lead.calculator}`, query: pairs.join('&'), leftOut: rows.leftOut };
}

/** `leading<Values>([{ calculator: 'hay-to-grass', says: 'Hay to bridge the gap', gives: { from: 'offDay' } }, { guide: 'resting-grass', says: '…' }])`. */
export const leading = <V>(list: readonly Lead<V>[]): Leading<V> => ({
  list,
  follow: (all, plain, ours) => list.filter(({ when }) => when === undefined || when(all)).map((lead) => followed(lead, plain, ours)),
});
