// Reads the answer and its cautions aloud once typing has paused: each key changes them, and every change would be told. Like what keeps the focus it comes behind
// all that can be tapped, and works on the page as it stands.
import { units } from '../units/units.ts';

/** What can be read aloud, a line each. */
interface Aloud {
  readonly cautions: readonly string[];
  readonly answer: readonly string[];
}
/** A pause this long ends a number. */
const pauseMs = 900;
/** Long enough to be taken up by what reads aloud. Then it is gone: nobody shall find the answer twice. */
const staysMs = 5000;

/** A figure with its unit in words: `in` would be heard as the word. One alone keeps its own, for want of `inch`. */
export function sayFigure(figure: string, unit: string, what: string): string {
  const words = figure === '1' || unit === '' ? undefined : Object.values(units).find(({ print }) => print === unit)?.words;
  const isSpelledOut = words === undefined || `${words} `.startsWith(`${unit} `);
  return [figure, isSpelledOut ? unit : words, what].filter((each) => each !== '').join(' ');
}
/** The lines that are new since then: of an answer all, of cautions those that came. */
export function newLines(before: Aloud, now: Aloud): readonly string[] {
  const answer = now.answer.join() === before.answer.join() ? [] : now.answer;
  return [...now.cautions.filter((each) => !before.cautions.includes(each)), ...answer];
}

/** Begins with what stands there, which is no news. */
export function readAloud(form: Element): void {
  const textsOf = (parts: string): readonly string[] => [...form.querySelectorAll(parts)].map(({ textContent }) => textContent?.trim() ?? '');
  const toldNow = (): Aloud => {
    const [[figure], [unit = ''], [what = '']] = [textsOf('.big-figure'), textsOf('.big-unit'), textsOf('.big-what')];
    return {
      cautions: textsOf('.screen-cautions summary > .bar-lead'),
      answer: figure === undefined ? textsOf('.answer :is(.stamp, li)') : [sayFigure(figure, unit, what), ...textsOf('.answer .range')],
    };
  };
  let before = toldNow();
  let timer = 0;
  const region = document.createElement('div');
  region.className = 'unseen';
  region.role = 'status';
  form.append(region);
  const say = (): void => {
    const now = toldNow();
    const lines = newLines(before, now);
    before = now;
    if (lines.length === 0) return;
    region.replaceChildren(...lines.map((line) => Object.assign(document.createElement('p'), { textContent: line })));
    timer = window.setTimeout(() => region.replaceChildren(), staysMs);
  };
  const watch = new MutationObserver(() => {
    clearTimeout(timer);
    timer = window.setTimeout(say, pauseMs);
  });
  for (const part of form.querySelectorAll('.answer, .screen-cautions')) watch.observe(part, { subtree: true, childList: true, characterData: true });
}
