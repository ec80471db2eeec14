import { expect, it } from 'vitest';
import { toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { givenLink } from '../../src/place/offer/givenLink.ts';
import { calculatorOf, calculators } from '../support/catalog.ts';
import { aPlace } from './aPlace.ts';
import { demo, fill } from './filled.ts';

it.each(calculators.map(({ slug }) => slug))('%s opens from the link with every figure that the place filled it with', (slug) => {
  const calculator = calculatorOf(slug);
  for (const place of [demo, aPlace(), aPlace({ pastures: [], herd: [] })]) {
    const filled = fill(slug, { place });
    const { form, notices } = fromLink(calculator, givenLink(calculator, filled, 'us'));
    expect(notices).toEqual([]);
    expect(toLink(calculator, form)).toBe(toLink(calculator, { this: filled.texts, that: null }));
  }
});

it('names what the place gave and what moved with today, and no figure of the example', () => {
  const calculator = calculatorOf('days-of-grass');
  const { named } = fromLink(calculator, givenLink(calculator, fill('days-of-grass', { place: aPlace({ water: [] }) }), 'us'));
  expect([...named].sort()).toEqual(['areaAc', 'stock', 'todayDay', 'untilDay']);
});
