/**
 * Reaches every page with a calculator, so it is small. A calculator's own page takes the form over at once; in a guide the built example
 * stands until somebody touches it, since most readers only read. What is typed or tapped before the script has come is kept and done then.
 */
import { formKeyOf, isAnyKept, kept, toolKeyOf, unitsKey } from './kept.ts';

const isTouched = ['pointerdown', 'focusin', 'keydown', 'input', 'change'] as const;

function tellFailure(box: HTMLElement): void {
  box.dataset['failed'] = '';
  const note = box.querySelector('[data-waiting]');
  if (!note) return;
  note.textContent = 'The calculator could not be loaded. What you see is its example, not your numbers. Load the page again when there is signal.';
}

async function open(box: HTMLElement): Promise<void> {
  let tapped: HTMLElement | null = null;
  const remember = (event: Event) => {
    if (event.target instanceof Element) tapped = event.target.closest('button');
  };
  box.addEventListener('click', remember, true);
  try {
    const { openCalculator } = await import('./calculator.tsx');
    await openCalculator(box);
    box.removeEventListener('click', remember, true);
    (tapped as HTMLElement | null)?.click();
  } catch (error) {
    console.error(error);
    tellFailure(box);
  }
}

function whenTouched(box: HTMLElement): Promise<void> {
  // Until then nobody waits for it: src/styles/example.css marks only an example that somebody does.
  box.dataset['idle'] = '';
  return new Promise((done) => {
    const go = () => {
      delete box.dataset['idle'];
      for (const kind of isTouched) box.removeEventListener(kind, go, true);
      void open(box).then(done);
    };
    for (const kind of isTouched) box.addEventListener(kind, go, true);
  });
}

const isMetric = kept('localStorage', unitsKey) === 'si';
const atOnce = [...document.querySelectorAll<HTMLElement>('[data-calculator]')].flatMap((box) => {
  const isKept = kept('sessionStorage', formKeyOf(box)) !== null || isAnyKept('sessionStorage', toolKeyOf(box, ''));
  // Who typed here before finds it as it was left.
  if (isKept) box.querySelector('details.in-guide')?.setAttribute('open', '');
  const wantsNow = box.dataset['ownsAddress'] !== undefined || isMetric || isKept;
  if (wantsNow) return [open(box)];
  void whenTouched(box);
  return [];
});
void Promise.all(atOnce).then(() => {
  delete document.documentElement.dataset['opening'];
});
