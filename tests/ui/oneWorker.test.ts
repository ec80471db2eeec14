import { describe, expect, it, vi } from 'vitest';
import type { Run } from '../../calculators/kit/define.ts';
import { readForm, startTexts } from '../../calculators/kit/state.ts';
import type { Ran, RunLong } from '../../calculators/ui/long/useLong.tsx';
import type { Asking, Running, Telling } from '../../src/scripts/longWorker.ts';
import { inWorker } from '../../src/scripts/oneWorker.ts';
import kitchenSink from '../kit/kitchenSink.ts';

/** Notes what it is asked, and tells what a test lets it tell. */
class Told extends EventTarget {
  readonly asked: Asking[] = [];
  isOver = false;
  postMessage(asking: Asking): void {
    this.asked.push(asking);
  }
  terminate(): void {
    this.isOver = true;
  }
  tell(telling: Telling): void {
    this.dispatchEvent(new MessageEvent('message', { data: telling }));
  }
  break(): void {
    this.dispatchEvent(Object.assign(new Event('error'), { message: 'not had' }));
  }
  get runs(): readonly Running[] {
    return this.asked.filter((asking): asking is Running => 'values' in asking);
  }
}
const runOf = (say: string): Run => ({ refusals: [{ at: '', say }] });
const { values } = readForm(kitchenSink.inputs, startTexts(kitchenSink.inputs));
const noShare = (): void => undefined;

function started(begin?: () => Worker) {
  const begun: Told[] = [];
  const inPage: { readonly finish: (run: Ran) => void; isStopped: boolean }[] = [];
  const page: RunLong = () => {
    let finish: (run: Ran) => void = () => undefined;
    const done = new Promise<Ran>((resolve) => {
      finish = resolve;
    });
    const run = { finish, isStopped: false };
    inPage.push(run);
    return {
      done,
      stop: () => {
        run.isStopped = true;
      },
    };
  };
  const usual = (): Worker => {
    const told = new Told();
    begun.push(told);
    return told as unknown as Worker;
  };
  const runLong = inWorker(kitchenSink, { page, begin: begin ?? usual });
  const worker = (): Told => {
    const [told] = begun;
    if (!told) throw new RangeError('no worker');
    return told;
  };
  return { begun, inPage, worker, runLong, ask: (more: object = {}) => runLong({ ...values, ...more }, 'us', noShare) };
}

vi.spyOn(console, 'info').mockImplementation(() => undefined);

describe('runs beside the page', () => {
  it('begin one worker, with the first run, for all of them, and tell each its own', async () => {
    const { begun, worker, ask } = started();
    expect(begun).toHaveLength(0);
    const [one, other] = [ask(), ask()];
    expect(begun.map(({ runs }) => runs.map(({ id }) => id))).toEqual([[1, 2]]);
    worker().tell({ id: 2, run: runOf('other') });
    worker().tell({ id: 1, run: runOf('one') });
    expect(await Promise.all([one.done, other.done])).toEqual([runOf('one'), runOf('other')]);
  });
  it('tell their share, and nothing once they were stopped', async () => {
    const { worker, runLong } = started();
    const shares: string[] = [];
    const [one] = ['this', 'that'].map((side) => runLong(values, 'us', (share) => shares.push(`${side} ${share}`)));
    worker().tell({ id: 2, share: 0.5 });
    one?.stop();
    worker().tell({ id: 1, share: 0.25 });
    expect(shares).toEqual(['that 0.5']);
    expect(worker().asked.at(-1)).toEqual({ id: 1, stop: true });
  });
  it('fail where the worker says that it failed', async () => {
    const { worker, ask } = started();
    const { done } = ask();
    worker().tell({ id: 1, fault: 'out of range' });
    await expect(done).rejects.toThrow('out of range');
  });
  it('send a record once, ahead of its run, and both ends forget the oldest', () => {
    const { worker, ask } = started();
    const records = Array.from({ length: 5 }, (_, at) => [{ day: at, amount: 1 }]);
    const sent = (): readonly number[] => worker().asked.flatMap((asking) => ('lines' in asking ? [asking.record] : []));
    const askWith = (at: number): void => void ask({ gauge: records[at] });
    askWith(0);
    askWith(0);
    expect(sent()).toEqual([1]);
    expect(worker().runs.map(({ records: [record], values: { gauge } }) => [record, gauge])).toEqual([
      [['gauge', 1], []],
      [['gauge', 1], []],
    ]);
    // By the fifth the worker has forgotten the first.
    for (const at of [1, 2, 3, 4, 0]) askWith(at);
    expect(sent()).toEqual([1, 2, 3, 4, 5, 6]);
    expect(worker().runs.at(-1)?.records).toEqual([['gauge', 6]]);
  });
});

describe('a worker that cannot be had', () => {
  it('is begun anew by the next run where nothing came to the page either', async () => {
    const { begun, inPage, worker, ask } = started();
    const one = ask();
    worker().break();
    inPage[0]?.finish({ ...runOf('no signal'), isForNow: true });
    expect(await one.done).toEqual({ ...runOf('no signal'), isForNow: true });
    ask();
    expect([begun.length, begun[1]?.runs.length, inPage.length]).toEqual([2, 1, 1]);
  });
  it('leaves what waits and what comes later to the page, where it can be stopped, and no other is tried', async () => {
    const { begun, inPage, worker, ask } = started();
    const [one, other] = [ask(), ask()];
    worker().break();
    expect([worker().isOver, inPage.length]).toEqual([true, 2]);
    inPage[0]?.finish(runOf('in the page'));
    expect(await one.done).toEqual(runOf('in the page'));
    other.stop();
    expect(inPage.map(({ isStopped }) => isStopped)).toEqual([false, true]);
    ask();
    expect([begun.length, inPage.length]).toEqual([1, 3]);
  });
  it('is not asked for twice where a browser refuses it', () => {
    let tries = 0;
    const { inPage, ask } = started(() => {
      tries += 1;
      throw new TypeError('no workers here');
    });
    ask();
    ask();
    expect([tries, inPage.length]).toEqual([1, 2]);
  });
});
