import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import { toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { examples, place } from '../../content/place/place.ts';
import { calculatorOf } from '../support/catalog.ts';

/** What the columns of a runoff example should hold, taken from the place. */
const pastureById = new Map(place.pastures.map((pasture) => [pasture.id, pasture]));
const groupOf = (soil: string): string | undefined => place.soils.find(({ id }) => id === soil)?.soilGroup;
const pairsOf = (name: string): URLSearchParams => new URLSearchParams(examples[name]?.query);

describe.each(Object.entries(examples))('example %s', (_, { slug, query, says }) => {
  it('opens without a notice and comes back as the same link', () => {
    const calculator = calculatorOf(slug);
    const { form, notices } = fromLink(calculator, query);
    expect(notices).toEqual([]);
    expect(toLink(calculator, form)).toBe(query);
  });
  it('computes', () => {
    const calculator = calculatorOf(slug);
    expect(() => runQuery(calculator, query)).not.toThrow();
  });
  it('says what it shows in one sentence', () => {
    expect(says).toMatch(/^[A-Z0-9][^.!?]*\.$/);
  });
});

describe('the runoff examples', () => {
  it.each([
    ['bench-storm', 'high-bench', ''],
    ['creek-bottom-storm', 'creek-bottom', ''],
    ['bench-storm', 'low-bench', 'that.'],
  ])('%s holds the cover of the %s', (name, id, side) => {
    const pasture = pastureById.get(id);
    expect(pairsOf(name).get(`${side}ground-cover`)).toBe(`${pasture?.groundCoverPercent}pct`);
    expect(pairsOf(name).get(`${side}grazing`)).toBe(pasture?.grazing);
    if (side !== '') return;
    expect(pairsOf(name).get('area')).toBe(`${pasture?.areaAc}ac`);
    expect(pairsOf(name).get('soil-group')).toBe(groupOf(pasture?.soil ?? ''));
    expect(pairsOf(name).get('cover')).toBe(pasture?.cover);
  });

  it('the whole place is every pasture in order', () => {
    const column = (name: string): string[] => pairsOf('whole-place-storm').get(`parts.${name}`)?.split(',') ?? [];
    expect(column('area')).toEqual(place.pastures.map(({ areaAc }) => `${areaAc}ac`));
    expect(column('soil-group')).toEqual(place.pastures.map(({ soil }) => groupOf(soil)));
    expect(column('cover')).toEqual(place.pastures.map(({ cover }) => cover));
    expect(column('ground-cover')).toEqual(place.pastures.map((each) => (each.cover === 'pasture' ? `${each.groundCoverPercent}pct` : '')));
    expect(column('grazing')).toEqual(place.pastures.map((each) => (each.cover === 'pasture' ? each.grazing : '')));
  });
});

describe('the examples about rest', () => {
  it.each(['low-bench-rest', 'low-bench-dry-rest'])('%s has the paddocks of the low bench and the cows and bulls of the herd', (name) => {
    const stock = place.herd.filter(({ stock: kind }) => kind === 'cow' || kind === 'bull');
    expect(pairsOf(name).get('paddock')).toBe(String(pastureById.get('low-bench')?.paddockCount));
    expect(pairsOf(name).get('stock.count')).toBe(stock.map(({ countHead }) => countHead).join(','));
    expect(pairsOf(name).get('stock.weight')).toBe(stock.map(({ weightLb }) => `${weightLb}lb`).join(','));
  });
});

describe('the examples about hay', () => {
  it.each(['winter-hay', 'late-turn-out-hay'])('%s has the whole herd and the barn as they stand', (name) => {
    const pairs = pairsOf(name);
    expect(pairs.get('herd.stock')).toBe(place.herd.map(({ stock }) => stock).join(','));
    expect(pairs.get('herd.count')).toBe(place.herd.map(({ countHead }) => countHead).join(','));
    expect(pairs.get('herd.weight')).toBe(place.herd.map(({ weightLb }) => `${weightLb}lb`).join(','));
    expect(pairs.get('herd.birth')).toBe(place.herd.map(({ births }) => (births ? `2027-${births.middleDay}` : '')).join(','));
    const [stack, ...others] = place.hayBarn.stacks;
    expect(others).toEqual([]);
    expect(pairs.get('from')).toBe(place.asOfDay);
    expect(pairs.get('own')).toBe(String(stack?.baleCount));
    expect(pairs.get('own-bale')).toBe(`${stack?.baleLb}lb`);
    expect(pairs.get('moisture')).toBe(`${stack?.moisturePercent}pct`);
    expect(pairs.get('baled')).toBe(stack?.baledDay);
    expect(pairs.get('own-storage')).toBe(stack?.storedAs);
  });
});
