import * as v from 'valibot';
import { type Place, placeSchema } from '../model/place.ts';

// A place is changed as the plain data that it is, and is a place only once its schema has said so. What did not change stays the same object, so that what draws it can tell.

export type Data = string | number | boolean | null | undefined | readonly Data[] | { readonly [key: string]: Data };
export type Fields = Readonly<Record<string, Data>>;
export const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null && !Array.isArray(value);
export const isList = (value: unknown): value is readonly Data[] => Array.isArray(value);

const entries: Readonly<Record<string, v.GenericSchema>> = placeSchema.entries;
/**
 * Is it a place, as the one was of which it came? What is still the same object has been looked at, and of a list of things that did not grow only what is
 * new in it is: a whole place takes longer than all that a key draws.
 */
const isPlaceAfter =
  (before: Place) =>
  (value: unknown): value is Place => {
    const was: unknown = before;
    if (!(isFields(value) && isFields(was))) return false;
    return Object.keys({ ...was, ...value }).every((key) => {
      const [now, then, schema] = [value[key], was[key], entries[key]];
      if (now === then) return true;
      const isShorter = isList(now) && isList(then) && now.length <= then.length && now.every(isFields);
      return schema !== undefined && v.is(schema, isShorter ? now.filter((each) => !then.includes(each)) : now);
    });
  };
const isItem =
  (id: string) =>
  (each: Data): boolean =>
    isFields(each) && each['id'] === id;

/** What stands at a path; in a list of things with ids a step is the id. */
export const dataAt = (value: unknown, path: readonly string[]): Data =>
  path.reduce<Data>(
    (here, step) => {
      if (isList(here)) return here.find(isItem(step));
      return isFields(here) && Object.hasOwn(here, step) ? here[step] : undefined;
    },
    isFields(value) || isList(value) ? value : undefined,
  );

/** Fields that must be there once something beside them is. */
const beside: Readonly<Record<string, Fields>> = { hay: { stacks: [] } };

function withAt(value: Data, [step, ...rest]: readonly string[], to: Data): Data {
  if (step === undefined) return to;
  if (isList(value)) return value.map((each) => (isItem(step)(each) ? withAt(each, rest, to) : each));
  const before: Fields = isFields(value) ? value : {};
  const next = withAt(before[step] ?? beside[step], rest, to);
  // Nothing in it any more: as if nobody had begun with it.
  if (next === undefined || (isFields(next) && Object.keys(next).length === 0)) {
    const { [step]: _, ...left } = before;
    return left;
  }
  return { ...before, [step]: next };
}

export type Changes = readonly { readonly path: readonly string[]; readonly to: Data }[];
/** Plain data with some of it otherwise. */
export const dataWith = (value: unknown, changes: Changes): Data =>
  changes.reduce<Data>((now, { path, to }) => withAt(now, path, to), isFields(value) ? value : {});

/** A record with some of it otherwise. */
export function changed<T>(isIt: (value: unknown) => value is T, record: T, changes: Changes): T {
  const next: unknown = dataWith(record, changes);
  if (!isIt(next)) throw new TypeError(`no such record any more after ${changes.map(({ path }) => path.join('/')).join(', ')}`);
  return next;
}
export const withChanges = (place: Place, changes: Changes): Place => changed(isPlaceAfter(place), place, changes);
/** Things of a list as the plain data that a record is made of. */
export function listed(items: readonly object[]): readonly Data[] {
  const data: readonly Data[] = JSON.parse(JSON.stringify(items));
  return data;
}
/** A list with a thing in place of the one of that id, or without it. */
export function withItem(list: readonly Data[], id: string, item: Data): readonly Data[] {
  const isIt = isItem(id);
  if (item === undefined) return list.filter((each) => !isIt(each));
  return list.some(isIt) ? list.map((each) => (isIt(each) ? item : each)) : [...list, item];
}
