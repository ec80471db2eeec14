// Build only: every definition at once. Pages in the browser load one chunk, see scripts/calculator.tsx.
import type { Calculator } from '../../calculators/kit/define.ts';
import { fetchWhole } from '../../calculators/kit/fetchWhole.ts';

const modules = import.meta.glob<{ default: Calculator }>('../../calculators/catalog/*/definition.ts', { eager: true });

export const calculators: readonly Calculator[] = Object.values(modules)
  .map((module) => module.default)
  .sort((one, other) => one.slug.localeCompare(other.slug));

await Promise.all(calculators.map(fetchWhole));

export function calculatorOf(slug: string): Calculator {
  const found = calculators.find((each) => each.slug === slug);
  if (!found) throw new Error(`no calculator "${slug}" in calculators/catalog`);
  return found;
}
