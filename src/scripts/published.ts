/**
 * The address of a page as it is handed on: at the office's own copy where it has named one, which a page on a disk or on a room's network has not itself.
 * `path` begins at the root of the site, without a slash.
 */
export function publishedAt(path: string, here: string): string {
  const { copyAt } = document.documentElement.dataset;
  return copyAt === undefined ? here : `${copyAt.replace(/\/$/, '')}/${path}`;
}
