import { describe, expect, it } from 'vitest';
import { dialed, nationalLines } from '../../calculators/kit/helpLines.ts';
import { calculators } from '../../src/catalog/catalog.ts';
import { attributes, dist, textOf } from './builtSite.ts';

const dials = (html: string): readonly string[] => attributes(html, 'href').filter((href) => href.startsWith('tel:'));
const all = nationalLines.map((line) => `tel:${dialed(line).dials}`);

describe('the lines to call', () => {
  it.each(calculators.map((calculator) => ({ slug: calculator.slug, calculator })))(
    'stand on the page of $slug if it weighs on people',
    ({ slug, calculator }) => {
      const html = textOf(dist, `calculators/${slug}/index.html`);
      const dialable = dials(html);
      if (!calculator.weighsOnPeople) return expect(dialable).toEqual([]);
      // Right under the answer, in short, then all of them.
      expect(dialable.slice(0, 1)).toEqual(['tel:988']);
      expect(dialable.slice(-all.length)).toEqual(all);
      expect(html).toContain('class="short-help"');
      return expect(html).toContain('aria-label="Someone to talk to"');
    },
  );
  it('stand on the page about cautions', () => {
    expect(dials(textOf(dist, 'about/index.html'))).toEqual(all);
  });
});
