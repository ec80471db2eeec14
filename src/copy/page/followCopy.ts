import { href } from '../../site/href.ts';
import { type CopyState, type GoOn, isCopyState } from '../copyState.ts';
import { canBeHelped, copyLine, type Device, momentOf } from '../copyWords.ts';

/** A browser ends a worker that nobody has asked for anything for half a minute. */
const askEveryMs = 20_000;
const askLeastOftenMs = 600_000;
const saidForMs = 10_000;

const device: Device = matchMedia('(pointer: coarse)').matches ? 'phone' : 'computer';
/** Browsers have two ways to say it, and none of them has both. */
const savesData = (): boolean =>
  matchMedia('(prefers-reduced-data: reduce)').matches ||
  ('connection' in navigator &&
    typeof navigator.connection === 'object' &&
    navigator.connection !== null &&
    'saveData' in navigator.connection &&
    navigator.connection.saveData === true);

/** Asks the worker to go on with the copy. */
async function goOn(isAsked = false): Promise<void> {
  const asked: GoOn = { kind: 'copy-go-on', savesData: savesData(), isAsked };
  (await navigator.serviceWorker.ready).active?.postMessage(asked);
}

/** Has the copy go on for as long as the page is open, and says in the foot, and on the page about it, how it stands. */
export function followCopy(): void {
  const foot = document.querySelector<HTMLElement>('footer [data-hosted="foot"]');
  const box = document.querySelector<HTMLElement>('#copy-here');
  const more = document.createElement('a');
  more.href = href('/about/#offline');
  more.textContent = 'About the copy';
  const aloud = document.createElement('span');
  aloud.className = 'unseen';
  aloud.role = 'status';
  foot?.after(aloud);

  let moment: string | undefined;
  let waitMs = askEveryMs;
  let timer: number | undefined;
  const ask = (): void => {
    void goOn();
    clearTimeout(timer);
    timer = window.setTimeout(ask, waitMs);
  };
  const askSoon = (): void => {
    waitMs = askEveryMs;
    ask();
  };
  const say = (line: string): void => {
    aloud.textContent = line;
    window.setTimeout(() => aloud.replaceChildren(), saidForMs);
  };
  const show = (state: CopyState): void => {
    const line = copyLine(state, device);
    if (foot) foot.textContent = line;
    if (canBeHelped(state) && !box) foot?.after(' ', more);
    else more.remove();
    if (moment !== undefined && moment !== momentOf(state)) say(line);
    moment = momentOf(state);
    if (box) void import('./copyHere.ts').then(({ showCopyHere }) => showCopyHere(box, state, line, () => void goOn(true))).catch(console.info);
    if (state.is === 'whole') clearTimeout(timer);
    // A line that is gone is not asked for every few seconds.
    waitMs = state.is === 'coming' ? askEveryMs : Math.min(2 * waitMs, askLeastOftenMs);
  };

  navigator.serviceWorker.addEventListener('message', ({ data }) => {
    if (isCopyState(data)) show(data);
  });
  navigator.serviceWorker.startMessages();
  // A newer worker has a newer edition to fetch.
  navigator.serviceWorker.addEventListener('controllerchange', askSoon);
  addEventListener('online', askSoon);
  ask();
}
