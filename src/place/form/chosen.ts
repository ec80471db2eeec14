import { forget, keep, kept } from '../../scripts/kept.ts';

// Which pastures are chosen above a form: for as long as the window is open, and never in a link.

const keyOf = (box: HTMLElement): string => `holdwater-chosen:${location.pathname}#${box.dataset['name'] ?? ''}`;
export const idsIn = (text: string | null): readonly string[] => (text === null || text === '' ? [] : text.split(','));

export const chosenIn = (box: HTMLElement): readonly string[] => idsIn(kept('sessionStorage', keyOf(box)));
export function choose(box: HTMLElement, ids: readonly string[]): void {
  if (ids.length === 0) forget('sessionStorage', keyOf(box));
  else keep('sessionStorage', keyOf(box), ids.join(','));
}
export const placePageOf = (box: HTMLElement): string =>
  new URL('../../place/', new URL(box.dataset['page'] ?? location.pathname, location.href)).href;
