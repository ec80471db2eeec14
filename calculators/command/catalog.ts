import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Calculator } from '../kit/define.ts';
import { fetchWhole } from '../kit/fetchWhole.ts';

const folder = join(import.meta.dirname, '../catalog');

/** Every calculator's slug, in order: a folder of the catalog with a definition. */
export const slugs = (): readonly string[] =>
  readdirSync(folder)
    .filter((name) => existsSync(join(folder, name, 'definition.ts')))
    .sort();

export async function calculatorOf(slug: string): Promise<Calculator | undefined> {
  if (!slugs().includes(slug)) return undefined;
  const module: { readonly default: Calculator } = await import(`../catalog/${slug}/definition.ts`);
  return fetchWhole(module.default);
}
