/** What an office's file says on this page, where its script has taken it: see `public/office.js`. */
declare global {
  var holdwaterOffice: string | undefined;
}
/** The file that the site ships with. */
const empty = '{}';
/** Name of the office's values beside those of the shipped kinds of country. public/country.js knows it. */
export const officeSlug = 'office';

/** The text of the office's values; nothing where there is no office. Empty where its file is missing or cannot be read at all. */
export const officeText = (): string | undefined => {
  const text = globalThis.holdwaterOffice;
  return text === empty ? undefined : text;
};
/** Told when the office's values stand in the page, or were found to be wrong. */
export const officeEvent = 'officeread';
/**
 * The address of a page as it is handed on: at the office's own copy where it has named one, which a page on a disk or on a room's network has not itself.
 * `path` begins at the root of the site, without a slash.
 */
export function publishedAt(path: string, here: string): string {
  const { copyAt } = document.documentElement.dataset;
  return copyAt === undefined ? here : `${copyAt.replace(/\/$/, '')}/${path}`;
}
/** A file that cannot be used is as if it were not there. */
export function setOfficeAside(): void {
  globalThis.holdwaterOffice = empty;
}
