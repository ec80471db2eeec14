// Storage that may be switched off: then nothing is kept, and nothing breaks.
type Storage = 'localStorage' | 'sessionStorage';

export const unitsKey = 'holdwater-units';
/** Where a record stays: one for all calculators that ask for it by this name. public/opening.js knows the beginning of this key. */
export const recordKeyOf = (name: string): string => `holdwater-record:${name}`;
/** Whether the record that forms kept by themselves was offered to a place. */
export const oldRainKey = 'holdwater-old-rain';
/** Kind of country that was picked on /local/. public/country.js knows this key. */
export const countryKey = 'holdwater-country';
/** Which place is open. public/opening.js knows this key. */
export const placeKey = 'holdwater-open';
/** Changes that are on their way into the store, by window. */
export const journalPrefix = 'holdwater-journal:';
/** Left by the place's own page, and by pages of a folder that found it out: whoever finds it shares their store. */
export const sharedKey = 'holdwater-shared';
/** Where a guide's form keeps what was typed. public/opening.js knows the beginning of this key. */
export const formKeyOf = (box: HTMLElement): string => `holdwater-form:${location.pathname}#${box.dataset['name'] ?? ''}`;

/** Where one of its tools keeps a start or a count. */
export const toolKeyOf = (box: HTMLElement, tool: string): string => `holdwater-tool:${location.pathname}#${box.dataset['name'] ?? ''}:${tool}`;

/** The visit that is open in this window: what is kept goes into it. */
export const visitKey = 'holdwater-visit';

export function kept(storage: Storage, key: string): string | null {
  try {
    return window[storage].getItem(key);
  } catch {
    return null;
  }
}
/** The kind of country whose values count here: the one that was picked; where nobody picked, not even none, an office's own. */
export const pickedCountry = (): string | null =>
  kept('localStorage', countryKey) ?? ((globalThis.holdwaterOffice ?? '{}') === '{}' ? null : 'office');
/** Says whether it could; the page works without. */
export function keep(storage: Storage, key: string, text: string): boolean {
  try {
    window[storage].setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
export function forget(storage: Storage, key: string): void {
  try {
    window[storage].removeItem(key);
  } catch {
    // The page works without.
  }
}
export function isAnyKept(storage: Storage, prefix: string): boolean {
  try {
    return Object.keys(window[storage]).some((key) => key.startsWith(prefix));
  } catch {
    return false;
  }
}
