// Runs a calculation that takes long, beside the page. A newer one puts an end to it.
import season from '../../calculators/catalog/season/definition.ts';
import type { Run } from '../../calculators/kit/define.ts';
import type { Values } from '../../calculators/kit/state.ts';
import { sliced } from '../../calculators/ui/long/sliced.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';

/** What the page asks for; `stop` alone ends the run of that number. */
export type Asking =
  | { readonly id: number; readonly slug: string; readonly values: Values; readonly system: UnitSystem }
  | { readonly id: number; readonly stop: true };
export type Telling =
  | { readonly id: number; readonly share: number }
  | { readonly id: number; readonly run: Run }
  | { readonly id: number; readonly fault: string };

/** A calculator that runs long is named here, and a test looks for it. */
const calculators = new Map([season].map((calculator) => [calculator.slug, calculator]));
const stopped = new Set<number>();
/** Asked again, and stopped, between two slices. */
const sliceMs = 40;
const tell = (telling: Telling): void => self.postMessage(telling);

self.addEventListener('message', async ({ data }: MessageEvent<Asking>) => {
  const { id } = data;
  if ('stop' in data) {
    stopped.add(id);
    return;
  }
  try {
    const steps = calculators.get(data.slug)?.runBySteps?.(data.values, data.system);
    if (!steps) throw new Error(`${data.slug} does not run by steps`);
    const run = await sliced(steps, {
      sliceMs,
      pause: () => new Promise((done) => setTimeout(done)),
      isStopped: () => stopped.has(id),
      onShare: (share) => tell({ id, share }),
    });
    if (run) tell({ id, run });
  } catch (error) {
    tell({ id, fault: String(error) });
  } finally {
    stopped.delete(id);
  }
});
