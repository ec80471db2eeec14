import { href } from '../href.ts';

/** What is kept of a page for its line among the results; see the layout, which writes it. */
export interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: { readonly title?: string; readonly kind?: string; readonly lead?: string; readonly question?: string };
  readonly sub_results: readonly { readonly title: string; readonly url: string }[];
}
export interface Hit {
  readonly id: string;
  readonly score: number;
  readonly data: () => Promise<Found>;
}
interface Index {
  readonly options: (options: { readonly baseUrl: string; readonly noWorker: boolean }) => Promise<void>;
  readonly search: (words: string, options?: { readonly filters: { readonly kind: string } }) => Promise<{ readonly results: readonly Hit[] }>;
}

/** A calculator goes first when it fits at least this well, as a share of the best score. */
const fitShare = 0.5;

let opened: Promise<Index> | undefined;

/** Opened at the first letter, not before: the index is the heaviest thing on the site. */
const openIndex = (): Promise<Index> => {
  const open = async (): Promise<Index> => {
    const index: Index = await import(/* @vite-ignore */ href('/pagefind/pagefind.js'));
    // A search takes a few milliseconds; its own thread would cost another 12 kB before the first result.
    await index.options({ baseUrl: href('/'), noWorker: true });
    return index;
  };
  // A failure is not kept: with the signal back, the next letter tries again.
  opened ??= open().catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  return opened;
};

const idsOf = async (index: Index, words: string, kind: string): Promise<ReadonlySet<string>> =>
  new Set((await index.search(words, { filters: { kind } })).results.map(({ id }) => id));

/** Pages that match, best first; but calculators that fit before all others, since people come for a number, and the list of sources last. */
export async function searchPages(words: string): Promise<readonly Hit[]> {
  const index = await openIndex();
  const { results } = await index.search(words);
  const [calculators, sources] = await Promise.all([idsOf(index, words, 'calculator'), idsOf(index, words, 'source')]);
  const best = Math.max(0, ...results.map(({ score }) => score));
  const rank = ({ id, score }: Hit): number => (calculators.has(id) && score >= fitShare * best ? 0 : sources.has(id) ? 2 : 1);
  return results.toSorted((one, other) => rank(one) - rank(other));
}
