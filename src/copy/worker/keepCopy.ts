import { type CopyIndex, type CopyPart, countsOf, stages } from '../copyIndex.ts';
import type { CopyState, GoOn } from '../copyState.ts';
import { cacheNameOf, dropOlder, editionInUse, markOf, setMark } from './editions.ts';
import type { Here } from './here.ts';
import { isKept, keepPart } from './keepPart.ts';
import { openEditions, rememberEarlierPage } from './openPages.ts';

/** So few at a time that a page which is read meanwhile still gets its share of the line. */
const lanes = 2;
/** After so many failures one after the other the line is taken for gone, until the next visit. */
const mostInARow = 4;
const firstPauseMs = 500;
/** Full disks stay full: a page that stays open does not fetch for nothing. */
const fullForMs = 600_000;

const isFull = (error: unknown): boolean => error instanceof Error && error.name === 'QuotaExceededError';

export interface Copying {
  /** Fetches what is missing for the page that asks, as far as it may and the line goes. Asked again while it goes on, it is the same going on. */
  readonly goOn: (asked: GoOn, clientId: string) => Promise<void>;
}

export function copying(here: Here, index: CopyIndex): Copying {
  const own = cacheNameOf(here, index.edition);
  const kept = new Set<CopyPart>();
  let running: Promise<void> | undefined;
  let fullAt = Number.NEGATIVE_INFINITY;

  async function older(): Promise<CopyState['older']> {
    const used = await editionInUse(here, own);
    return used?.name === own ? undefined : used?.standing;
  }

  async function tell(is: CopyState['is']): Promise<void> {
    const isThere = (part: CopyPart): boolean => kept.has(part);
    const hasCore = index.parts.filter(({ stage }) => stage !== 'rest').every(isThere);
    const state: CopyState = {
      kind: 'copy-state',
      is,
      standing: is === 'whole' ? 'whole' : hasCore ? 'core' : 'begun',
      older: await older(),
      kept: countsOf([...kept]),
      of: countsOf(index.parts),
    };
    await here.tell(state);
  }

  /** Says what stopped it, if something did. */
  async function keepAll(cache: Cache, parts: readonly CopyPart[]): Promise<'stopped' | 'full' | undefined> {
    const queue = [...parts];
    let inARow = 0;
    let trouble: 'stopped' | 'full' | undefined;
    const lane = async (): Promise<void> => {
      for (let part = queue.shift(); part !== undefined; part = trouble === undefined ? queue.shift() : undefined) {
        try {
          await keepPart(here, own, cache, part);
          kept.add(part);
          inARow = 0;
          await tell('coming');
        } catch (error) {
          inARow += 1;
          if (isFull(error)) trouble = 'full';
          else if (inARow >= mostInARow) trouble ??= 'stopped';
          else {
            queue.push(part);
            await here.pause(firstPauseMs * 2 ** inARow);
          }
        }
      }
    };
    await Promise.all(Array.from({ length: lanes }, lane));
    return trouble;
  }

  async function run(asked: GoOn): Promise<CopyState['is']> {
    const cache = await here.caches.open(own);
    for (const part of index.parts) if (await isKept(here, cache, part)) kept.add(part);
    if (asked.isAsked) await setMark(here, cache, 'asked-for');
    const mayFetchAll = !asked.savesData || (await markOf(here, cache, 'asked-for')) !== undefined;
    for (const stage of stages) {
      const missing = index.parts.filter((part) => part.stage === stage && !kept.has(part));
      // Somebody who saves data has enough with a core, be it of an earlier edition.
      if (missing.length > 0 && !mayFetchAll && (stage === 'rest' || (await older()) !== undefined)) return 'waiting';
      if (missing.length > 0) await tell('coming');
      const trouble = await keepAll(cache, missing);
      if (trouble !== undefined) return trouble;
      if (stage === 'core') await setMark(here, cache, 'core');
    }
    await setMark(here, cache, 'whole');
    return 'whole';
  }

  async function visit(asked: GoOn): Promise<void> {
    const isStillFull = !asked.isAsked && Date.now() - fullAt < fullForMs;
    const is = isStillFull ? 'full' : await run(asked).catch((error: unknown) => (isFull(error) ? 'full' : 'stopped'));
    if (is === 'full' && !isStillFull) fullAt = Date.now();
    await dropOlder(here, own, await openEditions(here)).catch(() => undefined);
    await tell(is);
  }

  return {
    goOn: async (asked, clientId) => {
      await rememberEarlierPage(here, clientId, own).catch(() => undefined);
      // Whoever presses the button while it waits for that very press must not be answered by the waiting.
      const before = running;
      if (before !== undefined && !asked.isAsked) return before;
      const going = (before ?? Promise.resolve())
        .then(() => visit(asked))
        .finally(() => {
          if (running === going) running = undefined;
        });
      running = going;
      return going;
    },
  };
}
