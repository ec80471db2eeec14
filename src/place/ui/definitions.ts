import type { Calculator } from '../../../calculators/kit/define.ts';

const definitions = import.meta.glob<{ default: Calculator }>('../../../calculators/catalog/*/definition.ts');

/**
 * One calculator, fetched when it is needed.
 * @throws RangeError where this copy has none of that name
 */
export async function definitionOf(slug: string): Promise<Calculator> {
  const load = definitions[`../../../calculators/catalog/${slug}/definition.ts`];
  if (!load) throw new RangeError(`no definition for ${slug}`);
  return (await load()).default;
}
