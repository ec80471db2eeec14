import type { Run } from '../../kit/define.ts';

/** How a run is cut up: what one slice may take, what lies between two, and when to give up. */
interface Slicing {
  readonly sliceMs: number;
  readonly pause: () => Promise<void>;
  readonly isStopped: () => boolean;
  readonly onShare: (share: number) => void;
}

/** Runs a calculation in slices with pauses between, so that whatever else waits there gets its turn. Nothing if it was stopped. */
export async function sliced(steps: Generator<number, Run>, { sliceMs, pause, isStopped, onShare }: Slicing): Promise<Run | undefined> {
  for (;;) {
    const until = performance.now() + sliceMs;
    let share = 0;
    do {
      const step = steps.next();
      if (step.done) return step.value;
      share = step.value;
    } while (performance.now() < until);
    onShare(share);
    await pause();
    if (isStopped()) return undefined;
  }
}
