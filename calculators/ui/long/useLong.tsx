import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Calculator, Outcome, Run } from '../../kit/define.ts';
import { fetchReaders, wantsReaders } from '../../kit/record/fetchReaders.ts';
import { readForm, type Texts, type Value, type Values } from '../../kit/state.ts';
import type { UnitSystem } from '../../units/units.ts';
import type { RanSide, UseSide } from '../sides.ts';

/** What a run came to. A refusal for now, where nothing came to work it out, holds until another run has been asked for or has come. */
export type Ran = Run & { readonly isForNow?: true };
/** Runs a calculation elsewhere, or in slices; tells how far it is, and can be stopped. */
export type RunLong = (
  values: Values,
  system: UnitSystem,
  onShare: (share: number) => void,
) => { readonly done: Promise<Ran>; readonly stop: () => void };

const ours = { at: '', say: 'This cannot be computed. The fault is in this page, not in what you typed.' };
const mostWritten = 100;
const isLong = (value: Value): value is Extract<Value, readonly unknown[]> => typeof value === 'object' && value.length > mostWritten;
/** Both sides, in both systems of units, and some that somebody goes back to. */
const keptRuns = 8;
/** Shorter runs show no bar: it would only flicker. */
const patienceMs = 250;

/** Only this line is drawn again as the run goes on. */
function Running({ follow, onStop }: { readonly follow: (onShare: (share: number) => void) => void; readonly onStop: () => void }) {
  const [share, setShare] = useState(0);
  useEffect(() => follow(setShare), []);
  return (
    <p class="running is-going">
      <progress value={share} max={1} aria-label="Working through the years" /> Working through the years.{' '}
      <button type="button" class="quiet" onClick={onStop}>
        Stop
      </button>
    </p>
  );
}
const Stopped = ({ onGo }: { readonly onGo: () => void }) => (
  <p class="running" role="status">
    Stopped. What stands here is of the numbers before.{' '}
    <button type="button" class="quiet" onClick={onGo}>
      Go on
    </button>
  </p>
);

/**
 * Sides of a form whose calculation runs long. What is typed is read at once; the answer that stands stays until the new one is there. The example is
 * worked out before the form is taken over, because its first picture must equal the built page.
 */
export function longSides(runLong: RunLong, example: { readonly values: Values; readonly run: Run }): UseSide {
  const numbers = new WeakMap<object, number>();
  let next = 0;
  // Thousands of lines of a record are known by themselves: to write them out at each key would be felt.
  const plain = (value: Value): Value => {
    if (!isLong(value)) return value;
    const number = numbers.get(value) ?? ++next;
    numbers.set(value, number);
    return `list ${number}`;
  };
  const keyOf = (values: Values, system: UnitSystem): string => JSON.stringify([Object.values(values).map(plain), system]);
  const known = new Map([[keyOf(example.values, 'us'), example.run]]);
  let turns = 0;
  const keep = (key: string, run: Run): void => {
    turns += 1;
    known.set(key, run);
    for (const [oldest] of known) {
      if (known.size <= keptRuns) break;
      known.delete(oldest);
    }
  };
  return (calculator: Calculator, texts: Texts | null, system: UnitSystem): RanSide | null => {
    const last = useRef<Outcome | null>(null);
    const tellShare = useRef<(share: number) => void>(() => undefined);
    const [isSlow, setSlow] = useState(false);
    const [stopped, setStopped] = useState('');
    const [, redraw] = useState({});
    const [refused, setRefused] = useState<{ readonly key: string; readonly run: Run; readonly turn: number }>();
    // What reads a record comes when one is first used.
    const [isFetched, setFetched] = useState(false);
    const read = useMemo(() => texts && readForm(calculator.inputs, texts, system), [texts, system, isFetched]);
    const isWaiting = texts !== null && !isFetched && wantsReaders(calculator.inputs, texts);
    useEffect(() => {
      // Where it cannot be had, the field says so.
      if (isWaiting)
        void fetchReaders(calculator.inputs)
          .catch(console.info)
          .finally(() => setFetched(true));
    }, [isWaiting]);
    const isReady = read !== null && !isWaiting && read.problems.length === 0;
    const key = useMemo(() => (isReady ? keyOf(read.values, system) : ''), [read, isReady]);
    const found = known.get(key) ?? (refused?.key === key && refused.turn === turns ? refused.run : undefined);
    const stop = useRef<() => void>();
    useEffect(() => {
      if (!isReady || found || stopped === key) return undefined;
      setRefused(undefined);
      const running = runLong(read.values, system, (share) => tellShare.current(share));
      const slow = setTimeout(() => setSlow(true), patienceMs);
      let isOver = false;
      stop.current = running.stop;
      running.done
        .then(
          (run) => (run.isForNow ? isOver || setRefused({ key, run, turn: turns }) : keep(key, run)),
          (error: unknown) => {
            console.error(error);
            keep(key, { refusals: [ours] });
          },
        )
        .finally(() => {
          if (!isOver) redraw({});
        });
      return () => {
        isOver = true;
        clearTimeout(slow);
        setSlow(false);
        running.stop();
      };
    }, [key, found === undefined, stopped === key]);
    // The same object as long as it says the same, so that nothing is drawn again.
    const remarks = useMemo(() => JSON.stringify(read?.remarks ?? []), [read]);
    const outcome = useMemo(() => {
      if (!found || !('outcome' in found)) return null;
      return read && read.remarks.length > 0 ? { ...found.outcome, cautions: [...read.remarks, ...found.outcome.cautions] } : found.outcome;
    }, [found, remarks]);
    if (read === null) return null;
    if (isWaiting) return { outcome: last.current, problems: [], isEarlier: true };
    if (!isReady) return { outcome: null, problems: read.problems };
    if (found && 'refusals' in found) return { outcome: null, problems: found.refusals };
    if (found) {
      last.current = outcome;
      return { outcome, problems: [] };
    }
    const isStopped = stopped === key;
    return {
      outcome: last.current,
      problems: [],
      isEarlier: true,
      ...((isSlow || isStopped) && {
        running: isStopped ? (
          <Stopped onGo={() => setStopped('')} />
        ) : (
          <Running
            follow={(onShare) => {
              tellShare.current = onShare;
            }}
            onStop={() => {
              stop.current?.();
              setStopped(key);
            }}
          />
        ),
      }),
    };
  };
}
