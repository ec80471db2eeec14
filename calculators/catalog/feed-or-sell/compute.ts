import type { ValuesOf } from '../../kit/inputs.ts';
import { breakEvenBuyBackUsd } from '../../math/money/breakEvenBuyBackUsd.ts';
import { breakEvenDailyCostUsd } from '../../math/money/breakEvenDailyCostUsd.ts';
import { breakEvenDays } from '../../math/money/breakEvenDays.ts';
import { breakEvenHayUsdPerTon } from '../../math/money/breakEvenHayUsdPerTon.ts';
import { calfCropUsd } from '../../math/money/calfCropUsd.ts';
import { cowAgingUsdPerYear } from '../../math/money/cowAgingUsdPerYear.ts';
import { buyBackRange, keepAgainstRebuyUsd } from '../../math/money/keepAgainstRebuyUsd.ts';
import { oneAtATimeSwings } from '../../math/money/oneAtATimeSwings.ts';
import { headFedThrough, partialHerd } from '../../math/money/partialHerd.ts';
import type { inputs } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;
const poundsPerTon = 2000;
const plotPoints = 9;
/** Feed that falls short of one more cow by a rounding error still carries her. */
const hairMore = 1 + 1e-9;

const agingOf = ({ agingFrom, cowWorthUsd, cullWorthUsd, leftYears, knownAgingUsd }: Asked): number =>
  agingFrom === 'none' ? 0 : agingFrom === 'known' ? knownAgingUsd : cowAgingUsdPerYear(cowWorthUsd, cullWorthUsd, leftYears);

function swingsOf(asked: Asked, cow: Parameters<typeof keepAgainstRebuyUsd>[0], calfUsd: number) {
  const [less, more] = [1 - asked.swingPercent / 100, 1 + asked.swingPercent / 100];
  const around = (likely: number) => ({ low: likely * less, likely, high: likely * more });
  const sale = around(cow.saleUsd);
  return oneAtATimeSwings(
    (value) =>
      keepAgainstRebuyUsd({
        ...cow,
        buyBackUsd: value('buy-back'),
        calfIncomeUsd: value('calf'),
        days: value('days'),
        dailyCostUsd: value('daily-cost'),
        saleUsd: value('sale'),
      }).keepAdvantageUsd,
    [
      { input: 'buy-back', low: asked.lowBuyBackUsd, likely: asked.likelyBuyBackUsd, high: asked.highBuyBackUsd },
      { input: 'calf', low: 0, likely: cow.calfIncomeUsd, high: calfUsd },
      { input: 'days', ...around(cow.days) },
      { input: 'daily-cost', ...around(cow.dailyCostUsd) },
      // Nobody pays to have a cow taken: the sale is never less than what it costs.
      { input: 'sale', ...sale, low: Math.max(cow.saleCostsUsd, sale.low) },
    ],
  ).map(({ input, atLow, atHigh, swing }) => ({ input, lowEndUsd: atLow, highEndUsd: atHigh, swingUsd: swing }));
}

