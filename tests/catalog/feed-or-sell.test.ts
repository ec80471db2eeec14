import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import definition from '../../calculators/catalog/feed-or-sell/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { expectWithin } from '../support/expectWithin.ts';

const numberAt = (query: string, path: string): number => Number(resultAt(runQuery(definition, query), path));
const days = fc.integer({ min: 1, max: 1000 });
const cents = (most: number) => fc.integer({ min: 5, max: most * 100 }).map((each) => each / 100);

describe('feed-or-sell', () => {
  test('draws prices from a quarter under the lowest to a quarter over the highest', () => {
    const { byPrice } = runQuery(definition, 'low-buy-back=2000usd&high-buy-back=3000usd').values;
    const prices = Array.isArray(byPrice) ? byPrice.map((row) => row['priceUsd']) : [];
    expect([prices[0], prices.at(-1)]).toEqual([1500, 3750]);
  });
  test('dearer feed never speaks for keeping, dearer cows never against it', () => {
    fc.assert(
      fc.property(days, cents(50), cents(50), (keep, one, other) => {
        const saves = (cost: number) => numberAt(`keep=${keep}d&daily-cost-from=known&known-cost=${cost}usd/d`, 'keepAdvantageUsd');
        expect(saves(Math.max(one, other))).toBeLessThanOrEqual(saves(Math.min(one, other)));
        expect(numberAt(`keep=${keep}d`, 'lowAdvantageUsd')).toBeLessThanOrEqual(numberAt(`keep=${keep}d`, 'highAdvantageUsd'));
      }),
    );
  });

  test('put back in, each break-even makes both cost the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 400 }), cents(5), (keep, cost) => {
        const query = `keep=${keep}d&daily-cost-from=known&known-cost=${cost}usd/d`;
        const price = numberAt(query, 'evenBuyBackUsd');
        const prices = ['low', 'likely', 'high'].map((each) => `${each}-buy-back=${price.toFixed(9)}usd`).join('&');
        if (price >= 50 && price <= 20_000) expect(Math.abs(numberAt(`${query}&${prices}`, 'keepAdvantageUsd'))).toBeLessThan(1e-5);
        const even = numberAt(query, 'evenDays');
        const atEven = `keep=${even.toFixed(9)}d&daily-cost-from=known&known-cost=${cost}usd/d`;
        if (even >= 1 && even <= 1000) expect(Math.abs(numberAt(atEven, 'keepAdvantageUsd'))).toBeLessThan(1e-5);
      }),
    );
  });

  test('the calf changes the answer by what a calf brings, and the page says when it turns it', () => {
    const query = 'keep=360d';
    const calf = numberAt(query, 'calfUsd');
    const gap = numberAt(`${query}&calf-sold=yes`, 'keepAdvantageUsd') - numberAt(`${query}&calf-sold=no`, 'keepAdvantageUsd');
    expect(Math.abs(gap - calf)).toBeLessThan(1e-9);
    const cautions = (text: string) => runQuery(definition, text).cautions.map(({ say }) => say);
    expect(cautions(query).join(' ')).toContain('The calf alone turns this answer');
    expect(cautions('keep=90d').join(' ')).not.toContain('The calf alone turns this answer');
  });

  test('takes ewes and does: lambs and kids come by more than one, and light', () => {
    // By hand: one and a half lambs of 80 lb at $2.50 a pound; two kids of 40 lb at $3.
    expectWithin(numberAt('calf-sold=yes&weaned=150pct&calf-weight=80lb&calf-price=250usd/cwt', 'calfUsd'), 300, 5e-7);
    expectWithin(numberAt('calf-sold=yes&weaned=200pct&calf-weight=40lb&calf-price=300usd/cwt', 'calfUsd'), 240, 5e-7);
  });

  test('the widest swing stands first', () => {
    fc.assert(
      fc.property(days, fc.boolean(), (keep, isSold) => {
        const query = `keep=${keep}d&calf-sold=${isSold ? 'yes' : 'no'}`;
        const swings = [0, 1, 2, 3, 4].map((at) => numberAt(query, `swings.${at}.swingUsd`));
        expect(swings).toEqual([...swings].sort((one, other) => other - one));
      }),
    );
  });
});
