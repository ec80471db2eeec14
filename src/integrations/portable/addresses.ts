/** A file of the built site that is a page without a folder of its own, or that only a server has a use for. */
const leftOut = /^(?:404\.html|worker\.js|site\.webmanifest|(?:copy|handbook|pictures)\/)/;
export const isLeftOut = (file: string): boolean => leftOut.test(file);

/** How many folders a file lies in, as steps back: `../../` for `guides/x/index.html`. */
export const backFrom = (file: string): string => '../'.repeat(file.split('/').length - 1);

/**
 * An address from the root of the site, as a file that lies in a folder names it: `/guides/x/?a=1#b` in `sheets/index.html` is `../guides/x/index.html?a=1#b`.
 * Any other address stays as it is.
 */
export function relative(address: string, file: string): string {
  const found = /^\/(?!\/)([^?#]*)(.*)$/s.exec(address);
  if (!found) return address;
  const [, path = '', rest = ''] = found;
  return `${backFrom(file)}${path === '' || path.endsWith('/') ? `${path}index.html` : path}${rest}`;
}

/** The same for the addresses in a sheet of style. */
export const relativeInSheet = (css: string, file: string): string =>
  css.replace(/url\((["']?)(\/(?!\/)[^"')]*)\1\)/g, (_, quote: string, address: string) => `url(${quote}${relative(address, file)}${quote})`);
