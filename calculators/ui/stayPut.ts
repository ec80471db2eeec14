import { useLayoutEffect, useRef } from 'preact/hooks';

/** Where what somebody is typing in stands on the glass; nothing where nobody is. */
function topOfFocused(): number | undefined {
  const focused = document.activeElement;
  return focused?.closest('form') ? focused.getBoundingClientRect().top : undefined;
}
function scrollBackTo(before: number | undefined): void {
  const now = topOfFocused();
  if (before !== undefined && now !== undefined) scrollBy({ top: now - before, behavior: 'instant' });
}

/** While what stands above it goes or comes, what somebody is typing in stays where it is: browsers hold it in some forms and not in others. */
export function stayPut(draw: () => void): void {
  const before = topOfFocused();
  draw();
  scrollBackTo(before);
}
/** The same as a form draws itself without its answer, or with it again. */
export function useStayPut(hasAnswer: boolean): void {
  const had = useRef(hasAnswer);
  const before = had.current === hasAnswer ? undefined : topOfFocused();
  had.current = hasAnswer;
  useLayoutEffect(() => scrollBackTo(before), [hasAnswer]);
}
