import { type Clash, longestWords, mostPast } from '../model/parts.ts';
import { type Change, changesBetween, type Json, join } from './revisions.ts';

/** What every kept thing has. Clocks tell people when; which came of which is told by `rev` and `past` alone. */
export interface Kept {
  readonly id: string;
  readonly v: number;
  readonly rev: number;
  readonly past: readonly string[];
  readonly changedBy: string;
  readonly changedAt: string;
  readonly clash?: readonly Clash[] | undefined;
}
/** Who writes, and when by their clock. */
export interface Writer {
  readonly by: string;
  readonly now: () => Date;
  /** Six letters or figures, never the same twice. */
  readonly mark: () => string;
}
/** The fields that a person fills in: all but the record's own. */
export function contentOf(record: Kept): Json {
  const { rev, past, changedBy, changedAt, clash, ...content } = record;
  const json: Json = JSON.parse(JSON.stringify(content));
  return json;
}
export const isSameContent = (one: Kept, other: Kept): boolean => changesBetween(contentOf(one), contentOf(other)).length === 0;

const clashOf = ({ path, to }: Change, by: string, at: string): Clash => ({
  path: path.join('/').slice(0, 300),
  other: to === undefined ? null : JSON.stringify(to).slice(0, longestWords),
  otherBy: by,
  otherAt: at,
});

/** A record's next revision: its content, with what could not be joined beside it. As plain data: whoever keeps it reads it back first. */
export function nextRevision(
  stored: Pick<Kept, 'rev' | 'past' | 'clash'>,
  content: Json,
  clashes: readonly Change[],
  { by, now, mark }: Writer,
  told: { readonly by: string; readonly at: string } = { by, at: now().toISOString() },
): Json {
  const rev = stored.rev + 1;
  const clash = [...(stored.clash ?? []), ...clashes.map((each) => clashOf(each, told.by, told.at))];
  const fields = typeof content === 'object' && content !== null && !Array.isArray(content) ? content : {};
  return {
    ...fields,
    rev,
    past: [...stored.past, `${rev}-${mark()}`].slice(-mostPast),
    changedBy: by,
    changedAt: now().toISOString(),
    ...(clash.length === 0 ? {} : { clash: clash.map((each) => ({ ...each })) }),
  };
}

/** How a copy from elsewhere stands to the one that is here. */
export type Standing = 'new' | 'same' | 'later' | 'earlier' | 'both';
export function standingOf(here: Kept | undefined, there: Kept): Standing {
  if (here === undefined) return 'new';
  if (isSameContent(here, there)) return 'same';
  const [ours, theirs] = [here.past.at(-1), there.past.at(-1)];
  if (ours !== undefined && there.past.includes(ours)) return 'later';
  return theirs !== undefined && here.past.includes(theirs) ? 'earlier' : 'both';
}

/** Two copies that came of one and went apart: what only one has is there, and where they differ ours stands and theirs is told beside it. */
export function joinCopies(here: Kept, there: Kept, writer: Writer): Json {
  const changes = changesBetween(contentOf(here), contentOf(there)).filter(({ to }) => to !== undefined);
  // A field that we have otherwise is no longer what it was when they began: so none of ours gives way.
  const { value } = join(
    contentOf(here),
    changes.filter(({ from }) => from === undefined),
  );
  const clashes = changes.filter(({ from }) => from !== undefined);
  return nextRevision(here, value, clashes, writer, { by: there.changedBy, at: there.changedAt });
}
