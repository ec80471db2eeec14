// This copy as a folder that is opened from a disk: its own first script, src/integrations/portable/runtime.js, leaves there what the pages need to know of it.
declare global {
  /** There in a folder's pages alone. */
  var holdwaterFolder: Folder | undefined;
}
interface Folder {
  /** Address of the folder itself, with a stroke at its end. */
  readonly root: string;
  /** What a file of data under the folder holds: nothing can be fetched from a disk. Rejects where it cannot be had. */
  readonly read: (path: string) => Promise<unknown>;
}
export const folder = (): Folder | undefined => globalThis.holdwaterFolder;

/** A page of these, seen from another. No server finds the file of a page in a folder, so it is named there. */
export function pageAt(path: string, from: string): string {
  const address = new URL(path, from);
  if (folder()) address.pathname = address.pathname.replace(/\/$/, '/index.html');
  return address.href;
}

/** What to do where a part of a page did not come. */
export const loadAgain = (): string =>
  folder() ? 'Its file may be missing from this folder: extract the zip again, all of it.' : 'Load the page again when there is signal.';
