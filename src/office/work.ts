// Work on the forms of an office, as one browser keeps it: what stands in them, what stood there before, and whose values it has gone beyond.
import { type Data, isFields, isList } from '../place/ui/edit.ts';
import { officeOf } from './draft.ts';

export interface Work {
  readonly data: Data;
  /** Mark of what it was begun with; none where an older copy of these pages kept it. */
  readonly begunAs?: string;
  /** Marks of offices that this work goes beyond: the copy's when it was begun, those that somebody went on over, and what was saved from it. */
  readonly known: readonly string[];
}
/** The work in the forms, and the one that stood there before it: one step back. */
export interface Works {
  readonly now?: Work;
  readonly before?: Work;
}

/** Tells whether two texts are the same, in eight letters: FNV-1a of 32 bits (Fowler, Noll and Vo; draft-eastlake-fnv). */
export function markOf(text: string): string {
  const hash = new TextEncoder().encode(text).reduce((so, byte) => Math.imul(so ^ byte, 0x01000193), 0x811c9dc5);
  return (hash >>> 0).toString(16).padStart(8, '0');
}
const marked = (data: Data): string => markOf(JSON.stringify(data));
/** Of offices that were saved one after another, the last few are enough. */
const mostKnown = 4;
const knowing = (work: Work, marks: readonly string[]): Work => ({
  ...work,
  known: [...work.known.filter((each) => !marks.includes(each)), ...marks].slice(-mostKnown),
});

/** Somebody has changed it since it was begun. */
const isTouched = ({ data, begunAs }: Work): boolean => begunAs !== marked(data);
/**
 * Other values in the forms. The work that stood there stays within reach; one that nobody has touched yet takes the place of no other.
 * `here` is the office of the copy.
 */
export function begun({ now, before }: Works, data: Data, here: Data): Works {
  const next = { data, begunAs: marked(data), known: here === undefined ? [] : [marked(here)] };
  const kept = now && (isTouched(now) || before === undefined) ? now : before;
  return { now: next, ...(kept && { before: kept }) };
}
/** The two change places. */
export const swapped = ({ now, before }: Works): Works => ({ ...(before && { now: before }), ...(now && { before: now }) });
export const withData = (works: Works, to: (data: Data) => Data): Works =>
  works.now ? { ...works, now: { ...works.now, data: to(works.now.data) } } : works;

/** Does the copy hold another office than this work has gone beyond? Not where the forms hold the very same. */
export function isOther({ data, known }: Work, here: Data): boolean {
  if (here === undefined || known.includes(marked(here))) return false;
  const own = officeOf(data);
  return own === undefined || JSON.stringify(own) !== JSON.stringify(here);
}
/** Somebody goes on with what stands in the forms, whatever the copy holds. */
export const goneOn = (works: Works, here: Data): Works => (works.now ? { ...works, now: knowing(works.now, [marked(here)]) } : works);
/** Saved: the copy may hold this from now on, and until then what it holds. */
export function saved(works: Works, office: Data, here: Data): Works {
  if (!works.now) return works;
  const held = here !== undefined && works.now.known.includes(marked(here)) ? [marked(here)] : [];
  return { ...works, now: knowing(works.now, [...held, marked(office)]) };
}

/** Where texts are kept by name. `keep` says whether it could. */
export interface Shelf {
  readonly kept: (key: string) => string | null;
  readonly keep: (key: string, text: string) => boolean;
}
export interface KeptWorks {
  readonly read: () => Works;
  /** Whether all of it is kept. Work that is to come back is kept before anything is written over it. */
  readonly write: (works: Works) => boolean;
}
/** The work itself lies there by itself, as it always did, so that older copies of these pages find it. */
const keys = { now: 'holdwater-office-draft', begun: 'holdwater-office-begun', before: 'holdwater-office-before' };
export function keptWorks({ kept, keep }: Shelf): KeptWorks {
  const at = (key: string): Data => {
    try {
      return JSON.parse(kept(key) ?? 'null');
    } catch {
      return undefined;
    }
  };
  const workOf = (data: Data, told: Data): Work | undefined => {
    if (!isFields(data)) return undefined;
    const { begunAs, known } = isFields(told) ? told : {};
    return { data, ...(typeof begunAs === 'string' && { begunAs }), known: isList(known) ? known.filter((each) => typeof each === 'string') : [] };
  };
  const put = (key: string, data: unknown): boolean => {
    const text = JSON.stringify(data);
    return kept(key) === text || keep(key, text);
  };
  return {
    read: () => {
      const earlier = at(keys.before);
      const now = workOf(at(keys.now), at(keys.begun));
      const before = isFields(earlier) ? workOf(earlier['data'], earlier) : undefined;
      return { ...(now && { now }), ...(before && { before }) };
    },
    write: ({ now, before }) => {
      if (before && !put(keys.before, before)) return false;
      if (!now) return true;
      const { data, ...told } = now;
      return put(keys.now, data) && put(keys.begun, told);
    },
  };
}
