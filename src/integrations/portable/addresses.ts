/** A file of the built site that is a page without a folder of its own, or that only a server has a use for. */
const leftOut = /^(?:404\.html|worker\.js|site\.webmanifest|(?:copy|handbook|no-signal|pictures)\/)/;
export const isLeftOut = (file: string): boolean => leftOut.test(file);

/** How many folders a file lies in, as steps back: `../../` for `guides/x/index.html`. */
export const backFrom = (file: string): string => '../'.repeat(file.split('/').length - 1);

/** A path of the site from its own root: in a site that was built for `/field/`, `/field/guides/` is `/guides/`. */
export const underRoot = (address: string, base: string): string => (address.startsWith(base) ? `/${address.slice(base.length)}` : address);

/**
 * An address from the root of the server, as a file that lies in a folder names it: `/guides/x/?a=1#b` in `sheets/index.html` is `../guides/x/index.html?a=1#b`.
 * Any other address stays as it is. `base` is the folder of the server that the site was built for, with a stroke at its end.
 */
export function relative(address: string, file: string, base: string): string {
  const found = /^\/(?!\/)([^?#]*)(.*)$/s.exec(underRoot(address, base));
  if (!found) return address;
  const [, path = '', rest = ''] = found;
  return `${backFrom(file)}${path === '' || path.endsWith('/') ? `${path}index.html` : path}${rest}`;
}

/** The same for the addresses in a sheet of style. */
export const relativeInSheet = (css: string, file: string, base: string): string =>
  css.replace(/url\((["']?)(\/(?!\/)[^"')]*)\1\)/g, (_, quote: string, address: string) => `url(${quote}${relative(address, file, base)}${quote})`);
