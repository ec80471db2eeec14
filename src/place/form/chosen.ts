import { forget, keep, kept } from '../../scripts/kept.ts';
import { pageAt } from '../../site/folder.ts';
import type { Place } from '../model/place.ts';

// Which pastures and which water are chosen above a form: for as long as the window is open, and never in a link.

/** The link to which a result led, and what was chosen there. */
export const ledKey = 'holdwater-led';

/** `path` and `name` are of the form: its page, and what it is called there. */
export const chosenKey = (path: string, name: string): string => `holdwater-chosen:${path}#${name}`;
const keyOf = (box: HTMLElement): string => chosenKey(location.pathname, box.dataset['name'] ?? '');
export const idsIn = (text: string | null): readonly string[] => (text === null || text === '' ? [] : text.split(','));

export const chosenIn = (box: HTMLElement): readonly string[] => idsIn(kept('sessionStorage', keyOf(box)));
export function choose(box: HTMLElement, ids: readonly string[]): void {
  if (ids.length === 0) forget('sessionStorage', keyOf(box));
  else keep('sessionStorage', keyOf(box), ids.join(','));
}
export const placePageOf = (box: HTMLElement): string =>
  pageAt('../../place/', new URL(box.dataset['page'] ?? location.pathname, location.href).href);
/** Whose figures they are, in words: what is chosen, the place, and more. */
export const whoseOf = ({ pastures, water, name }: Place, ids: readonly string[], ...more: readonly string[]): string =>
  [...[...pastures, ...water].flatMap((each) => (ids.includes(each.id) ? [each.name] : [])), name, ...more].join(', ');
