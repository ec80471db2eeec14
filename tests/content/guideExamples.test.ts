import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import { toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { examples } from '../../content/place/place.ts';
import { calculatorOf } from '../support/catalog.ts';
import { guideTexts } from '../support/guideHeads.ts';

const inGuides = guideTexts.flatMap(({ slug: guide, head, body }) =>
  Object.entries(head.examples).map(([name, example]) => ({ guide, name, body, ...example })),
);

describe.each(inGuides)('example $name of $guide', ({ name, slug, query, says, body }) => {
  it('computes, opens without a notice and comes back as the same link', () => {
    const calculator = calculatorOf(slug);
    const { form, notices } = fromLink(calculator, query);
    expect(notices).toEqual([]);
    expect(toLink(calculator, form)).toBe(query);
    expect(() => runQuery(calculator, query)).not.toThrow();
  });
  it('says what it shows in one sentence', () => {
    expect(says).toMatch(/^[A-Z0-9].*[^.!?]\.$/);
  });
  it('stands in the text of its guide', () => {
    expect(body).toMatch(new RegExp(`<(Example|Computed)\\s[^>]*\\bname="${name}"`));
  });
});

// A head count brings its own word: 46 head of cows, not 46 head cows.
it.each(guideTexts)('puts no kind of stock right behind a head count: $slug', ({ body }) => {
  expect(body.match(/of="\w+Head"[^>]*\/> (?:cows|pairs|calves|heifers|bulls|ewes|stockers|of (?:them|those))\b/g) ?? []).toEqual([]);
});

it('no two examples have one name', () => {
  const names = [...Object.keys(examples), ...inGuides.map(({ name }) => name)];
  expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
});
