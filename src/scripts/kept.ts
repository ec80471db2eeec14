// Storage that may be switched off: then nothing is kept, and nothing breaks.
type Storage = 'localStorage' | 'sessionStorage';

export const unitsKey = 'holdwater-units';
/** Where a record stays: one for all calculators that ask for it by this name. public/opening.js knows the beginning of this key. */
export const recordKeyOf = (name: string): string => `holdwater-record:${name}`;
/** Where a guide's form keeps what was typed. public/opening.js knows the beginning of this key. */
export const formKeyOf = (box: HTMLElement): string => `holdwater-form:${location.pathname}#${box.dataset['name'] ?? ''}`;

export function kept(storage: Storage, key: string): string | null {
  try {
    return window[storage].getItem(key);
  } catch {
    return null;
  }
}
/** Says whether it could; the page works without. An empty text is forgotten. */
export function keep(storage: Storage, key: string, text: string): boolean {
  try {
    if (text === '') window[storage].removeItem(key);
    else window[storage].setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
