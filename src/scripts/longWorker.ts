// Runs a calculation that takes long, beside the page. A newer one puts an end to it.
import season from '../../calculators/catalog/season/definition.ts';
import type { Run } from '../../calculators/kit/define.ts';
import type { RecordLine } from '../../calculators/kit/record/recordLine.ts';
import type { Values } from '../../calculators/kit/state.ts';
import { sliced } from '../../calculators/ui/long/sliced.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { forgetOldest } from './sentRecords.ts';

/** A run that the page asks for. Records went over before: by the names of their inputs, with their numbers. */
export interface Running {
  readonly id: number;
  readonly slug: string;
  readonly values: Values;
  readonly system: UnitSystem;
  readonly records: readonly (readonly [key: string, record: number])[];
}
/** `stop` alone ends the run of that number. */
export type Asking = Running | { readonly record: number; readonly lines: readonly RecordLine[] } | { readonly id: number; readonly stop: true };
export type Telling =
  | { readonly id: number; readonly share: number }
  | { readonly id: number; readonly run: Run }
  | { readonly id: number; readonly fault: string };

/** A calculator that runs long is named here, and a test looks for it. */
const calculators = new Map([season].map((calculator) => [calculator.slug, calculator]));
const stopped = new Set<number>();
const records = new Map<number, readonly RecordLine[]>();
/** Asked again, and stopped, between two slices. */
const sliceMs = 40;
/** How far a run is, is told so often at most: the page has each telling to read, also while somebody types. */
const shareMs = 100;
/** A turn for what waits. By a message to oneself: after a few timers in a row each waits 4 ms, however little it asks for. */
const pause = (): Promise<void> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(undefined);
  });
const tell = (telling: Telling): void => self.postMessage(telling);

self.addEventListener('message', async ({ data }: MessageEvent<Asking>) => {
  if ('lines' in data) {
    records.set(data.record, data.lines);
    forgetOldest(records);
    return;
  }
  const { id } = data;
  if ('stop' in data) {
    stopped.add(id);
    return;
  }
  try {
    const given = data.records.map(([key, record]) => [key, records.get(record) ?? []] as const);
    const calculator = calculators.get(data.slug);
    await calculator?.fetchEngine?.();
    const steps = calculator?.runBySteps?.({ ...data.values, ...Object.fromEntries(given) }, data.system);
    if (!steps) throw new Error(`${data.slug} does not run by steps`);
    let toldMs = performance.now();
    const onShare = (share: number): void => {
      if (performance.now() - toldMs < shareMs) return;
      toldMs = performance.now();
      tell({ id, share });
    };
    const run = await sliced(steps, { sliceMs, pause, isStopped: () => stopped.has(id), onShare });
    if (run) tell({ id, run });
  } catch (error) {
    tell({ id, fault: String(error) });
  } finally {
    stopped.delete(id);
  }
});
