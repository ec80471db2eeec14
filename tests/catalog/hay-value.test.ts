import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/hay-value/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { expectWithin } from '../support/expectWithin.ts';

const numberAt = (query: string, name: string): number => Number(resultAt(runQuery(definition, query), name));
const own = (storage: number, feeding: number, moisture = 15): string =>
  `storage=known&known-storage=${storage}pct&feeder=known&known-feeding=${feeding}pct&moisture=${moisture}pct`;

describe('hay-value', () => {
  it('gets dearer with water, with each loss, and with a lighter bale', () => {
    const base = numberAt(own(10, 20), 'eatenUsdPerTon');
    expect(numberAt(own(20, 20), 'eatenUsdPerTon')).toBeGreaterThan(base);
    expect(numberAt(own(10, 30), 'eatenUsdPerTon')).toBeGreaterThan(base);
    expect(numberAt(own(10, 20, 20), 'eatenUsdPerTon')).toBeGreaterThan(base);
    expect(numberAt('priced-by=bale&bale=900lb', 'eatenUsdPerTon')).toBeGreaterThan(numberAt('priced-by=bale&bale=1000lb', 'eatenUsdPerTon'));
  });
  it('charges less by multiplying than by dividing, and each says what the other would give', () => {
    const [divided, multiplied] = [own(30, 20), `${own(30, 20)}&loss-convention=multiply`];
    expect(numberAt(multiplied, 'eatenUsdPerTon')).toBeLessThan(numberAt(divided, 'eatenUsdPerTon'));
    expectWithin(numberAt(divided, 'otherUsdPerTon'), numberAt(multiplied, 'eatenUsdPerTon'), 5e-10);
    expectWithin(numberAt(multiplied, 'otherUsdPerTon'), numberAt(divided, 'eatenUsdPerTon'), 5e-10);
  });
  it('sends a ton bought somewhere, to the last pound', () => {
    const parts = ['waterLb', 'storageLostLb', 'feedingLostLb', 'eatenLb'].map((name) => numberAt('', name));
    expectWithin(
      parts.reduce((sum, part) => sum + part, 0),
      2000,
      5e-10,
    );
  });
  it('puts what the answer hangs on first', () => {
    const { values } = runQuery(definition, 'priced-by=bale');
    const swings = Array.isArray(values['swings']) ? values['swings'].map((row) => Number(Object(row).swingUsdPerTon)) : [];
    expect(swings).toHaveLength(5);
    expect(swings).toEqual([...swings].sort((one, other) => other - one));
    expect(resultAt(runQuery(definition, 'price=135usd/ton&low-price=134usd/ton&high-price=136usd/ton'), 'hangsOn')).toBe('feeding');
  });
  it('finds hay worth its own price beside itself', () => {
    // The same feed, its loss and freight alike: the worth must come back as the price.
    const same = `${own(0, 20)}&price=150usd/ton&freight=0usd/ton&protein=9pct&against=protein&other-price=150usd/ton&other-moisture=15pct&other-protein=9pct&other-loss=20pct`;
    expectWithin(numberAt(same, 'worthUsdPerTon'), 150, 5e-10);
  });
});
