import '../office/takeLate.ts';
import { folder } from '../site/folder.ts';
import { href } from '../site/href.ts';
import { ownScript } from '../site/ownScript.ts';

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));

addEventListener('keydown', (event) => {
  if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
  event.preventDefault();
  document.querySelector<HTMLInputElement>('#find, #query')?.focus();
});

/** What scrolls sideways must be in reach of the arrow keys; what does not must not be a stop on the way. */
const reachScrollers = (): void => {
  for (const box of document.querySelectorAll<HTMLElement>('.katex-display, .wide')) {
    // To measure what lies folded would lay it out, and fetch the fonts of formulas that nobody has opened.
    if (box.checkVisibility && !box.checkVisibility()) continue;
    if (box.scrollWidth > box.clientWidth) box.tabIndex = 0;
    else box.removeAttribute('tabindex');
  }
};
const quietMs = 300;
let waits = 0;
/** Once, when nothing has changed for a while: to look for what scrolls in a long table takes longer than a key, and the next one would wait for it. */
const reachOnceQuiet = (): void => {
  clearTimeout(waits);
  waits = window.setTimeout(reachScrollers, quietMs);
};
addEventListener('resize', reachOnceQuiet);
// A formula is as wide as its own letters once they have come.
document.fonts.addEventListener('loadingdone', reachOnceQuiet);
addEventListener('load', () => {
  // Nobody has typed yet, and whoever comes by keyboard is on the way.
  if ('requestIdleCallback' in window) requestIdleCallback(reachScrollers);
  else reachOnceQuiet();
  // Steps come after their fold was opened, other numbers make a formula wider, and another management beside the first leaves less room: who draws is not asked.
  new MutationObserver(reachOnceQuiet).observe(document.body, {
    subtree: true,
    childList: true,
    characterData: true,
    attributeFilter: ['open', 'class', 'hidden'],
  });
});

// An office's values: fetched only where its file holds some, or is wrong.
if ((globalThis.holdwaterOffice ?? '{}') !== '{}') void import('./office.ts');
/** Is the invented place open? Its id says so, and under this key lies which place is open: what reads them properly is not worth its weight on every page. */
const isDemoOpen = (): boolean => {
  try {
    return localStorage.getItem('holdwater-open')?.startsWith('demo-') === true;
  } catch {
    return false;
  }
};
if (isDemoOpen()) void import('../place/form/demoLine.ts').catch(console.info);

// Only a built site has a worker to register. A browser that refuses one (private window, blocked storage) still reads the site.
if (import.meta.env.PROD && 'serviceWorker' in navigator && !folder()) {
  /** On a calculator's own page its form comes first: a copy that is fetched and unpacked beside it would hold it up. Its scripts may never come. */
  const register = (looks: number): void => {
    if (looks > 0 && document.querySelector('[data-owns-address]:not([data-ready])')) {
      setTimeout(register, 1000, looks - 1);
      return;
    }
    navigator.serviceWorker
      .register(ownScript(href('/worker.js')))
      // Without a worker there is no copy to tell of.
      .then(async (registration) => registration && (await import('../copy/page/followCopy.ts')).followCopy())
      .catch(() => undefined);
  };
  addEventListener('load', () => register(8));
}
