import type { Calculator } from '../../calculators/kit/define.ts';
import type { Change } from '../../calculators/ui/CalculatorForm.tsx';
import { otherTexts } from '../../calculators/ui/sides.ts';

/** Late enough not to race with reading and typing; early enough for a print from the browser's own menu. */
const aheadMs = 1500;

/** The drawn steps of a calculator's own page. */
async function stepsOf(page: string): Promise<readonly Element[]> {
  const response = await fetch(page);
  if (!response.ok) throw new Error(`${page}: ${response.status}`);
  const there = new DOMParser().parseFromString(await response.text(), 'text/html').querySelector('.working');
  if (!there) throw new Error(`${page}: no working`);
  return [...there.children].filter(({ tagName }) => tagName !== 'SUMMARY');
}

/** Keeps the working beside the form: of either management, and in a guide only once somebody asks for it. Returns what follows each change. */
export function startWorking(box: HTMLElement, calculator: Calculator, page: string): (change: Change) => void {
  const working = box.querySelector<HTMLDetailsElement>('.working');
  const away = working?.querySelector<HTMLElement>('[data-steps-away]');
  let latest: Change | undefined;
  let side = 'this';
  let fill: typeof import('../../calculators/ui/fillWorking.tsx').fillWorking | undefined;
  const work = () => {
    if (!working || !latest) return;
    // Until what fills them is there, the steps of the example must not pass for somebody's own.
    working.classList.toggle('is-waiting', fill === undefined);
    if (!fill) return;
    const { form, outcome, other } = latest;
    const isThat = side === 'that' && other !== null;
    const sides = working.querySelector<HTMLElement>('[data-working-sides]');
    if (sides) sides.hidden = other === null;
    for (const button of working.querySelectorAll<HTMLElement>('[data-side]'))
      button.setAttribute('aria-pressed', String((button.dataset['side'] === 'that') === isThat));
    const [texts, worked] = isThat ? [otherTexts(calculator, form), other] : [form.this, outcome];
    working.classList.toggle('is-waiting', worked === null);
    if (texts && worked) fill(working, calculator, texts, worked);
  };
  const load = async () => {
    try {
      fill ??= (await import('../../calculators/ui/fillWorking.tsx')).fillWorking;
      work();
    } catch (error) {
      // The next opening tries again.
      console.info(error);
    }
  };
  working?.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-side]') : null;
    if (!button) return;
    side = button.dataset['side'] ?? 'this';
    work();
  });
  const bring = async () => {
    if (!working?.open || !away?.isConnected) return;
    try {
      const steps = await stepsOf(page);
      if (away.isConnected) away.replaceWith(...steps);
      work();
    } catch (error) {
      // The link to the page where they stand is still there. The next opening tries again.
      console.info(error);
    }
  };
  working?.addEventListener('toggle', () => void load());
  if (working) setTimeout(() => void load(), aheadMs);
  if (working && away) {
    working.addEventListener('toggle', () => void bring());
    void bring();
  }
  return (change) => {
    latest = change;
    work();
  };
}
