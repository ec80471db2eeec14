// A tap that takes the tapped thing away leaves whoever has a keyboard or a screen reader at the top of the page. Once this is there, which comes behind all that
// can be tapped, the focus goes to what stands where that was.

/** Nothing of it opens a keyboard on the glass unasked. Of a question the whole: a key that is held down must not answer it. */
const goal = '[role=alert], h2, h3, h4, summary, button:enabled, a[href], [type=radio], [type=checkbox]';
/** Whatever the key goes through, too. */
const stop = `${goal}, input, select, textarea, [tabindex]`;
const all = (selector: string): readonly HTMLElement[] => [...document.querySelectorAll<HTMLElement>(selector)];

/** What has the focus, or was tapped where a tap gives none; what stood before it, and what was unfolded. */
let last: HTMLElement | null = null;
let before: ReadonlySet<Element>;
let unfolded: readonly HTMLElement[];
const follow = ({ target }: Event): void => {
  last = target instanceof Element ? target.closest<HTMLElement>(stop) : null;
  const stops = all(stop);
  before = new Set(last ? stops.slice(0, stops.indexOf(last)) : []);
  unfolded = all('[aria-expanded=true]');
};
addEventListener('focusin', follow);
addEventListener('click', follow, true);

new MutationObserver((records) => {
  const { activeElement, body } = document;
  const was = last;
  if (!was || (activeElement && activeElement !== body && !activeElement.matches(':disabled'))) return;
  if (!was.matches(':disabled') && !records.some(({ removedNodes }) => [...removedNodes].some((node) => node.contains(was)))) return;
  const now = all(stop).filter((each) => each.checkVisibility?.() !== false);
  const place = now.findLastIndex((each) => before.has(each)) + 1;
  const isGoal = (each: Element): boolean => each.matches(goal);
  const below = now.slice(place).find(isGoal);
  const top = (each: Element | undefined): number => each?.getBoundingClientRect().top ?? 0;
  const isFar = !below?.closest('main') || top(below) - top(now[place - 1]) > innerHeight / 2;
  // Itself, moved or drawn anew elsewhere; else what stands with it; else what unfolds it again.
  const to = [
    was,
    document.getElementById(was.id),
    now.find(({ parentNode }) => parentNode === was.parentNode),
    unfolded.find((each) => each.matches('[aria-expanded=false]')),
    isFar ? now.slice(0, place).findLast(isGoal) : below,
  ].find((each): each is HTMLElement => each?.isConnected === true && !each.matches(':disabled'));
  to?.focus({ preventScroll: true });
  if (to && document.activeElement !== to) {
    to.tabIndex = -1;
    to.focus({ preventScroll: true });
  }
  to?.scrollIntoView({ block: 'nearest' });
}).observe(document, { subtree: true, childList: true, attributeFilter: ['disabled'] });

export {};
