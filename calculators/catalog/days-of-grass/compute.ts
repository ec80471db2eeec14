import { densityOf } from '../../asks/stand.ts';
import { stockLinesOf } from '../../asks/stock.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { availableFromHeight } from '../../math/forage/availableFromHeight.ts';
import { eatenLbPerAc } from '../../math/forage/eatenLbPerAc.ts';
import { grazingDays } from '../../math/forage/grazingDays.ts';
import { tabledEatenPercent } from '../../math/forage/tabledEatenPercent.ts';
import { usableForageLb } from '../../math/forage/usableForageLb.ts';
import { dailyIntakeLb } from '../../math/herd/dailyIntakeLb.ts';
import { headToRemove } from '../../math/herd/headToRemove.ts';
import { type IntakeSwing, intakeSwing } from '../../math/herd/intakeSwing.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { grazers } from '../../tables/grazers.ts';
import { grazedUntilGone } from '../../tables/harvestShare.ts';
import type { inputs } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;

/** Nobody plans farther ahead on grass that stands today. */
export const longestDays = 365;
/** Our own: how far a mean of twenty heights may be off, and a share eaten within a week, in percent of what stands. */
const heightErrorIn = 0.5;
const weekErrorPercent = 5;
const weekDays = 7;
/** The table of later days is for people to choose a day from. */
const mostRows = 12;
const curveParts = 20;

/** A day, or an animal, that is missing by rounding alone is not missing. */
const hair = 1e-9;
const wholeDown = (value: number): number => Math.floor(value + hair);
const wholeUp = (value: number): number => Math.ceil(value - hair);

type Ends = readonly [low: number, likely: number, high: number];
function eatenEnds({ eatenFrom, ownEatenPercent }: Asked): Ends {
  if (eatenFrom === 'own') return [ownEatenPercent, ownEatenPercent, ownEatenPercent];
  const week = tabledEatenPercent(weekDays);
  return eatenFrom === 'week'
    ? [week - weekErrorPercent, week, week + weekErrorPercent]
    : [grazedUntilGone.lowPercent, grazedUntilGone.likelyPercent, grazedUntilGone.highPercent];
}
function densityEnds({ densityFrom, stand, condition, densityLbPerAcIn }: Asked): Ends {
  if (densityFrom === 'own') return [densityLbPerAcIn, densityLbPerAcIn, densityLbPerAcIn];
  const [low, high] = densityOf(stand, condition);
  return [low, (low + high) / 2, high];
}

/** Bulls, for which no guide prints a share, and stock that the list does not name are taken to swing as cows do. */
const swingOf = (kind: Asked['stock'][number]['kind']): IntakeSwing =>
  intakeSwing(kind === 'other' || kind === 'bull' ? { animal: 'beef-cow', stage: 'dry', quality: 'average' } : grazers[kind].eats);
/** What all stock eat in a day where each kind eats the least, or the most, that its guides let expect. */
const demandAt = ({ stock }: Asked, end: keyof IntakeSwing): number =>
  sumOf(stock, ({ kind, countHead, weightLb, intakePercent }) => dailyIntakeLb({ head: countHead, weightLb, intakePercent }) * swingOf(kind)[end]);

