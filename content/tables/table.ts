/** What one place of a table holds: a number, the ends of a range (`null`: no end on that side), words, or `null` where the source prints nothing. */
export type Cell = number | string | readonly [low: number | null, high: number | null] | null;

/** Where a row comes from. */
export interface Origin {
  /** Name of a file in `content/sources`, without its ending. */
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

/** Units as they stand in the head of a column, and as a sentence says them. */
export const unitsInWords = {
  in: 'inches',
  'in/h': 'inches an hour',
  'in/ft': 'inches in a foot',
  'cm/h': 'centimeters an hour',
  cm: 'centimeters',
  ft: 'feet',
  mm: 'millimeters',
  'um/s': 'micrometers a second',
  '%': 'percent',
  '°F': 'degrees F',
  days: 'days',
  'lb/ac': 'pounds an acre',
  'lb/ac in': 'pounds an acre in each inch',
  'lb/ft3': 'pounds a cubic foot',
  'lb/day': 'pounds a day',
  'tons/ac': 'tons an acre',
  'gal/day': 'gallons a day',
  'g/cm3': 'grams a cubic centimeter',
  ppm: 'ppm',
  'mg/L': 'milligrams a liter',
} as const;
export type TableUnit = keyof typeof unitsInWords;

export interface Column {
  readonly key: string;
  readonly label: string;
  readonly unit?: TableUnit;
}
export interface Row extends Origin {
  /** Tells the row apart inside its table. */
  readonly key: string;
  readonly name: string;
  /** One for each column. */
  readonly cells: readonly Cell[];
}

interface Words {
  /** Address of its page. */
  readonly slug: string;
  /** In plain words, with the term of the trade. */
  readonly title: string;
  /** What it is for, in one or two sentences. */
  readonly says: string;
  /** How people go wrong with it. */
  readonly trap: string;
  /** Where it can hurt: stands before the numbers. */
  readonly caution?: string;
  readonly searchWords: readonly string[];
  /** The file in `calculators/tables` that its numbers stand in. */
  readonly file: string;
  /** Calculators that rest on it. */
  readonly calculators: readonly string[];
  /** Head of the first column, which names the rows. */
  readonly rowsAre: string;
}
export interface ReferenceTable extends Words {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}
export interface TableGroup {
  readonly title: string;
  readonly tables: readonly ReferenceTable[];
}

interface Description<Entry> extends Words {
  readonly entries: readonly Entry[];
  readonly key: (entry: Entry) => string;
  readonly name: (entry: Entry) => string;
  readonly origin: Origin | ((entry: Entry) => Origin);
  readonly columns: readonly (Column & { readonly of: (entry: Entry) => Cell })[];
}

const only = ({ source, where, seen }: Origin): Origin => ({ source, where, seen });

/** A table for readers, its numbers read from the data that the calculators use. */
export function tableOf<Entry>({ entries, key, name, origin, columns, ...words }: Description<Entry>): ReferenceTable {
  return {
    ...words,
    columns: columns.map(({ of: _, ...column }) => column),
    rows: entries.map((entry) => ({
      ...only(typeof origin === 'function' ? origin(entry) : origin),
      key: key(entry),
      name: name(entry),
      cells: columns.map(({ of }) => of(entry)),
    })),
  };
}

export const capitalized = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** `silty-clay-loam` as a row is called: `Silty clay loam`. */
export const named = (key: string): string => capitalized(key.replaceAll('-', ' '));

/** Keys and values of a record, its keys as they are typed. */
export const entriesOf = <Key extends string, Value>(record: Readonly<Partial<Record<Key, Value>>>): readonly (readonly [Key, Value])[] =>
  (Object.keys(record) as Key[]).flatMap((key) => (record[key] === undefined ? [] : [[key, record[key]] as const]));

/** A last class has no upper end. */
export const upTo = (end: number): Cell => (Number.isFinite(end) ? end : 'more');

const number = (value: number): string => value.toLocaleString('en-US', { maximumFractionDigits: 6 });

/** One end of a range; a cell that is no range has none. */
export function endOf(cell: Cell, end: 'low' | 'high' | undefined): Cell {
  if (end === undefined) return cell;
  return typeof cell === 'object' && cell !== null ? cell[end === 'low' ? 0 : 1] : null;
}

/** Stands where a source gives no value. */
export const notGiven = '–';

/** A cell as it is read. */
export function printCell(cell: Cell): string {
  if (cell === null) return notGiven;
  if (typeof cell === 'string') return cell;
  if (typeof cell === 'number') return number(cell);
  const [low, high] = cell;
  if (low === null && high === null) return notGiven;
  if (low === null) return `up to ${number(high ?? 0)}`;
  if (high === null) return `over ${number(low)}`;
  return low === high ? number(low) : `${number(low)} to ${number(high)}`;
}
