/**
 * Reaches every page with a calculator, so it is small. A calculator's own page takes the built form over at once, and what is typed or tapped
 * before the script has come is kept and done then. A guide draws its form when somebody opens it, since most readers only read.
 */
import { loadAgain } from '../site/folder.ts';
import { formKeyOf, isAnyKept, kept, toolKeyOf } from './kept.ts';

function tellFailure(box: HTMLElement): void {
  box.dataset['failed'] = '';
  const note = box.querySelector('.not-come [data-says]');
  if (note) note.textContent = `The calculator could not be loaded. ${loadAgain()}`;
}

/** A guide links what a form looks like once one is opened. */
async function bringStyles(box: HTMLElement): Promise<void> {
  const addresses = box.dataset['styles']?.split(' ') ?? [];
  await Promise.all(addresses.map(bringSheet));
}

function bringSheet(address: string): Promise<unknown> {
  const link = document.createElement('link');
  link.rel = 'stylesheet';
  link.href = address;
  const loaded = new Promise((done, fail) => {
    link.addEventListener('load', done);
    link.addEventListener('error', () => fail(new Error(`no ${address}`)));
  });
  document.head.append(link);
  return loaded;
}

async function open(box: HTMLElement): Promise<void> {
  let tapped: HTMLElement | null = null;
  const remember = (event: Event) => {
    if (event.target instanceof Element) tapped = event.target.closest('button');
  };
  box.addEventListener('click', remember, true);
  try {
    const [{ openCalculator }] = await Promise.all([import('./calculator.tsx'), bringStyles(box)]);
    await openCalculator(box);
    box.removeEventListener('click', remember, true);
    (tapped as HTMLElement | null)?.click();
  } catch (error) {
    console.error(error);
    tellFailure(box);
  }
}

/** A guide's form is drawn when its question is opened; a finger on it begins the fetching. */
function whenOpened(box: HTMLElement): Promise<void> {
  const fold = box.querySelector<HTMLDetailsElement>('details.in-guide');
  if (!fold) return Promise.resolve();
  return new Promise((done) => {
    const go = () => {
      for (const kind of ['pointerdown', 'toggle']) fold.removeEventListener(kind, go);
      void open(box).then(done);
    };
    for (const kind of ['pointerdown', 'toggle']) fold.addEventListener(kind, go);
    // Who typed here before finds it as it was left. A fold that was opened before this script came has told nobody.
    if (isKept(box)) fold.open = true;
    if (fold.open) go();
  });
}

const isKept = (box: HTMLElement): boolean => kept('sessionStorage', formKeyOf(box)) !== null || isAnyKept('sessionStorage', toolKeyOf(box, ''));

const waitedFor = [...document.querySelectorAll<HTMLElement>('[data-calculator]')].flatMap((box) => {
  const started = box.dataset['ownsAddress'] === undefined ? whenOpened(box) : open(box);
  return box.dataset['ownsAddress'] !== undefined || isKept(box) ? [started] : [];
});
void Promise.all(waitedFor).then(() => {
  delete document.documentElement.dataset['opening'];
});
