// Run by chunkEach.ts in a Node of its own, since a bundler's plugin cannot import definitions: prints slug and drawn working of every calculator as JSON.
import { readdirSync, readFileSync } from 'node:fs';
import { stdout } from 'node:process';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Markup } from '../../calculators/ui/markup.ts';
import { drawWorking } from '../catalog/drawWorking.ts';
import { underBase } from '../site/href.ts';
import { entryPath } from '../sources/entryPath.ts';
import { type Cited, shortCitations } from '../sources/shortCitation.ts';
import { markupOf } from './markupOf.ts';

const [, , base = '/'] = process.argv;
const catalog = new URL('../../calculators/catalog/', import.meta.url);
const sourceFiles = new URL('../../content/sources/', import.meta.url);

/** The schema of the site's content has checked these files. */
const sources = readdirSync(sourceFiles)
  .filter((file) => file.endsWith('.json'))
  .map((file): Cited => {
    const source: Omit<Cited, 'id'> = JSON.parse(readFileSync(new URL(file, sourceFiles), 'utf8'));
    return { ...source, id: file.replace(/\.json$/, '') };
  });
const citations = shortCitations(sources);
const addresses = new Map(sources.map((source) => [source.id, underBase(base, entryPath(source))]));

async function draw(slug: string): Promise<readonly [string, readonly Markup[]]> {
  const { default: calculator }: { default: Calculator } = await import(new URL(`${slug}/definition.ts`, catalog).href);
  const there = <Found>(found: Found | undefined, key: string): Found => {
    if (found === undefined) throw new Error(`${slug}: no source "${key}" in content/sources`);
    return found;
  };
  const links = { short: (key: string) => there(citations.get(key), key).short, href: (key: string) => there(addresses.get(key), key) };
  return [slug, markupOf(drawWorking(calculator, links))];
}

const slugs = readdirSync(catalog, { withFileTypes: true }).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []));
stdout.write(JSON.stringify(Object.fromEntries(await Promise.all(slugs.map(draw)))));
