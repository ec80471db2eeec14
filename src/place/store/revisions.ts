// Changes told field by field, so that two windows, or two devices, that changed different fields lose nothing, and what both changed is shown to somebody.

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** One field's change. In a list of things with ids a step of the path is the id. */
export interface Change {
  readonly path: readonly string[];
  /** Nothing where the field was not there before, or is taken away. */
  readonly from?: Json;
  readonly to?: Json;
}

type Fields = Readonly<Record<string, Json>>;
const isFields = (value: Json | undefined): value is Fields => typeof value === 'object' && value !== null && !Array.isArray(value);
type Item = Fields & { readonly id: string };
const isItem = (value: Json): value is Item => isFields(value) && typeof value['id'] === 'string';
const isItems = (value: Json | undefined): value is readonly Item[] => Array.isArray(value) && value.every(isItem);

/** Whether two values hold the same, in whatever order their fields stand. */
export function isSame(one: Json | undefined, other: Json | undefined): boolean {
  if (one === other) return true;
  if (Array.isArray(one) && Array.isArray(other)) return one.length === other.length && one.every((each, index) => isSame(each, other[index]));
  if (!isFields(one) || !isFields(other)) return false;
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => Object.hasOwn(other, key) && isSame(one[key], other[key]));
}

/** A thing's fields, or a list's things by id: what can be changed apart. */
const partsOf = (value: Json | undefined): ReadonlyMap<string, Json> | undefined => {
  if (isItems(value)) return new Map(value.map((each) => [each.id, each]));
  return isFields(value) ? new Map(Object.entries(value)) : undefined;
};
const isAlike = (one: Json | undefined, other: Json | undefined): boolean => isItems(one) === isItems(other) && isFields(one) === isFields(other);
const changed = (path: readonly string[], from: Json | undefined, to: Json | undefined): Change => ({
  path,
  ...(from === undefined ? {} : { from }),
  ...(to === undefined ? {} : { to }),
});

/** What was done to come from one to the other. The order of a list is no change. */
export function changesBetween(before: Json | undefined, after: Json | undefined, path: readonly string[] = []): readonly Change[] {
  if (isSame(before, after)) return [];
  const [old, now] = [partsOf(before), partsOf(after)];
  if (old === undefined || now === undefined || !isAlike(before, after)) return [changed(path, before, after)];
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((key) => changesBetween(old.get(key), now.get(key), [...path, key]));
}

const without = (record: Fields, key: string): Fields => Object.fromEntries(Object.entries(record).filter(([each]) => each !== key));
/** The same with one field changed; undefined where the way to it is gone. */
function withAt(value: Json | undefined, [step, ...rest]: readonly string[], to: Json | undefined): Json | undefined {
  if (step === undefined) return to;
  const inner = partsOf(value)?.get(step);
  if (rest.length > 0 && inner === undefined) return undefined;
  const next = withAt(inner, rest, to);
  if (next === undefined && rest.length > 0) return undefined;
  if (isItems(value)) {
    if (next === undefined) return value.filter(({ id }) => id !== step);
    return inner === undefined ? [...value, next] : value.map((each) => (each.id === step ? next : each));
  }
  if (!isFields(value)) return undefined;
  return next === undefined ? without(value, step) : { ...value, [step]: next };
}
const valueAt = (value: Json | undefined, path: readonly string[]): Json | undefined =>
  path.reduce<Json | undefined>((here, step) => partsOf(here)?.get(step), value);

export interface Joined {
  readonly value: Json;
  /** Changes of fields that somebody else changed otherwise meanwhile. None of them is in the value. */
  readonly clashes: readonly Change[];
}
/** Changes made on another state of it. A field that stands as it stood takes the change; one that does not keeps what it has. */
export function join(stored: Json, changes: readonly Change[]): Joined {
  const clashes: Change[] = [];
  let value = stored;
  for (const change of changes) {
    const here = valueAt(value, change.path);
    if (isSame(here, change.to)) continue;
    const next = isSame(here, change.from) ? withAt(value, change.path, change.to) : undefined;
    if (next === undefined) clashes.push(change);
    else value = next;
  }
  return { value, clashes };
}
