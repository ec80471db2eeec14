// Somebody who does one thing after another without a plan: types, chooses, presses, opens, turns the phone, prints, takes back, reloads. What is done hangs on
// one number, so that each walk can be taken again.
import { expect, type Page } from '@playwright/test';
import fc from 'fast-check';
import { keepsFocus, standsStill } from './forms.ts';

/** Where somebody wanders. */
export interface Ground {
  /** Holds all that is typed and pressed. */
  readonly root: string;
  /** What may be pressed in there. */
  readonly buttons: string;
  readonly undo: string;
  /** Is there once the page is alive. */
  readonly ready: string;
  /** What must be right there after each step, beyond what must be right anywhere; told in words where it is not. */
  readonly alsoWrong?: (root: Element) => readonly string[];
}

const typed = ['', '0', '-5', '1e9', 'abc', '12,5', '1 1/2', '  7 ', '0.001', '3', '40', '250', '1,200'];
const days = ['2024-02-29', '2026-12-31', '1999-01-01', '', '2027-06-15'];
const widths = [320, 360, 390, 430, 844, 1280];
const kinds = ['type', 'type', 'type', 'type', 'choose', 'choose', 'press', 'press', 'press', 'open', 'turn', 'paper', 'undo', 'reload'] as const;
const stepOf = fc.record({ kind: fc.constantFrom(...kinds), pick: fc.nat(9999), value: fc.nat(9999) });
type Step = typeof stepOf extends fc.Arbitrary<infer Each> ? Each : never;

/** Does it with an event of the page, and says what was done. */
const actIn = (page: Page, { root, buttons }: Ground, { kind, pick, value }: Step): Promise<string> =>
  page.evaluate(
    ({ root, kind, pick, value, selector, words }) => {
      const within = document.querySelector(root);
      if (!within) throw new Error('nothing to wander in');
      const all = [...within.querySelectorAll<HTMLElement>(selector)].filter((each) => each.checkVisibility() && !each.matches(':disabled'));
      const one = all[pick % all.length];
      if (!one) return `nothing to ${kind}`;
      const name = one.id || one.getAttribute('aria-label') || one.textContent?.trim().slice(0, 40) || one.tagName;
      const tell = (event: string) => one.dispatchEvent(new Event(event, { bubbles: true }));
      one.focus({ preventScroll: true });
      if (one instanceof HTMLSelectElement) {
        one.selectedIndex = value % one.options.length;
        tell('input');
        tell('change');
        return `choose ${name} ${one.value}`;
      }
      if (kind !== 'type' || !(one instanceof HTMLInputElement || one instanceof HTMLTextAreaElement)) {
        one.click();
        return `${kind} ${name}`;
      }
      const list = one.type === 'date' ? words.days : words.typed;
      one.value = list[value % list.length] ?? '';
      tell('input');
      tell('change');
      one.blur();
      return `type ${name} "${one.value}"`;
    },
    {
      root,
      kind,
      pick,
      value,
      words: { typed, days },
      selector:
        { type: 'input:not([type=radio], [type=checkbox], [type=file]), textarea', choose: 'select, [type=radio], [type=checkbox]', press: buttons }[
          kind as string
        ] ?? 'summary',
    },
  );

async function take(page: Page, ground: Ground, step: Step): Promise<string> {
  if (step.kind === 'turn') {
    const width = widths[step.value % widths.length] ?? 390;
    await page.setViewportSize({ width, height: 844 });
    return `turn ${width}`;
  }
  if (step.kind === 'paper') {
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await page.emulateMedia({ media: 'screen' });
    return 'paper';
  }
  if (step.kind === 'reload') {
    await page.reload();
    await page.locator(ground.ready).waitFor();
    await keepsFocus(page);
    return 'reload';
  }
  if (step.kind === 'undo') {
    const undo = page.locator(`${ground.undo}:enabled:visible`).first();
    if ((await undo.count()) === 0) return 'nothing to undo';
    await undo.click();
    return 'undo';
  }
  return actIn(page, ground, step);
}

/** What is wrong with what stands there now, wherever it stands. */
const wrongIn = (page: Page, root: string): Promise<readonly string[]> =>
  page.locator(root).evaluate((within) => {
    const wrong: string[] = [];
    const nonsense = /.{0,30}(\bNaN\b|\bundefined\b|\bInfinity\b|\[object |\bnull\b).{0,30}/;
    const words = nonsense.exec(within.textContent ?? '');
    if (words) wrong.push(`says ${words[0]}`);
    for (const svg of within.querySelectorAll('svg')) {
      const drawn = /[^<]{0,60}(NaN|Infinity|undefined)/.exec(svg.outerHTML);
      if (drawn) wrong.push(`draws ${drawn[0]}`);
    }
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth) wrong.push(`${scrollWidth} px in ${clientWidth}`);
    return wrong;
  });

/** What was built for a phone is drawn anew for another width, and must be for the first one again. */
const turned: readonly Step[] = [844, 390].map((width) => ({ kind: 'turn', pick: 0, value: widths.indexOf(width) }));

/** The phone turned and turned back, then so many steps by one number. After each nothing was thrown, and nothing is wrong. Returns what was done. */
export async function wander(page: Page, ground: Ground, { seed, steps }: { readonly seed: number; readonly steps: number }): Promise<string> {
  const heard: string[] = [];
  page.on('pageerror', ({ message }) => heard.push(message));
  page.on('console', (message) => message.type() === 'error' && heard.push(message.text()));
  // What asks before it leaves or forgets is answered yes.
  page.on('dialog', (dialog) => dialog.accept());
  await keepsFocus(page);
  const done: string[] = [];
  for (const step of [...turned, ...fc.sample(stepOf, { seed, numRuns: steps })]) {
    done.push(await take(page, ground, step));
    await standsStill(page.locator(ground.root), 200);
    const isTap = /^(?:choose|press|open) /.test(done.at(-1) ?? '');
    const fell = isTap && (await page.evaluate(() => document.activeElement === document.body)) ? ['the focus fell to the top of the page'] : [];
    const also = ground.alsoWrong ? await page.locator(ground.root).evaluate(ground.alsoWrong) : [];
    expect([...heard, ...(await wrongIn(page, ground.root)), ...also, ...fell], done.join('; ')).toEqual([]);
  }
  return done.join('; ');
}
