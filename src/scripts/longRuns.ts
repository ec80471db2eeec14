// A calculator that runs long is run beside the page; where no worker can be had, in slices between frames. Fetched for those calculators only.

import examples from 'virtual:long-examples';
import type { FunctionComponent } from 'preact';
import type { Calculator } from '../../calculators/kit/define.ts';
import { readForm, startTexts } from '../../calculators/kit/state.ts';
import { aloneBy } from '../../calculators/ui/long/Alone.tsx';
import { sliced } from '../../calculators/ui/long/sliced.ts';
import { longSides, type Ran, type RunLong } from '../../calculators/ui/long/useLong.tsx';
import type { AloneProps } from '../../calculators/ui/props.ts';
import type { UseSide } from '../../calculators/ui/sides.ts';
import { folder, loadAgain } from '../site/folder.ts';
import { ownScript } from '../site/ownScript.ts';
import longWorker from './longWorker.ts?worker&url';
import { inWorker } from './oneWorker.ts';

/** Half a frame of a slow phone. */
const sliceMs = 6;
const frame = (): Promise<void> => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));

/** Where neither a worker came nor what works it out. */
const notCome: Ran = { refusals: [{ at: '', say: `What works this out did not come. ${loadAgain()} What you typed stays.` }], isForNow: true };
/** In the page itself, a slice between two frames. */
const inPage =
  ({ runBySteps, fetchEngine }: Calculator): RunLong =>
  (values, system, onShare) => {
    if (!runBySteps) throw new Error('this calculator does not run by steps');
    let isStopped = false;
    const run = async (): Promise<Ran | undefined> => {
      // A first pause, so that a run of keys starts nothing.
      await frame();
      if (isStopped) return undefined;
      try {
        await fetchEngine?.();
      } catch (error) {
        console.info(error);
        return notCome;
      }
      return sliced(runBySteps(values, system), { sliceMs, pause: frame, isStopped: () => isStopped, onShare });
    };
    return {
      done: new Promise((resolve, reject) => {
        run().then((ran) => ran && resolve(ran), reject);
      }),
      stop: () => {
        isStopped = true;
      },
    };
  };

/** What a form that runs long is drawn with, and what makes it ready for its first change. */
export interface Long {
  readonly drawn: { readonly useRan: UseSide; readonly Alone: FunctionComponent<AloneProps> };
  readonly warmUp: () => void;
}
/** Its example was worked out as the page was built, because its first picture must equal the built page. */
export async function startLong(calculator: Calculator): Promise<Long> {
  // A folder on a disk has none.
  const begin = folder() ? undefined : () => new Worker(ownScript(longWorker), { type: 'module' });
  const runLong = inWorker(calculator, { page: inPage(calculator), begin });
  const { values } = readForm(calculator.inputs, startTexts(calculator.inputs));
  const example = await examples[calculator.slug]?.();
  if (!example) throw new Error(`${calculator.slug}: no example was worked out`);
  const outcome = { ...example.default, values: { ...example.default.values, ...example.default.computed } };
  return {
    drawn: { useRan: longSides(runLong, { values, run: { outcome } }), Alone: aloneBy(runLong) },
    // A worker that has just begun takes a second for what takes it a third later on; the example's answer is there already, and its place and its growth then
    // stand ready in the worker too.
    warmUp: () => begin && runLong(values, 'us', () => undefined).done.catch(console.info),
  };
}
