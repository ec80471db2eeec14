// The office file while somebody works on it: plain data, which may hold texts where numbers belong until they are mended.
import { type Data, type Fields, isFields, isList } from '../place/ui/edit.ts';
import type { OfficeField } from './model/field.ts';
import { type OfficeSection, officeSections } from './model/fields.ts';
import type { Office } from './model/office.ts';
import { placedAt } from './model/placedAt.ts';
import { checkOffice, type Wrong } from './model/sayWrong.ts';

export const nearAtFirst = 'Your own doctor, a neighbor, your pastor, the extension office.';
export const blankDraft = (today: string): Data => ({
  file: 'holdwater-office',
  v: 1,
  head: { name: '', valuesDay: today },
  values: { talkToSomeone: { lines: [], near: nearAtFirst } },
});
/** With all values of a shipped kind of country, their sources told in words. */
export function draftFrom(slug: string, country: unknown, wordsOf: (source: string) => string, today: string): Data {
  const data: Data = JSON.parse(JSON.stringify(country));
  const named = (value: Data, key = ''): Data => {
    if (typeof value === 'string') return key === 'source' || key === 'also' ? wordsOf(value) : value;
    if (isList(value)) return value.map((each) => named(each, key));
    return isFields(value) ? Object.fromEntries(Object.entries(value).map(([each, inside]) => [each, named(inside, each)])) : value;
  };
  const values = named(data);
  if (!isFields(values)) return blankDraft(today);
  const { name: _, where: __, ...sections } = values;
  return { file: 'holdwater-office', v: 1, head: { name: '', valuesDay: today, startedFrom: slug }, values: sections };
}

const steps = (path: string): readonly string[] => path.split('.');
export const valueAt = (data: Data, path: string): Data =>
  steps(path).reduce<Data>(
    (here, step) => (isList(here) ? here[Number(step)] : isFields(here) && Object.hasOwn(here, step) ? here[step] : undefined),
    data,
  );

const isIndex = (step: string | undefined): boolean => step !== undefined && /^\d+$/.test(step);
export function withValue(data: Data, path: string | readonly string[], to: Data): Data {
  const [step, ...rest] = typeof path === 'string' ? steps(path) : path;
  if (step === undefined) return to;
  if (isList(data) || (data === undefined && isIndex(step))) {
    const list = isList(data) ? [...data] : [];
    while (list.length <= Number(step)) list.push(undefined);
    return list.with(Number(step), withValue(list[Number(step)], rest, to));
  }
  const fields = isFields(data) ? data : {};
  return { ...fields, [step]: withValue(fields[step], rest, to) };
}

/** Where the record stands whose source is told for a field, and of which its day is told. */
const recordAt = (path: string): string | undefined => {
  const placed = placedAt(path);
  return placed && (placed.row === undefined ? placed.section.at : `${placed.section.at}.${placed.row}`);
};
/** Where it is told when the value at a path was seen; none where no day is asked. */
export function seenBeside(path: string): string | undefined {
  const placed = placedAt(path);
  return placed?.section.fields.some(({ at }) => at === 'seen') ? `${recordAt(path)}.seen` : undefined;
}
/**
 * With what was typed into a field. Where in a source the values beside it stand, and what else says so, was told of what stood there before, and goes; so
 * does the day on which it was seen, once a value is another. All of it comes back when the record says again what it `was`.
 */
export function withTyped(data: Data, path: string, to: Data, was: Data = undefined): Data {
  const record = recordAt(path);
  const changed = withValue(data, path, to);
  if (record === undefined || valueAt(data, path) === to) return changed;
  const cited = valueAt(changed, record);
  if (!isFields(cited)) return changed;
  const { at: _, also: __, ...rest } = cited;
  const { seen: ___, ...undated } = rest;
  const kind = placedAt(path)?.field?.kind;
  const next = to !== undefined && (kind === 'number' || kind === 'choice') ? undated : rest;
  const first = valueAt(was, record);
  const again = { ...goesWithValues(first), ...next };
  return withValue(changed, record, isFields(first) && saysOf(again, record) === saysOf(first, record) ? again : next);
}
const goesWithValues = (record: Data): Fields =>
  isFields(record) ? Object.fromEntries(['at', 'also', 'seen'].flatMap((key) => (record[key] === undefined ? [] : [[key, record[key]]]))) : {};
/** All that a record says but where in its source. */
const saysOf = (record: Fields, path: string): string =>
  JSON.stringify(Object.entries(tidied({ ...record, at: undefined, also: undefined }, false, path) ?? {}).toSorted());

