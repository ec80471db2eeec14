import type { Calculator } from '../../calculators/kit/define.ts';
import type { RecordLine } from '../../calculators/kit/record/recordLine.ts';
import type { Value, Values } from '../../calculators/kit/state.ts';
import type { Ran, RunLong } from '../../calculators/ui/long/useLong.tsx';
import type { Asking, Running, Telling } from './longWorker.ts';
import { forgetOldest } from './sentRecords.ts';

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
  readonly resolve: (run: Ran) => void;
  readonly reject: (error: Error) => void;
  readonly onShare: (share: number) => void;
  /** Runs it where there is no worker. */
  readonly again: () => void;
}
/** Where runs go. */
interface Places {
  /** In the page itself, where no worker can be had. */
  readonly page: RunLong;
  /** Begins the worker; nothing where it is known that there is none. @throws whatever keeps a browser from it */
  readonly begin: (() => Worker) | undefined;
}

/** Asks a worker for the runs of a calculator. Where it cannot be had after all, what waits goes to the page. */
function asking(worker: Worker, calculator: Calculator, page: RunLong, onGone: () => void): RunLong {
  const waiting = new Map<number, Waiting>();
  let next = 0;
  const ask = (asking: Asking): void => worker.postMessage(asking);
  const numberOf = recordsTo(ask);
  worker.addEventListener('message', ({ data }: MessageEvent<Telling>) => {
    const found = waiting.get(data.id);
    if (!found) return;
    if ('share' in data) {
      found.onShare(data.share);
      return;
    }
    waiting.delete(data.id);
    if ('run' in data) found.resolve(data.run);
    else found.reject(new Error(data.fault));
  });
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    console.info('no worker here', event.message);
    worker.terminate();
    onGone();
    for (const { again } of waiting.values()) again();
    waiting.clear();
  });
  return (values, system, onShare) => {
    next += 1;
    const id = next;
    let stop = (): void => {
      waiting.delete(id);
      ask({ id, stop: true });
    };
    const done = new Promise<Ran>((resolve, reject) => {
      const again = (): void => {
        const running = page(values, system, onShare);
        stop = running.stop;
        running.done.then(resolve, reject);
      };
      waiting.set(id, { resolve, reject, onShare, again });
      ask({ id, slug: calculator.slug, system, ...withRecordsBy(numberOf, calculator, values) });
    });
    return { done, stop: () => stop() };
  };
}

/**
 * Runs a calculator in one worker for both managements, begun with the first run: whoever only looks at the example needs none. Where it cannot be had, no
 * other is tried, and all runs in the page; unless nothing came there either: then there was no signal, and the next run begins a worker anew.
 */
export function inWorker(calculator: Calculator, { page, begin }: Places): RunLong {
  let there: RunLong | undefined;
  let isTried = false;
  const inPage: RunLong = (values, system, onShare) => {
    const running = page(values, system, onShare);
    const done = running.done.then((ran) => {
      if (ran.isForNow && !there) isTried = false;
      return ran;
    });
    return { ...running, done };
  };
  return (values, system, onShare) => {
    if (begin && !isTried) {
      isTried = true;
      try {
        there = asking(begin(), calculator, inPage, () => {
          there = undefined;
        });
      } catch (error) {
        console.info(error);
      }
    }
    return (there ?? inPage)(values, system, onShare);
  };
}
