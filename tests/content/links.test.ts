import { describe, expect, it } from 'vitest';
import { calculators } from '../support/catalog.ts';
import { attributesIn } from '../support/guideBlocks.ts';
import { guideTexts } from '../support/guideHeads.ts';

const guidesThere = new Set(guideTexts.map(({ slug }) => slug));

describe('guides and calculators', () => {
  it.each(guideTexts)('$slug names the calculators that stand in it', ({ body, head }) => {
    expect(
      attributesIn(body, 'Calculator', 'slug').filter((slug) => !head.calculators.includes(slug)),
      'add to `calculators` in its head',
    ).toEqual([]);
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

  it.each(calculators)('$slug is named by the guides that it names, and shown by the first of them', ({ slug, guides }) => {
    const guideOf = (guide: string) => guideTexts.find((each) => each.slug === guide);
    const missing = guides
      .filter((guide) => guideOf(guide)?.head.calculators.includes(slug) !== true)
      .map((guide) => `content/guides/${guide}.mdx: ${guideOf(guide) ? `add ${slug} to \`calculators\` in its head` : 'is not there'}`);
    expect(missing).toEqual([]);
    const body = guideOf(guides[0] ?? '')?.body ?? '';
    const isShown = attributesIn(body, 'Calculator', 'slug').includes(slug) || body.includes(`](/calculators/${slug}/)`);
    expect(isShown, `content/guides/${guides[0]}.mdx: add <Calculator slug="${slug}" /> where its question comes up`).toBe(true);
  });
});