export const textOf = (value: Data): string => (typeof value === 'string' || typeof value === 'number' ? String(value) : '');
/** What a typed text is in the file: a number where it reads as one, else the text itself, so that it can be told what is wrong with it. */
export function readTyped({ kind }: OfficeField, text: string): Data {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  if (kind !== 'number' && kind !== 'months') return trimmed;
  const bare = trimmed.replace(/^\$\s*/, '');
  // Commas between thousands, and nothing that may be a decimal comma: `0,180`.
  const plain = /^-?[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/.test(bare) ? bare.replaceAll(',', '') : bare;
  return /^-?(?:\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : trimmed;
}

/** Fields that a file has as null where nobody knows them. */
const nullable =
  /^values\.(?:hayPrice\.(?:low|high)UsdPerTon|yields\.(?:poor|normal|good)LbPerAc|restDays\.(?:fast|slow)Days|erosivity\.(?:low|high)|waterUse\.inPerDay\.\d+)$/;
const listsOf: Readonly<Record<string, readonly string[]>> = { 'values.growthCurve': ['curves', 'markers'], 'values.talkToSomeone': ['lines'] };
const isRows = (at: string): boolean => officeSections.some((section) => section.rows && section.at === at);
/** What a kind of country says besides, and no form shows: it goes with the last value that it stood beside. */
const besides = new Set(['note', 'notes']);
const always = new Set(['head', 'values', 'values.talkToSomeone']);
const nullsOf = (at: string): readonly string[] =>
  officeSections.flatMap((section) =>
    section.at === at ? section.fields.map((each) => each.at).filter((key) => nullable.test(`${at}.${key}`)) : [],
  );

/** As the file has it: what is empty is left out, or null where the file says so. Empty rows go on saving; until then they keep the numbers of those behind them. */
function tidied(data: Data, isForFile: boolean, at = ''): Data {
  const inside = (step: string | number, value: Data): Data => tidied(value, isForFile, at === '' ? String(step) : `${at}.${step}`);
  if (isList(data)) {
    const items = data.map((each, index) => inside(index, each));
    const kept = isRows(at) && isForFile ? items.filter((each) => each !== undefined) : items;
    if (isRows(at)) return kept.length === 0 ? undefined : kept.map((each) => each ?? {});
    return kept.every((each) => each === undefined) ? undefined : kept.map((each) => each ?? null);
  }
  if (!isFields(data)) return data === '' || data === null ? undefined : data;
  const kept = Object.fromEntries(
    Object.entries(data).flatMap(([key, value]): readonly (readonly [string, Data])[] => {
      const tidy = inside(key, value);
      return tidy === undefined ? [] : [[key, tidy]];
    }),
  );
  if (Object.keys(kept).every((key) => besides.has(key)) && !always.has(at)) return undefined;
  const nulls = Object.fromEntries(nullsOf(at).map((key) => [key, null]));
  const lists = Object.fromEntries((listsOf[at] ?? []).map((key) => [key, []]));
  return { ...nulls, ...lists, ...kept };
}
const isEmpty = (value: Data): boolean => tidied(value, true) === undefined;

/** What is wrong, each at its field. Nothing is said of a row in which nothing stands yet. */
export function wrongsIn(data: Data): readonly Wrong[] {
  const found = wrongsOf(data);
  // Rules about several values are looked at once each of them can be read: a day that is missing must hide none of them.
  const dated = found.filter(({ at }) => at.endsWith('.seen')).reduce<Data>((now, { at }) => withValue(now, at, '2000'), data);
  const hidden = dated === data ? [] : wrongsOf(dated).filter(({ at, say }) => !found.some((each) => each.at === at && each.say === say));
  const emptyRows = officeSections.flatMap(({ at, rows }) => {
    const list = rows ? valueAt(data, at) : undefined;
    return isList(list) ? list.flatMap((each, index) => (isEmpty(each) ? [`${at}.${index}`] : [])) : [];
  });
  return [...found, ...hidden].filter(({ at }) => !emptyRows.some((row) => at === row || at.startsWith(`${row}.`)));
}
const wrongsOf = (data: Data): readonly Wrong[] => {
  const checked = checkOffice(tidied(data, false));
  return 'office' in checked ? [] : checked.wrongs;
};
/** The office that can be saved; nothing while something is wrong. */
export function officeOf(data: Data): Office | undefined {
  const checked = checkOffice(tidied(data, true));
  return 'office' in checked ? checked.office : undefined;
}
/** How much of a section is filled in. */
export const isGiven = (data: Data, { at }: OfficeSection): boolean => !isEmpty(valueAt(data, at));
/** What a section says, in the order of its fields. */
function cellsOf(data: Data, { at, rows, fields }: OfficeSection): string {
  const cells = (record: Data): readonly Data[] => fields.map((each) => tidied(valueAt(record, each.at), true) ?? null);
  const record = valueAt(data, at);
  return JSON.stringify(rows ? (isList(record) ? record : []).filter((each) => !isEmpty(each)).map(cells) : cells(record));
}
/** Titles of the sections that say something else in the one than in the other. */
export const differing = (one: Data, other: Data): readonly string[] =>
  officeSections.filter((section) => cellsOf(one, section) !== cellsOf(other, section)).map(({ title }) => title);
