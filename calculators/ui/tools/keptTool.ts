import { useLayoutEffect, useState } from 'preact/hooks';

/** Keeps a tool's state through a reload: a start instant, the order of taps. Handed in, since only the site knows where. */
export interface ToolStore {
  readonly read: (key: string) => string | null;
  readonly write: (key: string, text: string | null) => void;
}

/** A kept text. Null at the first render, which must equal the built page; what was kept comes before the first paint. */
export function useKept(store: ToolStore | undefined, key: string): readonly [string | null, (text: string | null) => void] {
  const [text, setText] = useState<string | null>(null);
  useLayoutEffect(() => {
    if (store) setText(store.read(key));
  }, [store, key]);
  return [
    text,
    (now) => {
      setText(now);
      store?.write(key, now);
    },
  ];
}

/** The instant at which a clock was started, and how long ago that is. Counted from the wall clock, so that sleep and reload cannot stop it. */
export function useClock(
  store: ToolStore | undefined,
  key: string,
): {
  readonly isRunning: boolean;
  readonly elapsedS: number;
  /** Read at the moment of the tap, not at the last drawing. */
  readonly measureS: () => number;
  readonly start: () => void;
  readonly clear: () => void;
} {
  const [kept, put] = useKept(store, key);
  const [nowMs, setNow] = useState(0);
  const startMs = Number(kept ?? Number.NaN);
  const isRunning = Number.isFinite(startMs);
  useLayoutEffect(() => {
    if (!isRunning) return;
    const look = () => setNow(Date.now());
    look();
    const timer = setInterval(look, 200);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [isRunning, startMs]);
  const since = (ms: number): number => (isRunning ? Math.max(0, ms - startMs) / 1000 : 0);
  return { isRunning, elapsedS: since(nowMs), measureS: () => since(Date.now()), start: () => put(String(Date.now())), clear: () => put(null) };
}
