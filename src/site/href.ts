import { folder, pageAt } from './folder.ts';

/** A path of this site under the folder that a copy of it is served from: `/guides/x/` under `/field/` is `/field/guides/x/`. */
export const underBase = (base: string, path: string): string => `${base.replace(/\/$/, '')}${path.startsWith('/') ? '' : '/'}${path}`;

/** The one way to write an internal link. `path` starts at the site's own root. */
export function href(path: string): string {
  const opened = folder();
  return opened ? pageAt(path.replace(/^\//, ''), opened.root) : underBase(import.meta.env.BASE_URL, path);
}