interface End {
  readonly endHeightIn: number;
  readonly endLbPerAcIn: number;
  readonly endEatenPercent: number;
  readonly endDemandLbPerDay: number;
}
/** How long the grass lasts with one height, density, share eaten and appetite. */
function grassOf(asked: Asked, end: End) {
  const { areaAc, reachPercent, stopHeightIn, growthLbPerAcDay } = asked;
  const eatenOf = (lbPerAc: number): number =>
    usableForageLb([
      {
        areaAc,
        usableShare: reachPercent / 100,
        lbPerAc: eatenLbPerAc({ measured: 'above-stubble', lbPerAc, grazedShare: end.endEatenPercent / 100 }),
      },
    ]);
  const endAvailableLbPerAc = availableFromHeight({ heightIn: end.endHeightIn, stubbleIn: stopHeightIn, poundsPerAcreInch: end.endLbPerAcIn });
  const endEatenLb = eatenOf(endAvailableLbPerAc);
  const endGrowthLbPerDay = eatenOf(growthLbPerAcDay);
  const endNetLbPerDay = end.endDemandLbPerDay - endGrowthLbPerDay;
  const endDays = endNetLbPerDay <= 0 ? longestDays : Math.min(longestDays, grazingDays({ eatenLb: endEatenLb, dailyDemandLb: endNetLbPerDay }));
  return { ...end, endAvailableLbPerAc, endEatenLb, endGrowthLbPerDay, endNetLbPerDay, endDays };
}
type Grass = ReturnType<typeof grassOf>;

export type Verdict = 'nothing' | 'keeps-up' | 'year' | 'lasts' | 'short';
function verdictOf({ endAvailableLbPerAc, endNetLbPerDay, endDays }: Grass, untilDays: number): Verdict {
  if (endAvailableLbPerAc === 0) return 'nothing';
  if (endNetLbPerDay <= 0) return 'keeps-up';
  if (endDays >= longestDays) return 'year';
  return wholeDown(endDays) < untilDays ? 'short' : 'lasts';
}

/** What is left of it day by day, as likely and at both ends: until nothing is left at best, or until the day that is wanted where that never comes. */
function dayByDayOf(todayDay: number, untilDays: number, [low, likely, high]: readonly [Grass, Grass, Grass]) {
  const lastDays = high.endDays < longestDays ? wholeDown(high.endDays) + 1 : Math.max(untilDays, wholeDown(likely.endDays) + 1);
  const every = Math.max(1, Math.ceil(lastDays / curveParts));
  const evenly = Array.from({ length: Math.ceil(lastDays / every) + 1 }, (_, at) => Math.min(lastDays, at * every));
  const turns = [low, likely, high].flatMap(({ endDays }) => [wholeDown(endDays), wholeDown(endDays) + 1]).filter((each) => each <= lastDays);
  const left = ({ endEatenLb, endNetLbPerDay }: Grass, afterDays: number): number => Math.max(0, endEatenLb - endNetLbPerDay * afterDays);
  return [...new Set([...evenly, ...turns])]
    .toSorted((one, other) => one - other)
    .map((afterDays) => ({
      leftDay: todayDay + afterDays,
      afterDays,
      leftLb: left(likely, afterDays),
      lowLeftLb: left(low, afterDays),
      highLeftLb: left(high, afterDays),
    }));
}

/** The kind that eats most, all its head together. */
function mainOf({ stock }: Asked) {
  const lines = stock.map(({ kind, countHead, weightLb, intakePercent }) => ({
    mainKind: kind,
    mainHead: countHead,
    eachLbPerDay: dailyIntakeLb({ head: 1, weightLb, intakePercent }),
  }));
  const [first, ...others] = lines;
  if (first === undefined) throw new RangeError('mainOf needs a kind of stock');
  return others.reduce((most, each) => (each.mainHead * each.eachLbPerDay > most.mainHead * most.eachLbPerDay ? each : most), first);
}

