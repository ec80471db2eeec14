import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { wordsOfCalculator } from '../../src/catalog/calculatorWords.ts';
import { anchorOf, findTerms, glossary, termsIn } from '../../src/guides/glossary.ts';
import { markTerms } from '../../src/integrations/markTerms.ts';
import { calculatorOf, calculators } from '../support/catalog.ts';

const termNames = (text: string): readonly string[] => findTerms(text).map(({ term }) => term.term);

describe('the glossary', () => {
  it('explains the words of this job', () => {
    expect(glossary.length).toBeGreaterThanOrEqual(95);
  });

  it('has one entry a word, and no form twice, nor as a phrase in another sense', () => {
    const forms = glossary.flatMap(({ term, forms, except }) => [term, ...forms, ...except]).map((form) => form.toLowerCase());
    expect(forms.filter((form, index) => forms.indexOf(form) !== index)).toEqual([]);
    expect(new Set(glossary.map(anchorOf)).size).toBe(glossary.length);
  });

  it.each(glossary.map((term) => [term.term, term] as const))('says what %s is in one plain sentence', (_, { plain, says }) => {
    expect(says).toMatch(/^[A-Z][^.!?]*\.$/);
    expect(says.split(/\s+/).length).toBeLessThanOrEqual(32);
    expect(plain).not.toMatch(/[.!?]$/);
    // A figure would need a source.
    expect(`${plain} ${says}`).not.toMatch(/\d/);
  });

  it('does not take what is gone for what is eaten', () => {
    // Of the half that is gone on range about half is trampled or lost, so a quarter of all is eaten: Texas A&M, B-5036, harvest efficiency.
    const half = glossary.find(({ term }) => term === 'take half, leave half');
    expect(half?.plain).not.toMatch(/\beat/);
    expect(half?.says).toMatch(/half is gone.*eaten about a quarter/);
  });
});

describe('finding words', () => {
  it('takes the longest, in either case and number', () => {
    expect(termNames('Animal unit months, not animal units.')).toEqual(['animal unit month', 'animal unit']);
    expect(termNames('STUBBLE and rills')).toEqual(['stubble', 'rill']);
  });
  it('leaves parts of other words alone', () => {
    expect(termNames('A truncated crustacean in the litterbox')).toEqual([]);
    expect(termNames('an outlet for cp and au')).toEqual([]);
  });
  it('leaves a word alone where it means something else', () => {
    expect(termNames('Grass creeps into rills.')).toEqual(['rill']);
    expect(termNames('Poultry litter, and snow without a crust of ice')).toEqual([]);
    expect(termNames('a creep for calves, litter, and a crust that sheds rain')).toEqual(['creep', 'litter', 'crust']);
    expect(termNames('as design storms do')).toEqual(['design storm']);
  });
  it('leaves them alone in the guides that use them so', () => {
    const marked = (slug: string): readonly string[] =>
      termsIn(readFileSync(new URL(`../../content/guides/${slug}.mdx`, import.meta.url), 'utf8')).map(({ term }) => term);
    for (const slug of ['saving-grass-for-winter', 'keeping-soil-home']) expect(marked(slug), slug).not.toContain('creep');
    expect(marked('saving-grass-for-winter')).not.toContain('crust');
    expect(marked('where-rain-goes')).toContain('design storm');
  });
  it('knows other names', () => {
    expect(termNames('AUM or head-months')).toEqual(['animal unit month', 'animal unit month']);
    expect(termsIn('No sacrifice paddock, no drylot').map(({ term }) => term)).toEqual(['sacrifice lot']);
  });
});

describe('the words under a calculator', () => {
  it('are those of its form and results', () => {
    const of = (slug: string): readonly string[] => wordsOfCalculator(calculatorOf(slug)).map(({ term }) => term);
    expect(of('carrying-capacity')).toEqual(expect.arrayContaining(['harvest efficiency', 'utilization']));
    expect(of('feed-hazards')).toEqual(expect.arrayContaining(['nitrate']));
    expect(of('feed-hazards')).not.toContain('harvest efficiency');
  });

  it('are not the everyday ones', () => {
    const all = calculators.flatMap(wordsOfCalculator);
    expect(all.length).toBeGreaterThan(20);
    expect(all.filter(({ everyday }) => everyday)).toEqual([]);
  });
});

describe('marking words in a guide', () => {
  interface Node {
    type: string;
    tagName?: string;
    name?: string;
    value?: string;
    properties?: Readonly<Record<string, unknown>>;
    children?: Node[];
  }
  const text = (value: string): Node => ({ type: 'text', value });
  const element = (tagName: string, ...children: Node[]): Node => ({ type: 'element', tagName, properties: {}, children });
  const marksIn = (node: Node): readonly string[] => [
    ...(node.tagName === 'button' ? (node.children ?? []).map(({ value }) => value ?? '') : []),
    ...(node.children ?? []).flatMap(marksIn),
  ];
  const mark = (...children: Node[]): Node => {
    const tree: Node = { type: 'root', children };
    markTerms({ guides: 'content/guides' })(tree);
    return tree;
  };

  it('marks the first use only, and keeps the sentence', () => {
    const tree = mark(element('p', text('Leave stubble. More stubble.')), element('p', text('Stubble again.')));
    expect(marksIn(tree)).toEqual(['stubble']);
    const [first] = tree.children ?? [];
    expect(first?.children?.map(({ value, tagName }) => value ?? tagName)).toEqual(['Leave ', 'span', ' More stubble.']);
    // The stop stays at its word.
    expect(first?.children?.[1]?.children?.map(({ value, tagName }) => value ?? tagName)).toEqual(['button', 'span', '.']);
  });

  it('goes into lists and strong words, not into headings, links, tables, code and parts', () => {
    const tree = mark(
      element('h2', text('Stubble')),
      element('p', element('a', text('stubble')), element('code', text('stubble'))),
      element('table', element('p', text('stubble'))),
      element('p', { type: 'mdxJsxTextElement', name: 'Cite', children: [text('stubble')] }),
      element('ul', element('li', element('strong', text('A headcut')))),
    );
    expect(marksIn(tree)).toEqual(['headcut']);
  });

  it('stops before a text is full of marks', () => {
    const all = glossary.filter(({ everyday }) => !everyday).map(({ term }) => term);
    expect(marksIn(mark(element('p', text(all.join('. ')))))).toHaveLength(12);
  });
});
