import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/early-weaning/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { expectWithin } from '../support/expectWithin.ts';

const at = (query: string, name: string): number => Number(resultAt(runQuery(definition, query), name));

describe('early-weaning', () => {
  it('lets a lower market speak for weaning early and selling, by a tenth of the usual calf', () => {
    // A calf of $1,300 in the fall brings $130 less or more; what is sold before keeps its price.
    const { values } = runQuery(definition, 'calf-goes=sold');
    const market = Array.isArray(values['swings']) ? values['swings'].find((row) => row['input'] === 'market') : undefined;
    const [answer, tenth] = [Number(values['sellEarlyUsd']) - Number(values['usualUsd']), Number(values['usualUsd']) / 10];
    expectWithin(Number(market?.['lowEndUsd']), answer + tenth, 5e-7);
    expectWithin(Number(market?.['highEndUsd']), answer - tenth, 5e-7);
  });
  it('swings each figure a tenth both ways about the answer', () => {
    for (const [goes, early] of [
      ['sold', 'sellEarlyUsd'],
      ['bought-feed', 'feedEarlyUsd'],
    ] as const) {
      const { values } = runQuery(definition, `calf-goes=${goes}`);
      const answer = Number(values[early]) - Number(values['usualUsd']);
      const swings = Array.isArray(values['swings']) ? values['swings'] : [];
      expect(swings.length).toBeGreaterThan(2);
      // Each figure stands in the answer once, unmultiplied by itself, so that its two ends lie even about it; the guides have ends of their own.
      for (const row of swings.filter(({ input }) => input !== 'guides'))
        expectWithin((Number(row['lowEndUsd']) + Number(row['highEndUsd'])) / 2, answer, 5e-7);
    }
  });
  it('keeps the likely figure between the least and the most, on every forage', () => {
    for (const quality of ['low', 'average', 'high']) {
      const query = `intake-from=${quality}`;
      expect(at(query, 'lowKeptHerdLb')).toBeLessThanOrEqual(at(query, 'keptHerdLb'));
      expect(at(query, 'keptHerdLb')).toBeLessThanOrEqual(at(query, 'highKeptHerdLb'));
      expect(at(query, 'lowKeptHerdLb')).toBeGreaterThan(0);
    }
  });
  it('counts a calf before three months at 1 percent of its weight, from three months at 1.5', () => {
    // Nebraska, calf before 3 months; Jaeger: 6.8 lb a day of 450 lb.
    expectWithin(at('age=90d', 'calfSavedLb') / at('age=89d', 'calfSavedLb'), 1.5, 1e-9);
  });
  it('draws the market twice as far as it may move, 20 percent at least', () => {
    const spanOf = (move: number): number => {
      const { byMarket } = runQuery(definition, `calf-goes=sold&move=${move}pct&usual-price=1usd/cwt`).values;
      return Array.isArray(byMarket) ? Number(byMarket.at(-1)?.['marketPercent']) : Number.NaN;
    };
    expect(Object.keys(definition.inputs)).toContain('movePercent');
    expect([5, 10, 30, 40].map(spanOf)).toEqual([20, 20, 60, 80]);
  });

  // In a published drylot trial early-weaned calves that were fed too took no less feed for each pound of calf.
  it('saves the calf’s part only where the calf no longer eats', () => {
    expect(at('calf-goes=own-feed', 'keptLb')).toBeLessThan(at('calf-goes=bought-feed', 'keptLb'));
    expect(at('calf-goes=bought-feed', 'keptLb')).toBe(at('calf-goes=sold', 'keptLb'));
    expect(at('calf-goes=own-feed', 'keptLb')).toBeLessThanOrEqual(0);
    expect(
      runQuery(definition, 'calf-goes=own-feed')
        .cautions.map(({ say }) => say)
        .join(' '),
    ).toContain('Nothing stays on this place');
  });

  // Published savings run from 12 percent (cow alone) to 40; 28 percent in a North Dakota trial that counted the calf.
  it('brings both published ways of counting, the cow alone and the pair', () => {
    expect(Math.abs(Number(at('', 'cowOnlyPercent')) - 12)).toBeLessThan(0.5);
    expect(at('', 'bothPercent')).toBeGreaterThan(20);
    expect(at('', 'bothPercent')).toBeLessThan(40);
  });

  it('tells no range by the guides where no guide was asked', () => {
    const own = runQuery(definition, 'intake-from=own&calf-forage-from=own');
    expect(own.ranges['keptHerdLb']).toBeUndefined();
    expect(own.note).toMatch(/forage kept on this place: [\d,]+ lb\. /);
    const tabled = runQuery(definition, 'intake-from=average');
    expect(tabled.ranges['keptHerdLb']).toMatch(/ to .* by how the guides differ/);
    expect(tabled.note).toMatch(/forage kept on this place: [\d,]+ lb \([\d,]+ to [\d,]+ lb\)\. /);
  });
});