export function compute(asked: Asked) {
  const { todayDay, untilDay, heightIn, canGoHead } = asked;
  const stockLines = stockLinesOf(asked.stock);
  const demandLbPerDay = sumOf(stockLines, ({ lineLbPerDay }) => lineLbPerDay);
  const [lowLbPerAcIn, usedLbPerAcIn, highLbPerAcIn] = densityEnds(asked);
  const [lowEatenPercent, eatenPercent, highEatenPercent] = eatenEnds(asked);
  const likely = grassOf(asked, {
    endHeightIn: heightIn,
    endLbPerAcIn: usedLbPerAcIn,
    endEatenPercent: eatenPercent,
    endDemandLbPerDay: demandLbPerDay,
  });
  const low = grassOf(asked, {
    endHeightIn: Math.max(0, heightIn - heightErrorIn),
    endLbPerAcIn: lowLbPerAcIn,
    endEatenPercent: lowEatenPercent,
    endDemandLbPerDay: demandAt(asked, 'highRatio'),
  });
  const high = grassOf(asked, {
    endHeightIn: heightIn + heightErrorIn,
    endLbPerAcIn: highLbPerAcIn,
    endEatenPercent: highEatenPercent,
    endDemandLbPerDay: demandAt(asked, 'lowRatio'),
  });
  const untilDays = untilDay - todayDay;
  const verdict = verdictOf(likely, untilDays);
  const wholeDays = wholeDown(likely.endDays);
  const lowWholeDays = wholeDown(low.endDays);
  const highWholeDays = wholeDown(high.endDays);

  // Heads are counted in the kind that eats most.
  const main = mainOf(asked);
  const herdHead = demandLbPerDay / main.eachLbPerDay;
  const lastingLb = likely.endEatenLb + likely.endGrowthLbPerDay * untilDays;
  const goingOn =
    verdict !== 'short'
      ? []
      : Array.from({ length: mostRows }, (_, week) => week * weekDays)
          .filter((afterDays) => afterDays <= likely.endDays && afterDays < untilDays)
          .map((afterDays) => {
            const exactHead = Math.min(
              herdHead,
              headToRemove({
                head: herdHead,
                eatenLb: lastingLb,
                dailyLbPerHead: main.eachLbPerDay,
                daysToFeed: untilDays,
                daysUntilSale: afterDays,
              }),
            );
            const goHead = wholeUp(exactHead);
            const share: 'some' | 'all' | 'more' = goHead < main.mainHead ? 'some' : goHead === main.mainHead ? 'all' : 'more';
            return { goDay: todayDay + afterDays, afterDays, exactHead, goHead, share };
          });
  // Where it lasts nobody need go.
  const goTodayHead = Math.max(0, ...goingOn.slice(0, 1).map(({ goHead }) => goHead));
  // No more can leave than there are; all other stock counted in that kind.
  const leaveHead = Math.min(canGoHead, wholeUp(herdHead));
  const canSell = goTodayHead > 0 && leaveHead >= goTodayHead;
  const lastSellDays = canSell
    ? wholeDown(Math.min(untilDays - (herdHead * untilDays - lastingLb / main.eachLbPerDay) / leaveHead, likely.endDays))
    : 0;
  return {
    verdict,
    offDay: todayDay + wholeDays,
    lowOffDay: todayDay + lowWholeDays,
    highOffDay: todayDay + highWholeDays,
    lastsDays: likely.endDays,
    wholeDays,
    lowWholeDays,
    highWholeDays,
    untilDays,
    shortDays: Math.max(0, untilDays - likely.endDays),
    wholeShortDays: Math.max(0, untilDays - wholeDays),
    spareDays: Math.max(0, wholeDays - untilDays),
    stockLines,
    demandLbPerDay,
    usedLbPerAcIn,
    availableLbPerAc: likely.endAvailableLbPerAc,
    eatenPercent,
    eatenLb: likely.endEatenLb,
    growthLbPerDay: likely.endGrowthLbPerDay,
    netLbPerDay: likely.endNetLbPerDay,
    rangeEnds: [
      { end: 'low' as const, ...low },
      { end: 'high' as const, ...high },
    ],
    highNetLbPerDay: high.endNetLbPerDay,
    ...main,
    herdHead,
    lastingLb,
    goingOn,
    goTodayHead,
    leaveHead,
    sellHead: Math.min(goTodayHead, main.mainHead),
    lastSellDays,
    sellByDay: todayDay + lastSellDays,
    missingHead: Math.max(0, goTodayHead - leaveHead),
    dayByDay: verdict === 'short' || verdict === 'lasts' ? dayByDayOf(todayDay, untilDays, [low, likely, high]) : [],
  };
}
