import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Calculator } from '../../calculators/kit/define.ts';
import { fetchWhole } from '../../calculators/kit/fetchWhole.ts';
import type { Scalar } from '../../calculators/kit/quantities.ts';
import { root } from './files.ts';
import { isWanted } from './mutated.ts';

/** A link as somebody may have kept it, with what it said. */
export interface FrozenLink {
  readonly query: string;
  readonly results: Readonly<Record<string, Scalar>>;
  /** The results of the other management, where the link compares two. */
  readonly that?: Readonly<Record<string, Scalar>>;
}

const catalog = 'calculators/catalog';
/** Path of one file of a calculator, as a message names it. */
export const fileOf = (slug: string, file: string): string => `${catalog}/${slug}/${file}`;
/** What a file of a calculator exports, or undefined where it is not there. */
export const loadFrom = async <T>(slug: string, file: string): Promise<T | undefined> =>
  existsSync(join(root, fileOf(slug, file))) ? (await import(join(root, fileOf(slug, file)))).default : undefined;

/** Every folder of the catalog, or those in which faults are put on purpose. */
export const slugs: readonly string[] = readdirSync(join(root, catalog)).filter(isWanted);
const definitions = await Promise.all(slugs.map((slug) => loadFrom<Calculator>(slug, 'definition.ts')));
/** Every definition; a folder without one fails a test of its own. */
export const calculators: readonly Calculator[] = definitions.filter((each) => each !== undefined);
await Promise.all(calculators.map(fetchWhole));
/** @throws RangeError for a slug without a definition */
export function calculatorOf(slug: string): Calculator {
  const found = calculators.find((each) => each.slug === slug);
  if (!found) throw new RangeError(`no calculator "${slug}" in ${catalog}`);
  return found;
}
