import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type ClockReading, clockAt, clockKept, clockOf, type RunningClock } from './clock.ts';

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

const clocksNow = (): ClockReading => ({ wallMs: Date.now(), steadyMs: performance.timeOrigin + performance.now() });
/** What is kept is never older either: a page that is thrown away loses no more. */
const tickMs = 200;

/** A clock that sleep and reload cannot stop, and a device's clock that is set cannot move. */
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
  const [elapsedMs, setElapsed] = useState(0);
  const clock = useRef<RunningClock>();
  const isAway = useRef(true);
  const isRunning = clockOf(kept) !== undefined;
  const look = (): number => {
    if (!clock.current) return 0;
    clock.current = clockAt(clock.current, clocksNow(), isAway.current);
    isAway.current = document.visibilityState !== 'visible';
    setElapsed(clock.current.elapsedMs);
    store?.write(key, clockKept(clock.current));
    return clock.current.elapsedMs;
  };
  useLayoutEffect(() => {
    clock.current = clockOf(kept);
    isAway.current = true;
    if (!clock.current) return;
    look();
    const ticking = setInterval(look, tickMs);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(ticking);
      document.removeEventListener('visibilitychange', look);
    };
  }, [kept]);
  return {
    isRunning,
    elapsedS: isRunning ? elapsedMs / 1000 : 0,
    measureS: () => look() / 1000,
    start: () => put(clockKept({ ...clocksNow(), elapsedMs: 0 })),
    clear: () => {
      clock.current = undefined;
      put(null);
    },
  };
}
