import type { Understood } from './understandRecord.ts';

// A form is read again at each key. A record of many years takes a hundred times as long as all the rest, and hardly ever changes.
const mostKept = 4;

/** What is understood of a text is worked out once while it stays. */
export function keptReadings(understand: (text: string) => Understood): (text: string) => Understood {
  const kept = new Map<string, Understood>();
  return (text) => {
    const found = kept.get(text) ?? understand(text);
    kept.delete(text);
    kept.set(text, found);
    for (const [oldest] of kept) {
      if (kept.size <= mostKept) break;
      kept.delete(oldest);
    }
    return found;
  };
}
