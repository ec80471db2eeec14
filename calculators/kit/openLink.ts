import { longestText, readQuantity } from '../units/readQuantity.ts';
import { isBare, type units } from '../units/units.ts';
import type { Cell, ChoiceInput, Input, Inputs, MonthsInput, RowsInput } from './inputs.ts';
import { type Linked, linkName } from './link.ts';
import { defaultText, unitMark } from './read.ts';
import { type Form, isShown, type RowTexts, rowsIn, startTexts, type Text, type Texts, textIn, withPlaceOf } from './state.ts';

// The way back from a link, apart from the way there: most forms are opened without one.

const longestQuery = 4000;

/** The other way: a unit that stands right behind its number is marked, so that the field need not show it twice. */
function openText(cell: Cell | { readonly kind: 'number'; readonly unit: keyof typeof units }, found: string): string {
  const text = found.slice(0, longestText);
  if (cell.kind === 'choice') return optionNow(cell, text);
  if (cell.kind !== 'number') return text;
  const reading = readQuantity(text, cell.unit);
  return reading.is === 'value' && !isBare(reading.unit) ? `${reading.amount}${unitMark}${reading.unit}` : text;
}
const optionNow = (cell: ChoiceInput, text: string): string =>
  Object.hasOwn(cell.options, text) ? text : (Object.entries(cell.options).find(([, option]) => option.aliases?.includes(text))?.[0] ?? text);

export interface Opened {
  readonly form: Form;
  readonly notices: readonly string[];
  /** Those notices that tell of what was written and not taken as it stands: where nobody looks it over, it is no answer. */
  readonly faults: readonly string[];
  /** Names that are not known here, in full. */
  readonly unknown: readonly string[];
  /** Inputs that the link names; the others stand as the example has them. */
  readonly named: ReadonlySet<string>;
}
const listed = (names: readonly string[]): string =>
  names
    .slice(0, 3)
    .map((name) => name.slice(0, 20))
    .join(', ');

