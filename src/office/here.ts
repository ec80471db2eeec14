/** What an office's file says on this page, where its script has taken it: see `public/office.js`. */
declare global {
  /** Text of the values: `{}` where no office has filled the file in, empty where it is missing or cannot be read at all. */
  var holdwaterOffice: string | undefined;
}
/** Name of the office's values beside those of the shipped kinds of country. public/country.js and src/scripts/kept.ts know it. */
export const officeSlug = 'office';
/** A file that cannot be used is as if it were not there. */
export function setOfficeAside(): void {
  globalThis.holdwaterOffice = '{}';
}
