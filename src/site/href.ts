/** A path of this site under the folder that a copy of it is served from: `/guides/x/` under `/field/` is `/field/guides/x/`. */
export const underBase = (base: string, path: string): string => `${base.replace(/\/$/, '')}${path.startsWith('/') ? '' : '/'}${path}`;

/** The one way to write an internal link. `path` starts at the site's own root. */
export const href = (path: string): string => underBase(import.meta.env.BASE_URL, path);
