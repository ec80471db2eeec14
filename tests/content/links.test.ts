import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../calculators/kit/define.ts';
import { root } from '../support/files.ts';
import { attributesIn } from '../support/guideBlocks.ts';
import { guideTexts } from '../support/guideHeads.ts';

const catalog = join(root, 'calculators/catalog');
const calculators: readonly Calculator[] = await Promise.all(
  readdirSync(catalog).map(async (slug): Promise<Calculator> => (await import(join(catalog, slug, 'definition.ts'))).default),
);
const guidesThere = new Set(guideTexts.map(({ slug }) => slug));

describe('guides and calculators', () => {
  it.each(guideTexts)('$slug names the calculators that stand in it', ({ body, head }) => {
    expect(attributesIn(body, 'Calculator', 'slug').filter((slug) => !head.calculators.includes(slug))).toEqual([]);
  });

  // That their pages name it follows from its head: `tests/site/pages.test.ts` looks.
  it.each(guideTexts)('$slug names calculators that are there', ({ head }) => {
    expect(head.calculators.filter((each) => !calculators.some(({ slug }) => slug === each))).toEqual([]);
  });

  it.each(guideTexts)('$slug leads on to a few others, and shows no local value twice', ({ slug, body, head }) => {
    expect(head.related.length).toBeGreaterThanOrEqual(2);
    expect(head.related.length).toBeLessThanOrEqual(5);
    expect(new Set([slug, ...head.related]).size).toBe(head.related.length + 1);
    expect(head.related.filter((each) => !guidesThere.has(each))).toEqual([]);
    const shown = attributesIn(body, 'Local', 'of');
    expect(shown).toEqual([...new Set(shown)]);
  });

  it.each(calculators)('$slug is named by the guides that it names', (calculator) => {
    expect(calculator.guides.length).toBeGreaterThan(0);
    const missing = calculator.guides.filter(
      (slug) => !guideTexts.some((guide) => guide.slug === slug && guide.head.calculators.includes(calculator.slug)),
    );
    expect(missing).toEqual([]);
  });
});
