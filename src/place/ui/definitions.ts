import type { Calculator } from '../../../calculators/kit/define.ts';

const definitions = import.meta.glob<{ default: Calculator }>('../../../calculators/catalog/*/definition.ts');

/** One calculator, fetched when it is needed; nothing where this copy has none of that name. */
export const definitionIn = (slug: string): Promise<Calculator> | undefined =>
  definitions[`../../../calculators/catalog/${slug}/definition.ts`]?.().then((found) => found.default);
/**
 * One that this copy has.
 * @throws RangeError where it has none of that name
 */
export async function definitionOf(slug: string): Promise<Calculator> {
  const found = await definitionIn(slug);
  if (!found) throw new RangeError(`no definition for ${slug}`);
  return found;
}
