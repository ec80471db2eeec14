import { earlyWeaningFeedLb } from '../../math/money/earlyWeaningFeedLb.ts';
import { earlyWeaningUsd } from '../../math/money/earlyWeaningUsd.ts';
import { oneAtATimeSwings } from '../../math/money/oneAtATimeSwings.ts';
import { slideUsdPerCwt } from '../../math/money/slidPriceUsdPerCwt.ts';
import { valueOfGainUsdPerLb } from '../../math/money/valueOfGainUsdPerLb.ts';
import { intake } from '../../tables/intake.ts';
import type { Values } from './inputs.ts';

interface Known {
  readonly lowSavedLb: number;
  readonly savedLb: number;
  readonly highSavedLb: number;
  readonly fedWeightLb: number;
  readonly fedPriceUsdPerCwt: number;
  readonly calfUsdPerDay: number;
  readonly usualUsd: number;
  /** Weaned early, the way that was chosen: sold or fed. */
  readonly earlyUsd: number;
}
/** How far the numbers that no quote or guide gives a range for are moved. */
const tenth = 0.1;
const plotPoints = 9;
/** Where no move of the market makes both ways even: the left end of every plot, so that none is marked. */
export const noEvenPercent = -100;

/** What weaning early leaves over the usual time for one calf, and how far each number moves that by itself. */
export function swingsOf(values: Values, known: Known) {
  const { calfGoes, movePercent, earlyWeightLb, earlyPriceUsdPerCwt, usualWeightLb, usualPriceUsdPerCwt, weaningCostUsd } = values;
  const { aheadDays, interestPercent, forageUsdPerTon } = values;
  const isFed = calfGoes !== 'sold';
  const around = (likely: number) => ({ low: likely * (1 - tenth), likely, high: likely * (1 + tenth) });
  const early = (value: (input: Moved) => number): number =>
    (isFed
      ? ((known.fedWeightLb * known.fedPriceUsdPerCwt) / 100) * (1 + value('market') / 100) - value('feed') * aheadDays
      : ((earlyWeightLb * value('quote')) / 100) * (1 + (interestPercent * aheadDays) / 36_500)) -
    value('weaning-cost') +
    (value('guides') * value('forage')) / 2000;
  const usual = (value: (input: Moved) => number): number => ((value('usual-weight') * usualPriceUsdPerCwt) / 100) * (1 + value('market') / 100);
  type Moved = 'market' | 'quote' | 'usual-weight' | 'guides' | 'forage' | 'weaning-cost' | 'feed';
  return oneAtATimeSwings<Moved>(
    (value) => early(value) - usual(value),
    [
      { input: 'market', low: -movePercent, likely: 0, high: movePercent },
      { input: 'usual-weight', ...around(usualWeightLb) },
      { input: 'guides', low: Math.min(known.lowSavedLb, known.savedLb), likely: known.savedLb, high: Math.max(known.highSavedLb, known.savedLb) },
      { input: 'forage', ...around(forageUsdPerTon) },
      { input: 'weaning-cost', ...around(weaningCostUsd) },
      isFed ? { input: 'feed', ...around(known.calfUsdPerDay) } : { input: 'quote', ...around(earlyPriceUsdPerCwt) },
    ],
  ).map(({ input, atLow, atHigh, swing }) => ({ input, lowEndUsd: atLow, highEndUsd: atHigh, swingUsd: swing }));
}

/** Both ways as the market moves between now and the usual day, and the move that makes them even. */
export function byMarketOf({ calfGoes, movePercent }: Values, { usualUsd, earlyUsd, fedWeightLb, fedPriceUsdPerCwt }: Known) {
  const grossUsd = calfGoes === 'sold' ? 0 : (fedWeightLb * fedPriceUsdPerCwt) / 100;
  const fixedUsd = earlyUsd - grossUsd;
  const even = usualUsd === grossUsd ? noEvenPercent : 100 * (fixedUsd / (usualUsd - grossUsd) - 1);
  const isEven: 'yes' | 'no' = even > noEvenPercent && even <= 1000 ? 'yes' : 'no';
  // Wide enough to show where the two meet, if that is anywhere near.
  const reach = isEven === 'yes' && Math.abs(even) <= 75 ? 1.2 * Math.abs(even) : 0;
  const span = Math.min(90, Math.max(20, 2 * movePercent, reach));
  return {
    grossUsd,
    isEven,
    evenMarketPercent: isEven === 'yes' ? even : noEvenPercent,
    byMarket: Array.from({ length: plotPoints }, (_, at) => {
      const marketPercent = -span + (2 * span * at) / (plotPoints - 1);
      return { marketPercent, usualAtUsd: usualUsd * (1 + marketPercent / 100), earlyAtUsd: grossUsd * (1 + marketPercent / 100) + fixedUsd };
    }),
  };
}

type End = 'low' | 'likely' | 'high';
interface CowPair {
  readonly milkingPercent: number;
  readonly dryPercent: number;
}

const rowOf = (animal: string, stage: string, quality: string) => {
  const found = intake.find((row) => row.animal === animal && row.stage === stage && row.quality === quality);
  if (found === undefined) throw new RangeError(`early-weaning needs a row of the intake table, got ${animal}, ${stage}, ${quality}`);
  return found;
};

/**
 * What a cow eats nursing and dry. Guides that set one high set the other high too, so each end takes both from one kind of guide;
 * the least and the most saving are the ends.
 */
function cowPairs({ intakeFrom, milkingPercent, dryPercent }: Values): Readonly<Record<End, CowPair>> {
  if (intakeFrom === 'own') {
    const pair = { milkingPercent, dryPercent };
    return { low: pair, likely: pair, high: pair };
  }
  const nursing = rowOf('beef-cow', 'lactating', intakeFrom);
  const dry = rowOf('beef-cow', 'dry', intakeFrom);
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
  const { lowPercent, likelyPercent, highPercent } = rowOf('nursing-calf', 'forage beside milk', 'any');
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
  const known = {
    lowSavedLb: low.sparedLb,
    savedLb: eaten.sparedLb,
    highSavedLb: high.sparedLb,
    fedWeightLb: money.fedWeightLb,
    fedPriceUsdPerCwt: money.fedPriceUsdPerCwt,
    calfUsdPerDay,
    usualUsd: money.usualUsd,
    earlyUsd: isFed ? money.feedEarlyUsd : money.sellEarlyUsd,
  };
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
    slideUsd: slideOf(values),
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
    earlyUsd: known.earlyUsd,
    ...byMarketOf(values, known),
    swings: swingsOf(values, known),
    lines: [low, likely, high].map(({ rest: __, ...line }) => line),
    markets: [falls.line, stays.line, rises.line],
    fedMarkets: isFed ? [falls.fedLine, stays.fedLine, rises.fedLine] : [],
  } as const;
}
