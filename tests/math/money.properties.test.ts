import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakEvenBuyBackUsd } from '../../calculators/math/money/breakEvenBuyBackUsd.ts';
import { breakEvenDailyCostUsd } from '../../calculators/math/money/breakEvenDailyCostUsd.ts';
import { breakEvenDays } from '../../calculators/math/money/breakEvenDays.ts';
import { breakEvenHayUsdPerTon } from '../../calculators/math/money/breakEvenHayUsdPerTon.ts';
import { breakEvenSalePriceUsdPerCwt } from '../../calculators/math/money/breakEvenSalePriceUsdPerCwt.ts';
import { cowAgingUsdPerYear } from '../../calculators/math/money/cowAgingUsdPerYear.ts';
import { earlyWeaningFeedLb } from '../../calculators/math/money/earlyWeaningFeedLb.ts';
import { earlyWeaningUsd } from '../../calculators/math/money/earlyWeaningUsd.ts';
import { buyBackRange, keepAgainstRebuyUsd } from '../../calculators/math/money/keepAgainstRebuyUsd.ts';
import { oneAtATimeSwings } from '../../calculators/math/money/oneAtATimeSwings.ts';
import { partialBudgetUsd } from '../../calculators/math/money/partialBudgetUsd.ts';
import { headFedThrough, partialHerd } from '../../calculators/math/money/partialHerd.ts';
import { slideUsdPerCwt, slidPriceUsdPerCwt } from '../../calculators/math/money/slidPriceUsdPerCwt.ts';
import { valueOfGainUsdPerLb } from '../../calculators/math/money/valueOfGainUsdPerLb.ts';
import { between } from '../support/numbers.ts';

const near = (one: number, other: number, relative = 1e-9): void => {
  expect(Math.abs(one - other)).toBeLessThanOrEqual(relative * Math.max(1, Math.abs(one), Math.abs(other)));
};
const cow = fc.record({
  days: between(1, 700),
  dailyCostUsd: between(0.2, 8),
  calfIncomeUsd: between(0, 1500),
  agingUsdPerYear: between(0, 400),
  deathLossPercentPerYear: between(0, 5),
  saleUsd: between(400, 3000),
  saleCostsUsd: between(0, 300),
  interestPercentPerYear: between(0, 12),
  buyBackUsd: between(400, 4500),
  buyBackCostsUsd: between(0, 300),
});

describe('feed her through, or sell and buy back', () => {
  it('breaks even where the break-evens say', () => {
    fc.assert(
      fc.property(cow, (one) => {
        near(keepAgainstRebuyUsd({ ...one, buyBackUsd: Math.max(0, breakEvenBuyBackUsd(one)) }).keepAdvantageUsd, Math.max(0, atFree(one)), 1e-6);
        const dailyCostUsd = breakEvenDailyCostUsd(one);
        if (dailyCostUsd >= 0) near(keepAgainstRebuyUsd({ ...one, dailyCostUsd }).keepAdvantageUsd, 0, 1e-6);
        const days = breakEvenDays(one);
        if (days > 0 && days <= 1500) near(keepAgainstRebuyUsd({ ...one, days }).keepAdvantageUsd, 0, 1e-5);
      }),
    );
  });
  it('counts the calf once, to the dollar', () => {
    fc.assert(
      fc.property(cow, (one) => {
        const { keepAdvantageUsd, keepAdvantageWithoutCalfUsd } = keepAgainstRebuyUsd(one);
        near(keepAdvantageUsd - keepAdvantageWithoutCalfUsd, one.calfIncomeUsd, 1e-7);
        near(keepAgainstRebuyUsd({ ...one, calfIncomeUsd: 0 }).keepAdvantageUsd, keepAdvantageWithoutCalfUsd, 1e-7);
      }),
    );
  });
  it('is the partial budget of keeping instead of selling', () => {
    fc.assert(
      fc.property(cow, (one) => {
        const { keepingUsd, rebuyingUsd, keepAdvantageUsd } = keepAgainstRebuyUsd(one);
        const { netUsd } = partialBudgetUsd({
          addedReturnsUsd: one.calfIncomeUsd,
          reducedCostsUsd: Math.max(0, rebuyingUsd),
          addedCostsUsd: keepingUsd + one.calfIncomeUsd,
          reducedReturnsUsd: Math.max(0, -rebuyingUsd),
        });
        near(netUsd, keepAdvantageUsd, 1e-7);
      }),
    );
  });
  it('turns against keeping with dearer feed, and toward it with dearer cows', () => {
    fc.assert(
      fc.property(cow, between(0.01, 2), (one, more) => {
        const { keepAdvantageUsd } = keepAgainstRebuyUsd(one);
        expect(keepAgainstRebuyUsd({ ...one, dailyCostUsd: one.dailyCostUsd + more }).keepAdvantageUsd).toBeLessThan(keepAdvantageUsd);
        const rows = buyBackRange(one, one.buyBackUsd, one.buyBackUsd * (1 + more), one.buyBackUsd * (1 + 2 * more));
        expect(rows[0]?.keepAdvantageUsd).toBeLessThan(rows[1]?.keepAdvantageUsd ?? 0);
        expect(rows[1]?.keepAdvantageUsd).toBeLessThan(rows[2]?.keepAdvantageUsd ?? 0);
      }),
    );
  });
  it('refuses a sale that costs more than it brings, and days without end', () => {
    const one = {
      dailyCostUsd: 0,
      calfIncomeUsd: 0,
      agingUsdPerYear: 0,
      deathLossPercentPerYear: 0,
      saleUsd: 1000,
      saleCostsUsd: 0,
      interestPercentPerYear: 0,
      buyBackUsd: 1500,
      buyBackCostsUsd: 0,
    };
    expect(() => breakEvenDays(one)).toThrow(RangeError);
    expect(() => keepAgainstRebuyUsd({ ...one, days: 10, saleCostsUsd: 1001 })).toThrow(RangeError);
  });
});

