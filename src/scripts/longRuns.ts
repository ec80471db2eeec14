// A calculator that runs long is run beside the page; where no worker can be had, in slices between frames. Fetched for those calculators only.

import examples from 'virtual:long-examples';
import type { FunctionComponent } from 'preact';
import type { Calculator, Run } from '../../calculators/kit/define.ts';
import type { RecordLine } from '../../calculators/kit/record/recordLine.ts';
import { readForm, startTexts, type Value, type Values } from '../../calculators/kit/state.ts';
import { aloneBy } from '../../calculators/ui/long/Alone.tsx';
import { sliced } from '../../calculators/ui/long/sliced.ts';
import { longSides, type RunLong } from '../../calculators/ui/long/useLong.tsx';
import type { AloneProps } from '../../calculators/ui/props.ts';
import type { UseSide } from '../../calculators/ui/sides.ts';
import { folder } from '../site/folder.ts';
import { ownScript } from '../site/ownScript.ts';
import type { Asking, Running, Telling } from './longWorker.ts';
import longWorker from './longWorker.ts?worker&url';
import { forgetOldest } from './sentRecords.ts';

/** Half a frame of a slow phone. */
const sliceMs = 6;
const frame = (): Promise<void> => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));

/** In the page itself, a slice between two frames. */
const inPage =
  ({ runBySteps }: Calculator): RunLong =>
  (values, system, onShare) => {
    let isStopped = false;
    const done = new Promise<Run>((resolve, reject) => {
      if (!runBySteps) throw new Error('this calculator does not run by steps');
      // A first pause, so that a run of keys starts nothing.
      void frame()
        .then(() => (isStopped ? undefined : sliced(runBySteps(values, system), { sliceMs, pause: frame, isStopped: () => isStopped, onShare })))
        .then((run) => run && resolve(run), reject);
    });
    return {
      done,
      stop: () => {
        isStopped = true;
      },
    };
  };

type NumberOf = (lines: readonly RecordLine[]) => number;
/** Numbers each record and sends it to the worker once: thousands of lines with each key would be felt. Both ends forget the oldest at the same turn. */
function recordsTo(ask: (asking: Asking) => void): NumberOf {
  const numbers = new Map<readonly RecordLine[], number>();
  let next = 0;
  return (lines) => {
    const found = numbers.get(lines);
    if (found !== undefined) return found;
    next += 1;
    numbers.set(lines, next);
    forgetOldest(numbers);
    ask({ record: next, lines });
    return next;
  };
}
function withRecordsBy(numberOf: NumberOf, { inputs }: Calculator, values: Values): Pick<Running, 'values' | 'records'> {
  const records = Object.entries(values).flatMap(([key, value]) =>
    inputs[key]?.kind === 'record' && areLines(value) && value.length > 0 ? [[key, numberOf(value)] as const] : [],
  );
  return { values: { ...values, ...Object.fromEntries(records.map(([key]) => [key, []])) }, records };
}
const areLines = (value: Value): value is readonly RecordLine[] => Array.isArray(value);

interface Waiting {
  readonly resolve: (run: Run) => void;
  readonly reject: (error: Error) => void;
  readonly onShare: (share: number) => void;
}
/** In a worker. A folder on a disk has none, and where it cannot be had after all, what waits goes to the page. */
function inWorker(calculator: Calculator): RunLong {
  const page = inPage(calculator);
  let worker: Worker | undefined;
  let isTried = false;
  const waiting = new Map<number, Waiting>();
  const again = new Map<number, () => void>();
  let next = 0;
  const ask = (asking: Asking): void => worker?.postMessage(asking);
  const numberOf = recordsTo(ask);
  const onTelling = ({ data }: MessageEvent<Telling>): void => {
    const found = waiting.get(data.id);
    if (!found) return;
    if ('share' in data) {
      found.onShare(data.share);
      return;
    }
    waiting.delete(data.id);
    again.delete(data.id);
    if ('run' in data) found.resolve(data.run);
    else found.reject(new Error(data.fault));
  };
  const onFault = (event: ErrorEvent): void => {
    event.preventDefault();
    console.info('no worker here', event.message);
    worker?.terminate();
    worker = undefined;
    for (const start of again.values()) start();
    again.clear();
    waiting.clear();
  };
  /** Whoever only looks at the example needs none. */
  const begin = (): void => {
    if (isTried || folder()) return;
    isTried = true;
    try {
      worker = new Worker(ownScript(longWorker), { type: 'module' });
      worker.addEventListener('message', onTelling);
      worker.addEventListener('error', onFault);
    } catch (error) {
      console.info(error);
    }
  };
  return (values, system, onShare) => {
    begin();
    if (!worker) return page(values, system, onShare);
    next += 1;
    const id = next;
    let stop = (): void => {
      waiting.delete(id);
      again.delete(id);
      ask({ id, stop: true });
    };
    const done = new Promise<Run>((resolve, reject) => {
      waiting.set(id, { resolve, reject, onShare });
      again.set(id, () => {
        const running = page(values, system, onShare);
        stop = running.stop;
        running.done.then(resolve, reject);
      });
      ask({ id, slug: calculator.slug, system, ...withRecordsBy(numberOf, calculator, values) });
    });
    return { done, stop: () => stop() };
  };
}

/** What a form is drawn with. Its example was worked out as the page was built, because its first picture must equal the built page. */
export async function startLong(calculator: Calculator): Promise<{ readonly useRan: UseSide; readonly Alone: FunctionComponent<AloneProps> }> {
  const runLong = inWorker(calculator);
  const { values } = readForm(calculator.inputs, startTexts(calculator.inputs));
  const example = await examples[calculator.slug]?.();
  if (!example) throw new Error(`${calculator.slug}: no example was worked out`);
  const outcome = { ...example.default, values: { ...example.default.values, ...example.default.computed } };
  return { useRan: longSides(runLong, { values, run: { outcome } }), Alone: aloneBy(runLong) };
}
