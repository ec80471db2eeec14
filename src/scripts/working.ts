import workings from 'virtual:workings';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Change } from '../../calculators/ui/formProps.ts';
import { elementsOf, type Markup } from '../../calculators/ui/markup.ts';
import { otherTexts } from '../../calculators/ui/sides.ts';

/** Whoever prints soon after opening a page finds the steps there. */
const aheadMs = 1500;

/**
 * The drawn steps of a calculator, with holes for `fillWorking` to fill.
 * @throws Error if there is no such calculator or its chunk cannot be had
 */
export async function bringWorking(slug: string): Promise<readonly Markup[]> {
  const load = workings[slug];
  if (!load) throw new Error(`no working for ${slug}`);
  return (await load()).default;
}

/** From now on what formulas look like counts on the screen too. Not before one is drawn: their fonts make the browser lay out the whole page anew. */
export function showFormulas(): void {
  for (const sheet of document.querySelectorAll<HTMLLinkElement>('link[data-formulas]')) sheet.media = 'all';
}

/** Keeps the working under the form, of either management, while somebody looks at it. Returns what follows each change. */
export function startWorking(box: HTMLElement, calculator: Calculator): (change: Change) => void {
  const working = box.querySelector<HTMLDetailsElement>('.working');
  const print = matchMedia('print');
  let brought: { readonly drawn: readonly Markup[]; readonly fill: typeof import('../../calculators/ui/fillWorking.tsx').fillWorking } | undefined;
  let latest: Change | undefined;
  let side = 'this';
  const work = () => {
    if (!working || !latest || !brought || !(working.open || print.matches)) return;
    const away = working.querySelector('[data-steps-away]');
    if (away) {
      showFormulas();
      away.replaceWith(elementsOf(brought.drawn));
    }
    const { form, outcome, other } = latest;
    const isThat = side === 'that' && other !== null;
    const sides = working.querySelector<HTMLElement>('[data-working-sides]');
    if (sides) sides.hidden = other === null;
    for (const button of working.querySelectorAll<HTMLElement>('[data-side]'))
      button.setAttribute('aria-pressed', String((button.dataset['side'] === 'that') === isThat));
    const [texts, worked] = isThat ? [otherTexts(calculator, form), other] : [form.this, outcome];
    working.classList.toggle('is-waiting', worked === null);
    if (texts && worked) brought.fill(working, calculator, texts, worked);
  };
  const bring = async () => {
    try {
      const [drawn, { fillWorking }] = await Promise.all([bringWorking(calculator.slug), import('../../calculators/ui/fillWorking.tsx')]);
      brought ??= { drawn, fill: fillWorking };
      work();
    } catch (error) {
      // The link to the page where the example's steps stand is still there. The next opening tries again.
      console.info(error);
    }
  };
  working?.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-side]') : null;
    if (!button) return;
    side = button.dataset['side'] ?? 'this';
    work();
  });
  working?.addEventListener('toggle', () => {
    if (working.open) void bring();
  });
  print.addEventListener('change', work);
  if (working?.open) void bring();
  else if (working) setTimeout(() => void bring(), aheadMs);
  return (change) => {
    latest = change;
    work();
  };
}
