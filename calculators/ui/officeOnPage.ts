/** The office whose copy this is, as its file has told the page; nothing of it where there is none. */
export interface OfficeOnPage {
  /** Name and phone. */
  readonly office: string | undefined;
  /** Whom it says to call, a line each, before the national lines. */
  readonly officeLines: string | undefined;
}
export function officeOnPage(): OfficeOnPage {
  const { office, officeLines } = document.documentElement.dataset;
  return { office, officeLines };
}