/** Advantage of keeping if a cow could be had for nothing. */
function atFree(one: Parameters<typeof keepAgainstRebuyUsd>[0]): number {
  return keepAgainstRebuyUsd({ ...one, buyBackUsd: 0 }).keepAdvantageUsd;
}

describe('part of a herd', () => {
  it('lies on the line between keeping all and selling all', () => {
    fc.assert(
      fc.property(
        between(1, 500),
        between(0, 1),
        between(-500, 2000),
        between(-500, 2000),
        (herdHead, share, keepingUsdPerHead, rebuyingUsdPerHead) => {
          const plan = partialHerd({ herdHead, sellHead: share * herdHead, keepingUsdPerHead, rebuyingUsdPerHead });
          near(plan.costUsd, herdHead * ((1 - share) * keepingUsdPerHead + share * rebuyingUsdPerHead), 1e-7);
          near(plan.soldPercent, 100 * share);
        },
      ),
    );
  });
  it('keeps no more than the feed carries, and could not keep one more', () => {
    fc.assert(
      fc.property(between(0, 500_000), between(5, 60), between(10, 300), (feedLb, lbPerHeadDay, days) => {
        const head = headFedThrough(feedLb, lbPerHeadDay, days);
        expect(head * lbPerHeadDay * days).toBeLessThanOrEqual(feedLb * (1 + 1e-12));
        expect((head + 1) * lbPerHeadDay * days).toBeGreaterThan(feedLb * (1 - 1e-12));
      }),
    );
  });
});

describe('prices and weights', () => {
  const quotes = fc.record({ light: between(250, 500), gained: between(50, 300), lightPrice: between(120, 300), fall: between(0, 40) });
  it('runs the slide through both quotes', () => {
    fc.assert(
      fc.property(quotes, ({ light, gained, lightPrice, fall }) => {
        const slide = slideUsdPerCwt({
          lightWeightLb: light,
          lightPriceUsdPerCwt: lightPrice,
          heavyWeightLb: light + gained,
          heavyPriceUsdPerCwt: lightPrice - fall,
        });
        const at = (weightLb: number) => slidPriceUsdPerCwt({ basePriceUsdPerCwt: lightPrice, baseWeightLb: light, weightLb, slideUsdPerCwt: slide });
        near(at(light + gained), lightPrice - fall);
        near(at(light), lightPrice);
        const { gainUsdPerLb } = valueOfGainUsdPerLb({
          startWeightLb: light,
          startPriceUsdPerCwt: lightPrice,
          endWeightLb: light + gained,
          endPriceUsdPerCwt: at(light + gained),
        });
        expect(gainUsdPerLb).toBeLessThanOrEqual((lightPrice - fall) / 100 + 1e-9);
      }),
    );
  });
  it('brings the money back at the break-even price', () => {
    fc.assert(
      fc.property(
        between(100, 2000),
        between(0, 800),
        between(0, 10),
        between(200, 1500),
        (valueNowUsd, costsUsd, deathLossPercent, saleWeightLb) => {
          const price = breakEvenSalePriceUsdPerCwt({ valueNowUsd, costsUsd, deathLossPercent, saleWeightLb });
          near((price / 100) * saleWeightLb * (1 - deathLossPercent / 100), valueNowUsd + costsUsd);
        },
      ),
    );
    fc.assert(
      fc.property(between(0, 10), between(0, 3), between(5, 60), (dailyLimitUsd, otherUsdPerDay, hayLbPerDay) => {
        near((breakEvenHayUsdPerTon({ dailyLimitUsd, otherUsdPerDay, hayLbPerDay }) * hayLbPerDay) / 2000 + otherUsdPerDay, dailyLimitUsd);
      }),
    );
    fc.assert(
      fc.property(between(500, 3000), between(0, 500), between(1, 12), (now, cull, years) =>
        near(now - years * cowAgingUsdPerYear(now, cull, years), cull),
      ),
    );
  });
});

