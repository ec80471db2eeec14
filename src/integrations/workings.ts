import { readdirSync, readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import type { Calculator } from '../../calculators/kit/define.ts';
import { drawWorking } from '../catalog/drawWorking.ts';
import { underBase } from '../site/href.ts';
import { type Cited, shortCitations } from '../sources/shortCitation.ts';

const catalog = new URL('../../calculators/catalog/', import.meta.url);
const sourceFiles = new URL('../../content/sources/', import.meta.url);

const slugs = (): readonly string[] =>
  readdirSync(catalog, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);

/** Every source as its file holds it; the schema of the site's content has checked them. */
const citedSources = (): readonly Cited[] =>
  readdirSync(sourceFiles)
    .filter((file) => file.endsWith('.json'))
    .map((file) => {
      const source: Omit<Cited, 'id'> = JSON.parse(readFileSync(new URL(file, sourceFiles), 'utf8'));
      return { id: file.replace(/\.json$/, ''), authors: source.authors, year: source.year };
    });

const all = 'virtual:workings';
const one = 'virtual:working/';

/** The drawn working of each calculator as a script chunk of its own: `virtual:workings` maps a slug to what imports it. No `fetch`, so that it also opens from a disk. */
export function workings(base: string): Plugin {
  return {
    name: 'workings',
    resolveId: (id) => (id === all || id.startsWith(one) ? `\0${id}` : undefined),
    async load(id) {
      if (id === `\0${all}`) {
        const lines = slugs().map((slug) => `${JSON.stringify(slug)}: () => import(${JSON.stringify(one + slug)})`);
        return `export default { ${lines.join(', ')} };`;
      }
      if (!id.startsWith(`\0${one}`)) return undefined;
      const slug = id.slice(one.length + 1);
      const { default: calculator }: { default: Calculator } = await import(/* @vite-ignore */ new URL(`${slug}/definition.ts`, catalog).href);
      const citations = shortCitations(citedSources());
      const html = drawWorking(calculator, {
        short: (key) => {
          const found = citations.get(key);
          if (!found) throw new Error(`${slug}: no source "${key}" in content/sources`);
          return found.short;
        },
        href: (key) => underBase(base, `/sources/#${key}`),
      });
      return `export default ${JSON.stringify(html)};`;
    },
  };
}
