import { type Backend, memoryBackend } from '../store/backend.ts';
import { idbBackend } from '../store/idbBackend.ts';

/** A calculation as it was left, with what its link must not carry. It stays on the device. */
export interface Recent {
  readonly id: string;
  readonly slug: string;
  readonly title: string;
  readonly link: string;
  /** When it was last changed, by this device. */
  readonly at: string;
  /** `Low bench, Two Bench place`; nothing where nobody said. */
  readonly whose: string;
  /** What it answered, in a line. */
  readonly says: string;
  /** As `whose.ts` keeps them: whose figures these are. */
  readonly marks: string;
  /** The pastures that were chosen above it, and of which place. */
  readonly chosen: readonly string[];
  readonly placeId: string | undefined;
}
export const mostRecents = 30;

const isRecent = (value: unknown): value is Recent => {
  if (typeof value !== 'object' || value === null) return false;
  const fields = new Map(Object.entries(value));
  const chosen: unknown = fields.get('chosen');
  return (
    ['id', 'slug', 'title', 'link', 'at', 'whose', 'says', 'marks'].every((key) => typeof fields.get(key) === 'string') &&
    /^[a-z-]+$/.test(String(fields.get('slug'))) &&
    Array.isArray(chosen) &&
    chosen.every((each) => typeof each === 'string')
  );
};

const patienceMs = 2000;
const inWindow = memoryBackend();
/** The browser's store, for one act and closed after it, so that no form stands in the way of another copy; else this window's memory. */
async function withBackend<T>(act: (backend: Backend) => Promise<T>): Promise<T> {
  let isLate = false;
  const opened = idbBackend(() => undefined).then((backend) => {
    if (isLate) backend.close();
    return backend;
  });
  const late = new Promise<undefined>((done) => setTimeout(() => done(undefined), patienceMs));
  const backend = await Promise.race([opened, late]).catch(() => undefined);
  isLate = true;
  if (backend === undefined) return act(inWindow);
  try {
    return await act(backend);
  } catch {
    return act(inWindow);
  } finally {
    backend.close();
  }
}

/** The newest first. What cannot be read is passed over. */
export const sorted = (raws: readonly unknown[]): readonly Recent[] =>
  raws.filter(isRecent).toSorted((one, other) => (one.at < other.at ? 1 : one.at > other.at ? -1 : 0));

export const readRecents = (): Promise<readonly Recent[]> => withBackend(async (backend) => sorted(await backend.all('recent')));
/** Keeps one, and lets go of the oldest past thirty. */
export const keepRecent = (recent: Recent): Promise<void> =>
  withBackend(async (backend) => {
    const others = sorted(await backend.all('recent')).filter(({ id }) => id !== recent.id);
    const gone = others.slice(mostRecents - 1);
    await backend.change([], () => [{ store: 'recent', put: recent }, ...gone.map(({ id }) => ({ store: 'recent', remove: id }) as const)]);
  });
export const forgetRecents = (): Promise<void> =>
  withBackend(async (backend) => {
    const all = sorted(await backend.all('recent'));
    await backend.change([], () => all.map(({ id }) => ({ store: 'recent', remove: id }) as const));
  });
