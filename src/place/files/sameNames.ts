import type { Place } from '../model/place.ts';

interface Part {
  readonly id: string;
  readonly name: string | undefined;
  readonly paddocks?: readonly { readonly id: string; readonly name: string }[];
}
/** Parts of one place by its lists. A herd without a name goes by its kind; of stacks without one nobody can tell which is which. */
const listsOf = (place: Place): readonly (readonly Part[])[] => [
  place.pastures,
  place.soils,
  place.water,
  place.herd.map(({ id, name, kind }) => ({ id, name: name ?? kind })),
  (place.hay?.stacks ?? []).map(({ id, name }) => ({ id, name })),
];

interface SameNames {
  /** Of each part of the coming place that has a namesake here, the id that it has here. */
  readonly ids: ReadonlyMap<string, string>;
  /** What they are called here. */
  readonly names: readonly string[];
}
const calledAlike = (one: string | undefined, other: string | undefined): boolean =>
  one !== undefined && other !== undefined && one.trim().toLowerCase() === other.trim().toLowerCase();

/** Parts of two places that have one name and two ids: joined by ids alone, each would stand twice, with its acres and its head. */
export function sameNames(here: Place, there: Place): SameNames {
  const ids = new Map<string, string>();
  const names: string[] = [];
  const pair = (ours: readonly Part[], theirs: readonly Part[], isNamed: boolean): void => {
    const free = ours.filter(({ id }) => !theirs.some((each) => each.id === id));
    for (const part of theirs.filter(({ id }) => !ours.some((each) => each.id === id))) {
      const index = free.findIndex(({ name }) => calledAlike(name, part.name));
      const [mine] = index < 0 ? [] : free.splice(index, 1);
      if (mine?.name === undefined) continue;
      ids.set(part.id, mine.id);
      if (isNamed) names.push(mine.name);
    }
  };
  const theirs = listsOf(there);
  for (const [index, list] of listsOf(here).entries()) pair(list, theirs[index] ?? [], true);
  for (const { id, paddocks } of there.pastures) {
    const mine = here.pastures.find((each) => each.id === (ids.get(id) ?? id));
    if (mine) pair(mine.paddocks, paddocks, false);
  }
  return { ids, names };
}

/** The same record with other ids where it names one of those: its own parts, and what it points to. Plain data alone, no pictures. */
export function withIds<T>(record: T, ids: ReadonlyMap<string, string>): T {
  const renamed = (value: unknown): unknown => (typeof value === 'string' ? (ids.get(value) ?? value) : value);
  return JSON.parse(JSON.stringify(record), (key, value: unknown) => {
    if (key === 'id' || key.endsWith('Id')) return renamed(value);
    return key.endsWith('Ids') && Array.isArray(value) ? value.map(renamed) : value;
  });
}