describe('weaning early', () => {
  const pair = fc.record({
    cowWeightLb: between(800, 1700),
    dryPercent: between(1.5, 2.5),
    more: between(0, 0.6),
    calfForageLbPerDay: between(0, 12),
    days: between(1, 150),
  });
  it('keeps cow and calf apart, and the two together are the whole', () => {
    fc.assert(
      fc.property(pair, ({ cowWeightLb, dryPercent, more, calfForageLbPerDay, days }) => {
        const spared = earlyWeaningFeedLb({ cowWeightLb, dryPercent, milkingPercent: dryPercent + more, calfForageLbPerDay, days });
        near(spared.cowLb + spared.calfLb, spared.sparedLb);
        near((spared.cowDays * cowWeightLb * dryPercent) / 100, spared.cowLb);
        const withMilk = (cowWeightLb * (dryPercent + more)) / 100 + calfForageLbPerDay;
        near((spared.sparedPercent / 100) * withMilk * days, spared.sparedLb, 1e-7);
      }),
    );
  });
  it('with nothing spared and no cost, a calf fed to the usual weight brings the usual money', () => {
    fc.assert(
      fc.property(between(200, 400), between(50, 250), between(120, 300), between(0, 30), between(20, 150), (light, gained, price, fall, days) => {
        const ways = earlyWeaningUsd({
          days,
          earlyWeightLb: light,
          earlyPriceUsdPerCwt: price,
          usualWeightLb: light + gained,
          usualPriceUsdPerCwt: price - fall,
          fedGainLbPerDay: gained / days,
          calfFeedUsdPerDay: 0,
          weaningCostUsd: 0,
          sparedLb: 0,
          forageUsdPerTon: 0,
          interestPercentPerYear: 0,
        });
        near(ways.feedEarlyUsd, ways.usualUsd, 1e-7);
        near(ways.sellEarlyUsd, (light * price) / 100, 1e-7);
      }),
    );
  });
});

describe('what the answer hangs on', () => {
  it('puts the widest swing first and moves one input at a time', () => {
    fc.assert(
      fc.property(between(-5, 5), between(-5, 5), between(-5, 5), between(0.1, 3), (a, b, c, width) => {
        const input = (name: 'a' | 'b' | 'c') => ({ input: name, low: 1 - width, likely: 1, high: 1 + width });
        const rows = oneAtATimeSwings((value) => a * value('a') + b * value('b') + c * value('c'), [input('a'), input('b'), input('c')]);
        const slopes = new Map([
          ['a', a],
          ['b', b],
          ['c', c],
        ]);
        for (const row of rows) near(row.swing, Math.abs(2 * width * (slopes.get(row.input) ?? 0)), 1e-6);
        const swings = rows.map(({ swing }) => swing);
        expect(swings).toEqual(swings.toSorted((one, other) => other - one));
      }),
    );
  });
  it('stops at an answer that is no number, and at ends out of order', () => {
    expect(() => oneAtATimeSwings((value) => 1 / value('a'), [{ input: 'a', low: 0, likely: 1, high: 2 }])).toThrow(RangeError);
    expect(() => oneAtATimeSwings((value) => value('a'), [{ input: 'a', low: 2, likely: 1, high: 3 }])).toThrow(RangeError);
  });
});