/** Reads one side from the pairs of a query, taking out what it used. */
class SideReader {
  readonly #pairs: Map<string, string>;
  readonly #version: number;
  readonly #empty: { readonly row: Record<string, string>; readonly name: string; readonly cell: Cell }[] = [];
  readonly faults: string[] = [];
  readonly named = new Set<string>();
  constructor(pairs: Map<string, string>, version: number) {
    this.#pairs = pairs;
    this.#version = version;
  }
  #take(prefix: string, names: readonly string[]): string | undefined {
    const found = names.map((name) => this.#pairs.get(prefix + name)).find((text) => text !== undefined);
    for (const name of names) this.#pairs.delete(prefix + name);
    return found;
  }
  /** What an input holds that the link does not name: its value from before it existed, or its default. */
  #missing(cell: Cell, fallback: string): string {
    return cell.since && this.#version < cell.since.version ? openText(cell, cell.since.before) : fallback;
  }
  /** The same for the twelve: `before` holds one value for every month, or twelve with commas between. */
  #missingMonths(input: MonthsInput, start: Text): Text {
    if (!input.since || this.#version >= input.since.version) return start;
    const values = input.since.before.split(',');
    return input.default.map((_, month) => openText({ kind: 'number', unit: input.unit }, values[month] ?? values[0] ?? ''));
  }
  read(inputs: Inputs, base: Texts | null): Texts {
    const start = startTexts(inputs);
    const texts: Texts = Object.fromEntries(
      Object.entries(inputs).map(([key, input]): [string, Text] => [key, this.#input(key, input, base?.[key], start[key] ?? '', base !== null)]),
    );
    // What is asked in a row and was left empty is missing, as it is anywhere else: a link is written with nothing only where nothing is asked.
    for (const { row, name, cell } of this.#empty.splice(0)) if (isShown(cell, { ...texts, ...row })) row[name] = '';
    return texts;
  }
  #input(key: string, input: Input, before: Text | undefined, start: Text, isThat: boolean): Text {
    if (input.kind === 'record') return start;
    if (input.kind === 'rows') return this.#rows(key, input, rowsIn(before), start, isThat);
    const found =
      isThat && input.belongsTo === 'place' ? undefined : this.#take(isThat ? 'that.' : '', [linkName(key, input), ...(input.aliases ?? [])]);
    if (found !== undefined) this.named.add(key);
    if (input.kind === 'months') {
      if (found === undefined) return before ?? this.#missingMonths(input, start);
      const cell = { kind: 'number', unit: input.unit } as const;
      const cells = found.split(',').map((text) => openText(cell, text));
      if (cells.length !== 12) this.faults.push(`“${input.label}” has ${cells.length} months in this link, not twelve; look it over.`);
      return Array.from({ length: 12 }, (_, month) => cells[month] ?? '');
    }
    return found !== undefined ? openText(input, found) : (before ?? this.#missing(input, textIn(start)));
  }
  #rows(key: string, input: RowsInput, before: readonly RowTexts[], start: Text, isThat: boolean): Text {
    const head = linkName(key, input);
    const lists = Object.entries(input.columns).map(([name, cell]) => {
      const isShared = isThat && cell.belongsTo === 'place';
      const names = [linkName(name, cell), ...(cell.aliases ?? [])].map((each) => `${head}.${each}`);
      return { name, cell, list: isShared ? undefined : this.#take(isThat ? 'that.' : '', names)?.split(',') };
    });
    const longest = Math.max(0, ...lists.map(({ list }) => list?.length ?? 0));
    if (longest === 0) return before.length > 0 ? before : start;
    this.named.add(key);
    const isFixed = isThat && lists.some(({ cell }) => cell.belongsTo === 'place');
    const count = isFixed ? before.length : Math.min(input.maxRows, longest);
    if (longest > count) this.faults.push(`“${input.label}” has ${longest} rows in this link; ${count} fit here.`);
    else if (lists.some(({ list }) => list !== undefined && list.length !== count))
      this.faults.push(`The lists of “${input.label}” in this link differ in length; look them over.`);
    return Array.from({ length: count }, (_, index) => {
      const row: Record<string, string> = {};
      for (const { name, cell, list } of lists) {
        const found = list?.[index];
        row[name] = found ? openText(cell, found.trim()) : (before[index]?.[name] ?? this.#missing(cell, defaultText(cell)));
        if (found === '') this.#empty.push({ row, name, cell });
      }
      return row;
    });
  }
}

/** Opens a query. Nothing in it can throw; what is not understood is told in `notices`. */
export function fromLink({ inputs, version, changes = [] }: Linked, query: string): Opened {
  if (query.length > longestQuery) {
    const faults = ['This link is too long to be one of ours. The example is shown instead.'];
    return { form: { this: startTexts(inputs), that: null }, notices: faults, faults, unknown: [], named: new Set() };
  }
  const written = [...new URLSearchParams(query)];
  const pairs = new Map(written);
  const edition = Number(pairs.get('v') ?? version);
  const isKnown = Number.isInteger(edition) && edition >= 1;
  pairs.delete('v');
  const isComparing = pairs.delete('that') || [...pairs.keys()].some((name) => name.startsWith('that.'));
  const reader = new SideReader(pairs, isKnown ? edition : version);
  const first = reader.read(inputs, null);
  const that = isComparing ? reader.read(inputs, first) : null;
  const ofEdition = isKnown && edition > version ? ['This link comes from a newer edition. What this one knows of it is shown; look it over.'] : [];
  for (const change of changes) if (isKnown && edition < change.version) ofEdition.push(`Since this link was written: ${change.say}`);
  const unknown = [...pairs.keys()];
  const twice = written.map(([name]) => name).filter((name, at, names) => names.indexOf(name) < at);
  const faults = [...reader.faults];
  if (twice.length > 0) faults.push(`Given more than once, only the last is used: ${listed(twice)}.`);
  if (unknown.length > 0) faults.push(`Not known here, left out: ${listed(unknown)}.`);
  return {
    form: { this: first, that: that && withPlaceOf(inputs, first, that) },
    notices: [...ofEdition, ...faults],
    faults,
    unknown,
    named: reader.named,
  };
}
