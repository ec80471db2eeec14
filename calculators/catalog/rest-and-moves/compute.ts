import { stockLinesOf } from '../../asks/stock.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { availableFromHeight } from '../../math/forage/availableFromHeight.ts';
import { grazingDays } from '../../math/forage/grazingDays.ts';
import { tabledEatenPercent } from '../../math/forage/tabledEatenPercent.ts';
import { growthFromHeights } from '../../math/rotation/growthFromHeights.ts';
import { moveDays } from '../../math/rotation/moveDays.ts';
import { paddockAcres } from '../../math/rotation/paddockAcres.ts';
import { paddocksNeeded, wholePaddocks } from '../../math/rotation/paddocksNeeded.ts';
import { regrownLbPerAc } from '../../math/rotation/regrownLbPerAc.ts';
import { restDaysFromGrowth } from '../../math/rotation/restDaysFromGrowth.ts';
import { restDaysGiven } from '../../math/rotation/restDaysGiven.ts';
import { restingShare } from '../../math/rotation/restingShare.ts';
import { stockDensityLbPerAc } from '../../math/rotation/stockDensityLbPerAc.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { type inputs, publishedRest } from './inputs.ts';

/** Growth that takes a year or more to bring the grass back is no growth: nobody plans a rest on it. */
export const longestRestDays = 365;
/** Past about this many days in one paddock stock take a second bite of the same plant. */
export const secondBiteDays = 7;
export const lookAheadDays = 3;
const mostMoves = 40;

type Asked = ValuesOf<typeof inputs>;

/** A day begun is a day of rest. */
const wholeDays = (days: number): number => Math.ceil(days - 1e-9);

const growthNow = (asked: Asked): number =>
  asked.growthFrom === 'known'
    ? asked.growthLbPerAcDay
    : Math.max(
        0,
        growthFromHeights({
          firstHeightIn: asked.firstHeightIn,
          secondHeightIn: asked.secondHeightIn,
          daysBetween: asked.betweenDays,
          poundsPerAcreInch: asked.densityLbPerAcIn,
        }),
      );

export function compute(asked: Asked) {
  const { forage, startHeightIn, stopHeightIn, densityLbPerAcIn, paddockCount, stayDays, herdCount } = asked;
  const growthNowLbPerAcDay = growthNow(asked);
  const heights = { startHeightIn, stopHeightIn, poundsPerAcreInch: densityLbPerAcIn };
  const regrowLbPerAc = availableFromHeight({ heightIn: startHeightIn, stubbleIn: stopHeightIn, poundsPerAcreInch: densityLbPerAcIn });
  const restDays =
    growthNowLbPerAcDay > 0 ? Math.min(longestRestDays, restDaysFromGrowth({ ...heights, growthLbPerAcDay: growthNowLbPerAcDay })) : longestRestDays;
  const verdict: 'none-until-rain' | 'grows-back' = restDays === longestRestDays ? 'none-until-rain' : 'grows-back';
  const published = publishedRest(forage);

  const rotation = { paddocks: paddockCount, stayDays, herds: herdCount };
  const givenRestDays = restDaysGiven(rotation);
  const grownVerdict = givenRestDays >= restDays ? 'enough' : 'short';
  const todayVerdict: 'enough' | 'short' | 'none' = givenRestDays === 0 ? 'none' : verdict === 'grows-back' ? grownVerdict : 'short';
  const occupiedDays = stayDays * herdCount;
  const slowerStayDays = paddockCount > herdCount ? restDays / (paddockCount - herdCount) : 0;

  const stockLines = stockLinesOf(asked.stock).map((line) => ({ ...line, lineWeightLb: line.countHead * line.weightLb }));
  const stockWeightLb = sumOf(stockLines, (line) => line.lineWeightLb);
  const demandLbPerDay = sumOf(stockLines, (line) => line.lineLbPerDay);
  const eatenPercent = asked.eatenFrom === 'own' ? asked.ownEatenPercent : tabledEatenPercent(occupiedDays);
  // Every herd passes through every paddock, so all the stock together eat there for one stay.
  const paddockAc = paddockAcres({ dailyDemandLb: demandLbPerDay, stayDays, availableLbPerAc: regrowLbPerAc, grazedShare: eatenPercent / 100 });

  const acresAc = asked.acresFrom === 'known' ? asked.ownPaddockAc : paddockAc;
  const feedOf = (availableLbPerAc: number): number => acresAc * availableLbPerAc * (eatenPercent / 100);
  const daysOf = (eatenLb: number): number => grazingDays({ eatenLb, dailyDemandLb: demandLbPerDay });
  const backLbPerAc = regrownLbPerAc({ growthLbPerAcDay: growthNowLbPerAcDay, restDays: givenRestDays, fullLbPerAc: regrowLbPerAc });
  const fullFeedLb = feedOf(regrowLbPerAc);
  const backFeedLb = feedOf(backLbPerAc);
  const stayNeedLb = demandLbPerDay * stayDays;
  const shortFeedLb = Math.max(0, stayNeedLb - backFeedLb);

  // Where nothing grows back, or every paddock always has stock in it, there is no second round to plan.
  const rounds = verdict === 'none-until-rain' || todayVerdict === 'none' ? 1 : 2;
  return {
    growthNowLbPerAcDay,
    regrowLbPerAc,
    restDays,
    verdict,
    lowRestDays: published.low,
    highRestDays: published.high,
    rangeFrom: published.from,
    exactPaddocks: paddocksNeeded({ restDays, stayDays, herds: herdCount }),
    neededPaddocks: wholePaddocks({ restDays, stayDays, herds: herdCount }),
    givenRestDays,
    todayVerdict,
    shortDays: Math.max(0, restDays - givenRestDays),
    wholeRestDays: wholeDays(restDays),
    grassBackDay: asked.startDay + occupiedDays + wholeDays(restDays),
    wholeShortDays: Math.max(0, wholeDays(restDays) - givenRestDays),
    slowerStayDays,
    slowerOccupiedDays: slowerStayDays * herdCount,
    wholeSlowerStayDays: wholeDays(slowerStayDays),
    wholeSlowerOccupiedDays: wholeDays(slowerStayDays) * herdCount,
    occupiedDays,
    restingPercent: restingShare(rotation) * 100,
    stockLines,
    stockWeightLb,
    demandLbPerDay,
    eatenPercent,
    paddockAc,
    acresAc,
    fullFeedLb,
    fullDays: daysOf(fullFeedLb),
    backLbPerAc,
    backFeedLb,
    backDays: daysOf(backFeedLb),
    stayNeedLb,
    shortFeedLb,
    // Rounding alone must not call feed short.
    backVerdict: shortFeedLb > 1e-9 * stayNeedLb ? ('short' as const) : ('feeds' as const),
    todayAc: paddockAc * paddockCount,
    densityLbPerAc: stockDensityLbPerAc({ head: 1, weightLb: stockWeightLb / herdCount, areaAc: paddockAc }),
    moves: moveDays({
      startDay: asked.startDay,
      paddocks: paddockCount,
      stayDays,
      herds: herdCount,
      leadDays: lookAheadDays,
      moves: Math.min(rounds * paddockCount, Math.floor(mostMoves / herdCount)),
    }).map(({ paddock, herd, inDay, outDay, lookDay }, at) => ({
      paddock,
      herd,
      lookDay,
      inDay,
      outDay,
      goesIn: at < paddockCount * herdCount ? ('ready' as const) : todayVerdict === 'enough' ? ('if-back' as const) : ('not-back' as const),
    })),
  };
}
