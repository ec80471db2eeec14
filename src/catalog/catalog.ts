// Build only: every definition at once. Pages in the browser load one chunk, see scripts/calculator.tsx.
import type { Calculator } from '../../calculators/kit/define.ts';
import { fetchReaders } from '../../calculators/kit/record/fetchReaders.ts';

const modules = import.meta.glob<{ default: Calculator }>('../../calculators/catalog/*/definition.ts', { eager: true });

export const calculators: readonly Calculator[] = Object.values(modules)
  .map((module) => module.default)
  .sort((one, other) => one.slug.localeCompare(other.slug));

await Promise.all(calculators.map(({ inputs }) => fetchReaders(inputs)));

export function calculatorOf(slug: string): Calculator {
  const found = calculators.find((each) => each.slug === slug);
  if (!found) throw new Error(`no calculator "${slug}" in calculators/catalog`);
  return found;
}
