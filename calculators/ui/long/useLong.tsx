import { useEffect, useRef, useState } from 'preact/hooks';
import type { Calculator, Outcome, Run } from '../../kit/define.ts';
import { readForm, type Texts, type Values } from '../../kit/state.ts';
import type { UnitSystem } from '../../units/units.ts';
import type { RanSide, UseSide } from '../sides.ts';

/** Runs a calculation elsewhere, or in slices; tells how far it is, and can be stopped. */
export type RunLong = (
  values: Values,
  system: UnitSystem,
  onShare: (share: number) => void,
) => { readonly done: Promise<Run>; readonly stop: () => void };

const ours = { at: '', say: 'This cannot be computed. The fault is in this page, not in what you typed.' };
/** Both sides, in both systems of units, and some that somebody goes back to. */
const keptRuns = 8;
/** Shorter runs show no bar: it would only flicker. */
const patienceMs = 250;

function Running({
  share,
  isStopped,
  onStop,
  onGo,
}: {
  readonly share: number;
  readonly isStopped: boolean;
  readonly onStop: () => void;
  readonly onGo: () => void;
}) {
  if (isStopped)
    return (
      <p class="running" role="status">
        Stopped. What stands here is of the numbers before.{' '}
        <button type="button" class="quiet" onClick={onGo}>
          Go on
        </button>
      </p>
    );
  return (
    <p class="running">
      <progress value={share} max={1} aria-label="Working through the years" /> Working through the years.{' '}
      <button type="button" class="quiet" onClick={onStop}>
        Stop
      </button>
    </p>
  );
}

/**
 * Sides of a form whose calculation runs long. What is typed is read at once; the answer that stands stays until the new one is there. `known` holds the
 * example, worked out before the form is taken over, whose first picture must equal the built page.
 */
export function longSides(runLong: RunLong, known: Map<string, Run>): UseSide {
  const keyOf = (values: Values, system: UnitSystem): string => JSON.stringify([values, system]);
  const keep = (key: string, run: Run): void => {
    known.set(key, run);
    for (const [oldest] of known) {
      if (known.size <= keptRuns) break;
      known.delete(oldest);
    }
  };
  return (calculator: Calculator, texts: Texts | null, system: UnitSystem): RanSide | null => {
    const last = useRef<Outcome | null>(null);
    const [share, setShare] = useState(0);
    const [isSlow, setSlow] = useState(false);
    const [stopped, setStopped] = useState('');
    const [, redraw] = useState({});
    const read = texts && readForm(calculator.inputs, texts, system);
    const isReady = read !== null && read.problems.length === 0;
    const key = isReady ? keyOf(read.values, system) : '';
    const found = known.get(key);
    const stop = useRef<() => void>();
    useEffect(() => {
      if (!isReady || found || stopped === key) return undefined;
      setShare(0);
      const running = runLong(read.values, system, setShare);
      const slow = setTimeout(() => setSlow(true), patienceMs);
      let isOver = false;
      stop.current = running.stop;
      running.done
        .then(
          (run) => keep(key, run),
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
    if (read === null) return null;
    if (!isReady) return { outcome: null, problems: read.problems };
    if (found && 'refusals' in found) return { outcome: null, problems: found.refusals };
    if (found) {
      last.current = { ...found.outcome, cautions: [...read.remarks, ...found.outcome.cautions] };
      return { outcome: last.current, problems: [] };
    }
    const isStopped = stopped === key;
    return {
      outcome: last.current,
      problems: [],
      ...((isSlow || isStopped) && {
        running: (
          <Running
            share={share}
            isStopped={isStopped}
            onStop={() => {
              stop.current?.();
              setStopped(key);
            }}
            onGo={() => setStopped('')}
          />
        ),
      }),
    };
  };
}
