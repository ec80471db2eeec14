import { describe, expect, it } from 'vitest';
import { calfCropUsd } from '../../calculators/math/money/calfCropUsd.ts';
import { earlyWeaningSwings } from '../../calculators/math/money/earlyWeaningSwings.ts';
import { earlyWeaningUsd } from '../../calculators/math/money/earlyWeaningUsd.ts';
import { evenMarketPercent } from '../../calculators/math/money/evenMarketPercent.ts';
import { keepAgainstRebuyUsd } from '../../calculators/math/money/keepAgainstRebuyUsd.ts';
import { partialHerd } from '../../calculators/math/money/partialHerd.ts';
import { near } from '../support/near.ts';

// Budgets worked out on paper, in round numbers.
describe('one calf, weaned early', () => {
  const quotes = {
    earlyWeightLb: 300,
    earlyPriceUsdPerCwt: 200,
    usualWeightLb: 500,
    usualPriceUsdPerCwt: 160,
    weaningCostUsd: 10,
    forageUsdPerTon: 100,
  };

  it('brings what is left after feed and weaning, with the forage spared', () => {
    // Slide: 40 $/cwt over 200 lb, so 170 $/cwt at 450 lb, which is $765; $120 of feed. Interest on $600 at 7.3 % for 100 days: $12. Forage: half a ton, $50.
    const ways = earlyWeaningUsd({ ...quotes, days: 100, fedGainLbPerDay: 1.5, calfFeedUsdPerDay: 1.2, sparedLb: 1000, interestPercentPerYear: 7.3 });
    const whole = Object.fromEntries(Object.entries(ways).map(([name, value]) => [name, Number(value.toFixed(9))]));
    expect(whole).toEqual({ usualUsd: 800, sellEarlyUsd: 652, feedEarlyUsd: 685, sparedUsd: 50, fedWeightLb: 450, fedPriceUsdPerCwt: 170 });
  });

  const calf = { ...quotes, aheadDays: 100, movePercent: 10, interestPercent: 7.3, sparedLb: { low: 800, likely: 1000, high: 1500 } };
  const endsOf = (fed: Parameters<typeof earlyWeaningSwings>[0]['fed']) =>
    Object.fromEntries(
      earlyWeaningSwings({ ...calf, fed }).map(({ input, atLow, atHigh }) => [input, [atLow, atHigh].map((usd) => Number(usd.toFixed(6)))]),
    );
  it('sold at once: each number by itself moves 652 − 800', () => {
    expect(endsOf(undefined)).toEqual({
      market: [652 - 720, 652 - 880],
      'usual-weight': [652 - 720, 652 - 880],
      quote: [590.8 - 800, 713.2 - 800].map((usd) => Number(usd.toFixed(6))),
      guides: [642 - 800, 677 - 800],
      forage: [647 - 800, 657 - 800],
      'weaning-cost': [653 - 800, 651 - 800],
    });
  });
  it('fed to the usual day: the market moves both, 685 − 800', () => {
    expect(endsOf({ weightLb: 450, priceUsdPerCwt: 170, usdPerDay: 1.2 })).toEqual({
      market: [685 - 76.5 - 720, 685 + 76.5 - 880],
      'usual-weight': [685 - 720, 685 - 880],
      feed: [697 - 800, 673 - 800],
      guides: [675 - 800, 710 - 800],
      forage: [680 - 800, 690 - 800],
      'weaning-cost': [686 - 800, 684 - 800],
    });
  });
  it('is even with the usual time where the market falls far enough', () => {
    // 1000 (1 + z) = 500 (1 + z) + 400 at z = −20 %.
    near(evenMarketPercent({ usualUsd: 1000, earlyUsd: 900, movingUsd: 500 }), -20, 0.5e-12);
    expect(evenMarketPercent({ usualUsd: 1000, earlyUsd: 900, movingUsd: 1000 })).toBeUndefined();
  });
});

describe('the herd', () => {
  it('brings so much for each cow', () => {
    // Gessner (2016): 200 cows, 85 %, 500 lb at $140: $119,000, which is $595 a cow.
    near(calfCropUsd({ cows: 200, weaningPercent: 85, weightLb: 500, priceUsdPerCwt: 140 }).incomeUsdPerCow, 595, 0.5e-9);
  });
  it('pays the costs of both trades, and earns interest on what was left of the first', () => {
    const cow = { days: 365, dailyCostUsd: 2, calfIncomeUsd: 700, agingUsdPerYear: 100, deathLossPercentPerYear: 2, interestPercentPerYear: 5 };
    const ways = keepAgainstRebuyUsd({ ...cow, saleUsd: 1100, saleCostsUsd: 100, buyBackUsd: 1600, buyBackCostsUsd: 80 });
    // 1,680 to buy back, less 1,000 and its 50. Keeping: 730 of feed, 100 of age, 32 of death, less the calf.
    near(ways.rebuyingUsd, 630, 0.5e-9);
    near(ways.keepingUsd, 862 - 700, 0.5e-9);
  });
  it('saves by selling a part what the part would have cost more', () => {
    // 165 · 756 + 35 · 459 = 140,805 against 200 · 756 = 151,200.
    const { costUsd, savedUsd } = partialHerd({ herdHead: 200, sellHead: 35, keepingUsdPerHead: 756, rebuyingUsdPerHead: 459 });
    expect([costUsd, savedUsd]).toEqual([140_805, 10_395]);
  });
});