export function compute(asked: Asked) {
  const { lowBuyBackUsd, likelyBuyBackUsd, highBuyBackUsd, keepDays, hayFedLbPerDay, herdHead, sellHead } = asked;
  const isByHay = asked.dailyCostFrom === 'hay';
  const calfUsd = calfCropUsd({
    cows: 1,
    weaningPercent: asked.weanedPercent,
    weightLb: asked.calfWeightLb,
    priceUsdPerCwt: asked.calfPriceUsdPerCwt,
  }).incomeUsd;
  const countedCalfUsd = asked.isCalfSold ? calfUsd : 0;
  const dailyCostUsdPerDay = isByHay ? (hayFedLbPerDay * asked.hayPriceUsdPerTon) / poundsPerTon + asked.otherUsdPerDay : asked.knownCostUsdPerDay;
  const agingUsd = agingOf(asked);
  const cow = {
    days: keepDays,
    dailyCostUsd: dailyCostUsdPerDay,
    calfIncomeUsd: countedCalfUsd,
    agingUsdPerYear: agingUsd,
    deathLossPercentPerYear: asked.deathLossPercent,
    saleUsd: asked.saleUsd,
    saleCostsUsd: asked.saleCostsUsd,
    interestPercentPerYear: asked.interestPercent,
    buyBackUsd: likelyBuyBackUsd,
    buyBackCostsUsd: asked.buyBackCostsUsd,
  };
  const likely = keepAgainstRebuyUsd(cow);
  const withCalfUsd = keepAgainstRebuyUsd({ ...cow, calfIncomeUsd: calfUsd }).keepAdvantageUsd;
  const withoutCalfUsd = likely.keepAdvantageWithoutCalfUsd;
  const [low, , high] = buyBackRange(cow, lowBuyBackUsd, likelyBuyBackUsd, highBuyBackUsd).map(({ keepAdvantageUsd }) => keepAdvantageUsd);
  if (low === undefined || high === undefined) throw new RangeError('compute needs an answer at the low and at the high price');
  const verdict: 'keep' | 'sell' | 'depends' = low > 0 ? 'keep' : high < 0 ? 'sell' : 'depends';
  const evenDays = breakEvenDays(cow);
  const evenBuyBackUsd = breakEvenBuyBackUsd(cow);
  const evenCostUsdPerDay = breakEvenDailyCostUsd(cow);
  const herd = partialHerd({ herdHead, sellHead, keepingUsdPerHead: likely.keepingUsd, rebuyingUsdPerHead: likely.rebuyingUsd });
  const [from, to] = [lowBuyBackUsd * 0.75, highBuyBackUsd * 1.25];
  return {
    calfUsd,
    countedCalfUsd,
    dailyCostUsdPerDay,
    agingUsd,
    feedingUsd: dailyCostUsdPerDay * keepDays,
    olderUsd: (agingUsd * keepDays) / 365,
    lossUsd: (likelyBuyBackUsd * asked.deathLossPercent * keepDays) / 36_500,
    keepingUsd: likely.keepingUsd,
    netSaleUsd: asked.saleUsd - asked.saleCostsUsd,
    interestUsd: likely.interestUsd,
    rebuyingUsd: likely.rebuyingUsd,
    verdict,
    keepAdvantageUsd: likely.keepAdvantageUsd,
    lowAdvantageUsd: low,
    highAdvantageUsd: high,
    withCalfUsd,
    withoutCalfUsd,
    calfTurnsIt: withCalfUsd > 0 && withoutCalfUsd < 0 ? ('yes' as const) : ('no' as const),
    evenDays,
    evenBuyBackUsd,
    evenCostUsdPerDay,
    evenHayUsdPerTon: isByHay
      ? breakEvenHayUsdPerTon({ dailyLimitUsd: evenCostUsdPerDay, otherUsdPerDay: asked.otherUsdPerDay, hayLbPerDay: hayFedLbPerDay })
      : 0,
    fedHead: isByHay ? headFedThrough(asked.hayOnHandLb * hairMore, hayFedLbPerDay, keepDays) : 0,
    keptHead: herd.keptHead,
    soldPercent: herd.soldPercent,
    planCostUsd: herd.costUsd,
    planSavedUsd: herd.savedUsd,
    swings: swingsOf(asked, cow, calfUsd),
    byPrice: Array.from({ length: plotPoints }, (_, at) => {
      const priceUsd = from + ((to - from) * at) / (plotPoints - 1);
      const { keepingUsd, rebuyingUsd, keepAdvantageUsd } = keepAgainstRebuyUsd({ ...cow, buyBackUsd: priceUsd });
      return { priceUsd, keepCostUsd: keepingUsd, rebuyCostUsd: rebuyingUsd, savesUsd: keepAdvantageUsd };
    }),
  };
}
