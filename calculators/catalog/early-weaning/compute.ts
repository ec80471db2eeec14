import { printedPercents } from '../../math/herd/guidePercents.ts';
import { earlyWeaningFeedLb } from '../../math/money/earlyWeaningFeedLb.ts';
import { earlyWeaningSwings } from '../../math/money/earlyWeaningSwings.ts';
import { earlyWeaningUsd } from '../../math/money/earlyWeaningUsd.ts';
import { evenMarketPercent } from '../../math/money/evenMarketPercent.ts';
import { slideUsdPerCwt } from '../../math/money/slidPriceUsdPerCwt.ts';
import { valueOfGainUsdPerLb } from '../../math/money/valueOfGainUsdPerLb.ts';
import type { Values } from './inputs.ts';

const plotPoints = 9;
/** Where no move of the market makes both ways even: the left end of every plot, so that none is marked. */
const noEvenPercent = -100;

/** Both ways as the market moves between now and the usual day, and the move that makes them even. */
function byMarketOf(movePercent: number, usualUsd: number, earlyUsd: number, grossUsd: number) {
  const even = evenMarketPercent({ usualUsd, earlyUsd, movingUsd: grossUsd });
  const isEven: 'yes' | 'no' = even !== undefined && even > noEvenPercent && even <= 1000 ? 'yes' : 'no';
  const at = even !== undefined && isEven === 'yes' ? even : noEvenPercent;
  // Wide enough to show where the two meet, if that is anywhere near.
  const reach = isEven === 'yes' && Math.abs(at) <= 75 ? 1.2 * Math.abs(at) : 0;
  const span = Math.min(90, Math.max(20, 2 * movePercent, reach));
  return {
    grossUsd,
    isEven,
    evenMarketPercent: at,
    byMarket: Array.from({ length: plotPoints }, (_, point) => {
      const marketPercent = -span + (2 * span * point) / (plotPoints - 1);
      const times = 1 + marketPercent / 100;
      return { marketPercent, usualAtUsd: usualUsd * times, earlyAtUsd: grossUsd * times + (earlyUsd - grossUsd) };
    }),
  };
}

type End = 'low' | 'likely' | 'high';
interface CowPair {
  readonly milkingPercent: number;
  readonly dryPercent: number;
}

/**
 * What a cow eats nursing and dry. Guides that set one high set the other high too, so each end takes both from one kind of guide;
 * the least and the most saving are the ends.
 */
function cowPairs({ intakeFrom, milkingPercent, dryPercent }: Values): Readonly<Record<End, CowPair>> {
  if (intakeFrom === 'own') {
    const pair = { milkingPercent, dryPercent };
    return { low: pair, likely: pair, high: pair };
  }
  const nursing = printedPercents('beef-cow', 'lactating', intakeFrom);
  const dry = printedPercents('beef-cow', 'dry', intakeFrom);
  const likely: CowPair = { milkingPercent: nursing.likelyPercent, dryPercent: dry.likelyPercent };
  const saves = (pair: CowPair): number => pair.milkingPercent - pair.dryPercent;
  const lean: CowPair = { milkingPercent: nursing.lowPercent, dryPercent: dry.lowPercent };
  const rich: CowPair = { milkingPercent: nursing.highPercent, dryPercent: dry.highPercent };
  const least = [lean, rich].reduce((one, other) => (saves(other) < saves(one) ? other : one), likely);
  const most = [lean, rich].reduce((one, other) => (saves(other) > saves(one) ? other : one), likely);
  return { low: least, likely, high: most };
}

/** Before three months a calf eats the lower share. */
export const youngDays = 90;
function calfPercents({ ageDays }: Values): Readonly<Record<End, number>> {
  const { lowPercent, likelyPercent, highPercent } = printedPercents('nursing-calf', 'forage beside milk');
  return { low: lowPercent, likely: ageDays < youngDays ? lowPercent : likelyPercent, high: highPercent };
}

const fedWeightOf = ({ earlyWeightLb, fedGainLbPerDay, aheadDays, calfGoes }: Values): number =>
  earlyWeightLb + (calfGoes === 'sold' ? 0 : fedGainLbPerDay * aheadDays);

