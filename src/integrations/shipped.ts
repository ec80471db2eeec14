import type { Plugin } from 'vite';
import { shippedPackages } from '../site/shippedPackages.ts';

/** Whose a module or an asset is: the innermost package that holds it, none for what is our own. */
export function packageOf(id: string): string | undefined {
  // What the bundler adds of its own.
  if (id === '\0rolldown/runtime.js') return 'rolldown';
  const inside = id.split('node_modules/').at(-1);
  if (inside === undefined || !id.includes('node_modules/')) return undefined;
  return /^(?:@[^/]+\/)?[^/?]+/.exec(inside)?.[0];
}

/** What differs between the packages that are shipped and those that are listed, as sentences. */
export function unlike(shipped: ReadonlySet<string>, listed: readonly string[] = shippedPackages): readonly string[] {
  return [
    ...[...shipped]
      .filter((name) => !listed.includes(name))
      .map((name) => `${name} is shipped: add it to src/site/shippedPackages.ts, so that its license is shown`),
    ...listed.filter((name) => !shipped.has(name)).map((name) => `${name} is no longer shipped: take it out of src/site/shippedPackages.ts`),
  ];
}

/** Remembers over all parts of a build which package is in which file: scripts of the browser and of its workers, styles and fonts. */
export function namesShipped(): {
  readonly plugin: Plugin;
  readonly forWorkers: Plugin;
  readonly ownersOf: (files: readonly string[]) => ReadonlySet<string>;
} {
  const ownersByFile = new Map<string, Set<string>>();
  const isStyle = (id: string): boolean => /\.css(?:$|\?)/.test(id);
  /** Styles go into sheets that the bundler names later. */
  const sheets = 'sheets';
  const collecting = (name: string, isCodeShipped: (environment: string) => boolean): Plugin => ({
    name,
    generateBundle(_, bundle) {
      const keep = (file: string, id: string): void => {
        const owner = packageOf(id);
        if (owner !== undefined) ownersByFile.set(file, (ownersByFile.get(file) ?? new Set()).add(owner));
      };
      for (const part of Object.values(bundle)) {
        if (part.type === 'asset') for (const id of part.originalFileNames) keep(part.fileName, id);
        else
          for (const [id, { renderedLength }] of Object.entries(part.modules)) {
            if (isStyle(id)) keep(sheets, id);
            else if (renderedLength > 0 && isCodeShipped(this.environment.name)) keep(part.fileName, id);
          }
      }
    },
  });
  return {
    plugin: collecting('names-shipped', (environment) => environment === 'client'),
    forWorkers: collecting('names-shipped-by-workers', () => true),
    ownersOf: (files) => new Set([sheets, ...files].flatMap((file) => [...(ownersByFile.get(file) ?? [])])),
  };
}
