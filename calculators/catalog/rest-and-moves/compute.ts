import { availableFromHeight } from '../../math/forage/availableFromHeight.ts';
import { grazingDays } from '../../math/forage/grazingDays.ts';
import { dailyIntakeLb } from '../../math/herd/dailyIntakeLb.ts';
import { growthFromHeights } from '../../math/rotation/growthFromHeights.ts';
import { moveDays } from '../../math/rotation/moveDays.ts';
import { paddockAcres } from '../../math/rotation/paddockAcres.ts';
import { paddocksNeeded, wholePaddocks } from '../../math/rotation/paddocksNeeded.ts';
import { regrownLbPerAc } from '../../math/rotation/regrownLbPerAc.ts';
import { restDaysFromGrowth } from '../../math/rotation/restDaysFromGrowth.ts';
import { restDaysGiven } from '../../math/rotation/restDaysGiven.ts';
import { restingShare } from '../../math/rotation/restingShare.ts';
import { stockDensityLbPerAc } from '../../math/rotation/stockDensityLbPerAc.ts';
import { grazedShareByDays } from '../../tables/harvestShare.ts';
import { type Forage, publishedRest } from './inputs.ts';

/** Growth that takes a year or more to bring the grass back is no growth: nobody plans a rest on it. */
export const longestRestDays = 365;
/** Past about this many days in one paddock stock take a second bite of the same plant. */
export const secondBiteDays = 7;
export const lookAheadDays = 3;
const mostMoves = 40;

interface Stock {
  readonly countHead: number;
  readonly weightLb: number;
  readonly intakePercent: number;
}
interface Asked {
  readonly forage: Forage;
  readonly startHeightIn: number;
  readonly stopHeightIn: number;
  readonly densityLbPerAcIn: number;
  readonly growthFrom: 'known' | 'heights';
  readonly growthLbPerAcDay: number;
  readonly firstHeightIn: number;
  readonly secondHeightIn: number;
  readonly betweenDays: number;
  readonly stock: readonly Stock[];
  readonly startDay: number;
  readonly paddockCount: number;
  readonly acresFrom: 'known' | 'needed';
  readonly ownPaddockAc: number;
  readonly stayDays: number;
  readonly herdCount: number;
  readonly eatenFrom: 'by-stay' | 'own';
  readonly ownEatenPercent: number;
}

/** Share eaten of what stands above the stubble; the table ends at a week, and a longer stay is read there. */
const tabledEatenPercent = (days: number): number => grazedShareByDays.findLast((row) => row.days <= days)?.percent ?? grazedShareByDays[0].percent;

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
  const todayVerdict: 'enough' | 'short' = verdict === 'grows-back' && givenRestDays >= restDays ? 'enough' : 'short';
  const occupiedDays = stayDays * herdCount;
  const slowerStayDays = paddockCount > herdCount ? restDays / (paddockCount - herdCount) : 0;

  const stockLines = asked.stock.map(({ countHead, weightLb, intakePercent }) => ({
    countHead,
    weightLb,
    intakePercent,
    lineWeightLb: countHead * weightLb,
    lineLbPerDay: dailyIntakeLb({ head: countHead, weightLb, intakePercent }),
  }));
  const stockWeightLb = stockLines.reduce((sum, line) => sum + line.lineWeightLb, 0);
  const demandLbPerDay = stockLines.reduce((sum, line) => sum + line.lineLbPerDay, 0);
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

  const rounds = verdict === 'none-until-rain' ? 1 : 2;
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