const slideOf = ({ earlyWeightLb, earlyPriceUsdPerCwt, usualWeightLb, usualPriceUsdPerCwt }: Values): number =>
  slideUsdPerCwt({
    lightWeightLb: earlyWeightLb,
    lightPriceUsdPerCwt: earlyPriceUsdPerCwt,
    heavyWeightLb: usualWeightLb,
    heavyPriceUsdPerCwt: usualPriceUsdPerCwt,
  });
/** The line through the two quotes must not run under zero before it reaches the weight of the fed calf. */
export function slidesBelowZero(values: Values): boolean {
  const { earlyWeightLb, usualWeightLb, usualPriceUsdPerCwt } = values;
  if (usualWeightLb <= earlyWeightLb) return false;
  return usualPriceUsdPerCwt + ((usualWeightLb - fedWeightOf(values)) * slideOf(values)) / 100 < 0;
}

export function compute(values: Values) {
  const { pairsHead, cowWeightLb, aheadDays, earlyWeightLb, usualWeightLb, calfForageFrom, ownCalfLbPerDay, calfGoes, calfNeedPercent } = values;
  const { earlyPriceUsdPerCwt, usualPriceUsdPerCwt, movePercent, forageUsdPerTon, calfFeedUsdPerTon, careUsdPerDay } = values;
  const { weaningCostUsd, interestPercent, fedGainLbPerDay } = values;
  const isFed = calfGoes !== 'sold';
  const nursingMeanLb = (earlyWeightLb + usualWeightLb) / 2;
  const fedMeanLb = (earlyWeightLb + fedWeightOf(values)) / 2;
  const calfNeedLb = isFed ? (fedMeanLb * calfNeedPercent * aheadDays) / 100 : 0;
  const cows = cowPairs(values);
  const calves = calfPercents(values);
  const lineOf = (end: End) => {
    const calfLbPerDay = calfForageFrom === 'own' ? ownCalfLbPerDay : (nursingMeanLb * calves[end]) / 100;
    const { cowLb, calfLb, sparedLb, ...rest } = earlyWeaningFeedLb({ cowWeightLb, ...cows[end], calfForageLbPerDay: calfLbPerDay, days: aheadDays });
    const keptLb = sparedLb - (calfGoes === 'own-feed' ? calfNeedLb : 0);
    return { end, ...cows[end], calfPercent: calves[end], calfLbPerDay, cowLb, calfLb, sparedLb, keptLb, keptHerdLb: keptLb * pairsHead, rest };
  };
  const likely = lineOf('likely');
  const { rest, end: _, keptHerdLb, ...eaten } = likely;
  const calfUsdPerDay = isFed
    ? ((fedMeanLb * calfNeedPercent) / 100) * ((calfGoes === 'own-feed' ? forageUsdPerTon : calfFeedUsdPerTon) / 2000) + careUsdPerDay
    : 0;
  const money = earlyWeaningUsd({
    days: aheadDays,
    earlyWeightLb,
    earlyPriceUsdPerCwt,
    usualWeightLb,
    usualPriceUsdPerCwt,
    fedGainLbPerDay: isFed ? fedGainLbPerDay : 0,
    calfFeedUsdPerDay: calfUsdPerDay,
    weaningCostUsd,
    sparedLb: likely.sparedLb,
    forageUsdPerTon,
    interestPercentPerYear: interestPercent,
  });
  const shifted = <M extends string>(market: M, shiftPercent: number) => {
    const shiftedUsualUsdPerCwt = usualPriceUsdPerCwt * (1 + shiftPercent / 100);
    const shiftedFedUsdPerCwt = money.fedPriceUsdPerCwt * (1 + shiftPercent / 100);
    const usualWayUsd = (usualWeightLb * shiftedUsualUsdPerCwt) / 100;
    const soldWayUsd = money.sellEarlyUsd;
    const fedWayUsd = (money.fedWeightLb * shiftedFedUsdPerCwt) / 100 - calfUsdPerDay * aheadDays - weaningCostUsd + money.sparedUsd;
    const most = isFed ? Math.max(usualWayUsd, soldWayUsd, fedWayUsd) : Math.max(usualWayUsd, soldWayUsd);
    return {
      line: { market, shiftPercent, shiftedUsualUsdPerCwt, usualWayUsd, soldWayUsd },
      fedLine: { market, shiftPercent, shiftedFedUsdPerCwt, fedWayUsd },
      best: most === usualWayUsd ? ('usual' as const) : most === soldWayUsd ? ('sell-early' as const) : ('feed-early' as const),
    };
  };
  const falls = shifted('falls', -movePercent);
  const stays = shifted('stays', 0);
  const rises = shifted('rises', movePercent);
  const best = falls.best === stays.best && stays.best === rises.best ? stays.best : ('turns' as const);
  const [low, high] = [lineOf('low'), lineOf('high')];
  const earlyUsd = isFed ? money.feedEarlyUsd : money.sellEarlyUsd;
  const nursingLbPerDay = (cowWeightLb * likely.milkingPercent) / 100;
  const pairEatsLb = (nursingLbPerDay + likely.calfLbPerDay) * aheadDays;
  return {
    nursingMeanLb,
    fedMeanLb,
    ...{ nursingPercent: eaten.milkingPercent, idlePercent: eaten.dryPercent, calfPercent: eaten.calfPercent, calfLbPerDay: eaten.calfLbPerDay },
    cowSavedLb: eaten.cowLb,
    calfSavedLb: eaten.calfLb,
    savedLb: eaten.sparedLb,
    calfNeedLb,
    calfNeedHerdLb: calfNeedLb * pairsHead,
    keptLb: eaten.keptLb,
    keptHerdLb,
    lowKeptHerdLb: low.keptHerdLb,
    highKeptHerdLb: high.keptHerdLb,
    cowOnlyPercent: (100 * (likely.milkingPercent - likely.dryPercent)) / likely.milkingPercent,
    bothPercent: rest.sparedPercent,
    cowDays: rest.cowDays,
    calfDays: rest.calfDays,
    pairEatsLb,
    stillEatsLb: pairEatsLb - eaten.sparedLb,
    nursingGainLbPerDay: (usualWeightLb - earlyWeightLb) / aheadDays,
    slideUsdPerCwt: slideOf(values),
    gainUsdPerLb: valueOfGainUsdPerLb({
      startWeightLb: earlyWeightLb,
      startPriceUsdPerCwt: earlyPriceUsdPerCwt,
      endWeightLb: usualWeightLb,
      endPriceUsdPerCwt: usualPriceUsdPerCwt,
    }).gainUsdPerLb,
    calfUsdPerDay,
    fedWeightLb: money.fedWeightLb,
    fedPriceUsdPerCwt: money.fedPriceUsdPerCwt,
    savedUsd: money.sparedUsd,
    usualUsd: money.usualUsd,
    lowUsualUsd: falls.line.usualWayUsd,
    highUsualUsd: rises.line.usualWayUsd,
    sellEarlyUsd: money.sellEarlyUsd,
    feedEarlyUsd: isFed ? money.feedEarlyUsd : 0,
    lowFeedUsd: isFed ? falls.fedLine.fedWayUsd : 0,
    highFeedUsd: isFed ? rises.fedLine.fedWayUsd : 0,
    best,
    earlyUsd,
    ...byMarketOf(movePercent, money.usualUsd, earlyUsd, isFed ? (money.fedWeightLb * money.fedPriceUsdPerCwt) / 100 : 0),
    swings: earlyWeaningSwings({
      ...values,
      fed: isFed ? { weightLb: money.fedWeightLb, priceUsdPerCwt: money.fedPriceUsdPerCwt, usdPerDay: calfUsdPerDay } : undefined,
      sparedLb: { low: low.sparedLb, likely: eaten.sparedLb, high: high.sparedLb },
    }).map(({ input, atLow, atHigh, swing }) => ({ input, lowEndUsd: atLow, highEndUsd: atHigh, swingUsd: swing })),
    lines: [low, likely, high].map(({ rest: __, ...line }) => line),
    markets: [falls.line, stays.line, rises.line],
    fedMarkets: isFed ? [falls.fedLine, stays.fedLine, rises.fedLine] : [],
  } as const;
}
