import type { Clash } from '../model/parts.ts';
import type { Write } from './backend.ts';
import type { Entry } from './journal.ts';
import type { Kind } from './kind.ts';
import { contentOf, joinCopies, type Kept, nextRevision, standingOf, type Writer } from './records.ts';
import { type Change, changesBetween, isSame, type Json, join } from './revisions.ts';

/** A record as it was read, and as it is to be; nothing before a new one, or one from a file. */
export interface Edit<T extends Kept> {
  readonly before: T | null;
  readonly after: T;
}
export type Saved<T extends Kept> =
  /** As it stands now, which may hold what others changed meanwhile. */
  | { readonly is: 'saved'; readonly value: T; readonly clashes: number }
  /** No room, or no store any more: it is in this window, and in the journal where that can be. */
  | { readonly is: 'held'; readonly value: T }
  /** Taken away by another window. It does not come back by itself. */
  | { readonly is: 'gone' }
  /** What is stored was made by a newer copy, or cannot be read: neither is written over. */
  | { readonly is: 'newer' }
  | { readonly is: 'damaged'; readonly why: string };

interface Decided<T extends Kept> {
  readonly saved: Saved<T>;
  readonly writes: readonly Write[];
}

function written<T extends Kept>(kind: Kind<T>, json: Json, clashes: number): Decided<T> {
  const read = kind.read(json);
  if (read.is !== 'read') throw new TypeError(`a record that is written must read back${read.is === 'damaged' ? `: ${read.why}` : ''}`);
  return { saved: { is: 'saved', value: read.value, clashes }, writes: [{ store: kind.store, put: read.value }] };
}
const isClash = (one: Clash, other: Clash): boolean => one.path === other.path && one.other === other.other;
/** Clashes that somebody has picked from are gone; what others have added since stays. */
const openClashes = (stored: Kept, { before, after }: Edit<Kept>): readonly Clash[] => {
  const picked = (before?.clash ?? []).filter((each) => after.clash?.some((left) => isClash(left, each)) !== true);
  return (stored.clash ?? []).filter((each) => !picked.some((gone) => isClash(gone, each)));
};

/** What becomes of one edit, told from what the store holds at that moment. */
export function decideEdit<T extends Kept>(kind: Kind<T>, edit: Edit<T>, raw: unknown, writer: Writer): Decided<T> {
  const { before, after } = edit;
  if (raw === undefined) {
    if (before !== null) return { saved: { is: 'gone' }, writes: [] };
    return { saved: { is: 'saved', value: after, clashes: 0 }, writes: [{ store: kind.store, put: after }] };
  }
  const read = kind.read(raw);
  if (read.is === 'newer') return { saved: { is: 'newer' }, writes: [] };
  if (read.is === 'damaged') return { saved: read, writes: [] };
  const stored = read.value;
  if (before === null) {
    // A copy from elsewhere: one that came of ours takes its place, one that ours came of tells nothing new.
    const standing = standingOf(stored, after);
    if (standing === 'same' || standing === 'earlier') return { saved: { is: 'saved', value: stored, clashes: 0 }, writes: [] };
    if (standing === 'later') return { saved: { is: 'saved', value: after, clashes: 0 }, writes: [{ store: kind.store, put: after }] };
    const joined = written(kind, joinCopies(stored, after, writer), 0);
    const clashes = joined.saved.is === 'saved' ? (joined.saved.value.clash?.length ?? 0) - (stored.clash?.length ?? 0) : 0;
    return { ...joined, saved: joined.saved.is === 'saved' ? { ...joined.saved, clashes } : joined.saved };
  }
  const { value, clashes } = join(contentOf(stored), changesBetween(contentOf(before), contentOf(after)));
  return written(kind, nextRevision({ ...stored, clash: [...openClashes(stored, edit)] }, value, clashes, writer), clashes.length);
}

/** What becomes of a change that a window left in its journal. */
export function decideEntry(kind: Kind<Kept>, { rev, changes, by, at }: Entry, raw: unknown, writer: Writer): readonly Write[] {
  const [first] = changes;
  if (raw === undefined) {
    const made = rev === 0 && first?.path.length === 0 ? kind.read(first.to) : undefined;
    return made?.is === 'read' ? [{ store: kind.store, put: made.value }] : [];
  }
  const read = kind.read(raw);
  if (read.is !== 'read' || rev === 0) return [];
  const before = contentOf(read.value);
  const { value, clashes } = join(before, changes);
  // Already in, by the write that was thought lost.
  if (isSame(before, value) && clashes.length === 0) return [];
  return written(kind, nextRevision(read.value, value, clashes, writer, { by, at }), clashes.length).writes;
}

/** For the journal: what an edit changes. */
export const changesOf = ({ before, after }: Edit<Kept>): readonly Change[] =>
  before === null ? [{ path: [], to: JSON.parse(JSON.stringify(after)) }] : changesBetween(contentOf(before), contentOf(after));
