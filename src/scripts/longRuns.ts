// A calculator that runs long is run beside the page; where no worker can be had, in slices between frames. Fetched for those calculators only.
import type { Calculator, Run } from '../../calculators/kit/define.ts';
import { readForm, startTexts } from '../../calculators/kit/state.ts';
import { sliced } from '../../calculators/ui/long/sliced.ts';
import { longSides, type RunLong } from '../../calculators/ui/long/useLong.tsx';
import type { UseSide } from '../../calculators/ui/sides.ts';
import type { Asking, Telling } from './longWorker.ts';

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

interface Waiting {
  readonly resolve: (run: Run) => void;
  readonly reject: (error: Error) => void;
  readonly onShare: (share: number) => void;
}
/** In a worker. Where it cannot be had after all, as in a page opened from disk, what waits goes to the page. */
function inWorker(calculator: Calculator): RunLong {
  const page = inPage(calculator);
  let worker: Worker | undefined;
  try {
    worker = new Worker(new URL('./longWorker.ts', import.meta.url), { type: 'module' });
  } catch (error) {
    console.info(error);
  }
  const waiting = new Map<number, Waiting>();
  const again = new Map<number, () => void>();
  let next = 0;
  const ask = (asking: Asking): void => worker?.postMessage(asking);
  worker?.addEventListener('message', ({ data }: MessageEvent<Telling>) => {
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
  });
  worker?.addEventListener('error', (event) => {
    event.preventDefault();
    console.info('no worker here', event.message);
    worker?.terminate();
    worker = undefined;
    for (const start of again.values()) start();
    again.clear();
    waiting.clear();
  });
  return (values, system, onShare) => {
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
      ask({ id, slug: calculator.slug, values, system });
    });
    return { done, stop: () => stop() };
  };
}

/** What a form is drawn with: its example is worked out first, because its first picture must equal the built page. */
export async function startLong(calculator: Calculator): Promise<UseSide> {
  const runLong = inWorker(calculator);
  const { values } = readForm(calculator.inputs, startTexts(calculator.inputs));
  const known = new Map([[JSON.stringify([values, 'us']), await runLong(values, 'us', () => undefined).done]]);
  return longSides(runLong, known);
}
