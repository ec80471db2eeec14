import { grownPercentBy, growthBegins } from '../../asks/growthCurve.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { eatenLbPerAc, type Stand } from '../../math/forage/eatenLbPerAc.ts';
import { growthSplit } from '../../math/forage/growthSplit.ts';
import { nearWaterShare } from '../../math/forage/nearWaterShare.ts';
import { onDryBasis } from '../../math/forage/onDryBasis.ts';
import { usableForageLb } from '../../math/forage/usableForageLb.ts';
import { usableSlopeShare } from '../../math/forage/usableSlopeShare.ts';
import { carryingHead } from '../../math/herd/carryingHead.ts';
import { dailyIntakeLb } from '../../math/herd/dailyIntakeLb.ts';
import { headToRemove } from '../../math/herd/headToRemove.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { yieldBasisPercents } from '../../tables/yieldBasis.ts';
import { firstOfMonth, monthIndexOf, yearOf } from '../../units/days.ts';
import type { inputs } from './inputs.ts';

/** How far the share eaten may be off: from range to pasture moved every few days it runs over more than this. */
const shareSwingPercent = 15;
const shareLimitsPercent = { least: 5, most: 90 } as const;
/** About as many points as a curve on a phone needs. */
const delayPoints = 10;

type Asked = ValuesOf<typeof inputs>;

/** Last day of each month from one day to another, the last of them cut short. */
function monthEnds(fromDay: number, toDay: number): readonly number[] {
  const months = (yearOf(toDay) - yearOf(fromDay)) * 12 + monthIndexOf(toDay) - monthIndexOf(fromDay);
  return Array.from({ length: months + 1 }, (_, ahead) => Math.min(toDay, firstOfMonth(monthIndexOf(fromDay) + ahead + 1, yearOf(fromDay)) - 1));
}

function eatenPercentOf({ yieldMeans, harvestPercent, gonePercent, eatenOfGonePercent, grazedPercent }: Asked): number {
  switch (yieldMeans) {
    case 'eaten-of-growth':
      return harvestPercent;
    case 'gone-of-growth':
      return 100 * growthSplit({ goneShare: gonePercent / 100, eatenOfGone: eatenOfGonePercent / 100 }).eatenShare;
    case 'above-stubble':
      return grazedPercent;
  }
}
/** What cattle use of each pasture, by its distance from water and its slope; nothing where that is not what is asked. */
const reachesOf = ({ yieldFrom, reachFrom, pastures }: Asked) =>
  yieldFrom === 'survey' && reachFrom === 'guide'
    ? pastures.map(({ waterDistanceMi, slopePercent }, index) => {
        const nearShare = nearWaterShare({ farthestMi: waterDistanceMi });
        const slopeShare = usableSlopeShare({ slopePercent });
        return {
          pasture: index + 1,
          waterDistanceMi,
          nearPercent: 100 * nearShare,
          slopePercent,
          slopeUsedPercent: 100 * slopeShare,
          reachPercent: 100 * nearShare * slopeShare,
        };
      })
    : [];
/** What stock would eat of each pasture in a normal and in a poor year: from its yield. */
function groundsOf(asked: Asked, eatenPercent: number, reaches: ReturnType<typeof reachesOf>) {
  if (asked.yieldFrom !== 'survey') return [];
  const stand = (lbPerAc: number): Stand =>
    asked.yieldMeans === 'above-stubble'
      ? { measured: 'above-stubble', lbPerAc, grazedShare: eatenPercent / 100 }
      : { measured: 'whole-growth', lbPerAc, harvestShare: eatenPercent / 100 };
  return asked.pastures.map(({ areaAc, ownUsablePercent, normalLbPerAc, poorLbPerAc }, index) => {
    const usablePercent = reaches[index]?.reachPercent ?? ownUsablePercent;
    const usable = usablePercent / 100;
    const eatenLb = (asPrinted: number): number => {
      const lbPerAc = onDryBasis({ weightLb: asPrinted, fromDryMatterPercent: yieldBasisPercents[asked.yieldBasis], toDryMatterPercent: 100 });
      return usableForageLb([{ areaAc, usableShare: usable, lbPerAc: eatenLbPerAc(stand(lbPerAc)) }]);
    };
    return {
      pasture: index + 1,
      areaAc,
      usablePercent,
      usableAc: areaAc * usable,
      normalLbPerAc,
      poorLbPerAc,
      normalEatenLb: eatenLb(normalLbPerAc),
      poorEatenLb: eatenLb(poorLbPerAc),
    };
  });
}
/** The same from what was run there. It was eaten already: no share comes off. */
const usualYearsOf = ({ yieldFrom, pastures, usualEatenLbPerDay, poorPercent }: Asked) =>
  yieldFrom === 'survey'
    ? []
    : pastures.map(({ usualHead, lastedDays }, index) => {
        const usualEatenLb = usualHead * lastedDays * usualEatenLbPerDay;
        return { pasture: index + 1, usualHead, lastedDays, usualEatenLb, poorUsualLb: (usualEatenLb * poorPercent) / 100 };
      });

export function compute(asked: Asked) {
  const { fromDay, toDay, todayDay, goDay, yieldFrom } = asked;
  const eatenPercent = eatenPercentOf(asked);
  const reaches = reachesOf(asked);
  const grounds = groundsOf(asked, eatenPercent, reaches);
  const usualYears = usualYearsOf(asked);
  const isSurvey = yieldFrom === 'survey';
  const normalYearLb = isSurvey ? sumOf(grounds, (each) => each.normalEatenLb) : sumOf(usualYears, (each) => each.usualEatenLb);
  const poorYearLb = isSurvey ? sumOf(grounds, (each) => each.poorEatenLb) : sumOf(usualYears, (each) => each.poorUsualLb);

  const kinds = asked.herd.map(({ kind, countHead, weightLb, intakePercent }) => {
    const eachLbPerDay = dailyIntakeLb({ head: 1, weightLb, intakePercent });
    return { kind, countHead, weightLb, intakePercent, eachLbPerDay, lineLbPerDay: countHead * eachLbPerDay };
  });
  const [first] = kinds;
  if (!first) throw new RangeError('compute needs a herd of one line at least');
  const firstHead = first.countHead;
  const firstLbPerDay = first.eachLbPerDay;
  const herdLbPerDay = sumOf(kinds, (each) => each.lineLbPerDay);
  const othersLbPerDay = sumOf(kinds.slice(1), (each) => each.lineLbPerDay);

  const beginDay = growthBegins(asked, toDay);
  const grownBy = (day: number): number => grownPercentBy(asked, beginDay, day);
  const endPercent = grownBy(toDay);
  const grownPercent = (100 * grownBy(todayDay)) / endPercent;
  // What grows after the last day feeds nobody before it. A usual year as it was run has that behind it.
  const comesRatio = isSurvey ? endPercent / 100 : 1;
  const normalLb = normalYearLb * comesRatio;
  const poorLb = poorYearLb * comesRatio;
  const thisYearLb = (restPercent: number): number =>
    normalLb * ((asked.soFarPercent / 100) * (grownPercent / 100) + (restPercent / 100) * (1 - grownPercent / 100));
  const thisLb = thisYearLb(asked.restPercent);

  const seasonDays = toDay - fromDay;
  const seasonNeedLb = herdLbPerDay * seasonDays;
  const carries = (eatenLb: number, days: number): number =>
    carryingHead({ eatenLb: Math.max(0, eatenLb - othersLbPerDay * days), dailyLbPerHead: firstLbPerDay, days });
  const year = <Y extends 'normal' | 'poor' | 'this'>(of: Y, supplyLb: number) => ({
    year: of,
    supplyLb,
    balanceLb: supplyLb - seasonNeedLb,
    yearHead: carries(supplyLb, seasonDays),
  });

  const monthLines = monthEnds(fromDay, toDay).map((monthEndDay) => {
    const dueRatio = grownBy(monthEndDay) / endPercent;
    const fedDays = monthEndDay - fromDay;
    const aheadOf = (supplyLb: number): number => supplyLb - herdLbPerDay * fedDays;
    const nowRatio = grownPercent / 100;
    return {
      monthEndDay,
      duePercent: 100 * dueRatio,
      fedDays,
      normalAheadLb: aheadOf(normalLb * dueRatio),
      poorAheadLb: aheadOf(poorLb * dueRatio),
      thisAheadLb: aheadOf(
        normalLb * ((asked.soFarPercent / 100) * Math.min(dueRatio, nowRatio) + (asked.restPercent / 100) * Math.max(0, dueRatio - nowRatio)),
      ),
    };
  });
  const goneDays = todayDay - fromDay;
  const leftDays = toDay - todayDay;
  const eatenSoFarLb = herdLbPerDay * goneDays;
  const leftLb = Math.max(0, thisLb - eatenSoFarLb);
  const mustGo = (supplyLb: number, daysUntilSale: number): { readonly head: number; readonly isLate: boolean } => {
    const forFirstLb = Math.max(0, supplyLb - eatenSoFarLb) - othersLbPerDay * leftDays;
    if (forFirstLb < 0) return { head: firstHead, isLate: true };
    const head = headToRemove({ head: firstHead, eatenLb: forFirstLb, dailyLbPerHead: firstLbPerDay, daysToFeed: leftDays, daysUntilSale });
    return Number.isFinite(head) ? { head, isLate: false } : { head: firstHead, isLate: true };
  };
  // A hair below none is none: rounded up alone it would be minus zero.
  const whole = (head: number): number => Math.max(0, Math.ceil(head - 1e-9));
  const waitDays = goDay - todayDay;
  const { head: exactGoHead, isLate } = mustGo(thisLb, waitDays);
  const verdict: 'all-stay' | 'some-go' | 'too-late' = isLate ? 'too-late' : whole(exactGoHead) > 0 ? 'some-go' : 'all-stay';
  const nowGo = mustGo(thisLb, 0).head;
  /** Nobody weighs the share eaten. All that a pasture gives goes up and down with it. */
  const shares = isSurvey
    ? [
        // A share that already lies past a limit is the end of its own swing.
        Math.min(eatenPercent, Math.max(shareLimitsPercent.least, eatenPercent - shareSwingPercent)),
        eatenPercent,
        Math.max(eatenPercent, Math.min(shareLimitsPercent.most, eatenPercent + shareSwingPercent)),
      ].map((sharePercent) => ({
        sharePercent,
        shareNormalHead: carries((normalLb * sharePercent) / eatenPercent, seasonDays),
        shareGoHead: whole(mustGo((thisLb * sharePercent) / eatenPercent, waitDays).head),
      }))
    : [];
  const lastsDays = Math.min(leftDays, leftLb / herdLbPerDay);
  const everyDays = Math.ceil(leftDays / delayPoints);
  const normal = year('normal', normalLb);
  const poor = year('poor', poorLb);
  const basisPercent = yieldBasisPercents[asked.yieldBasis];
  const otherBasisPercent = asked.yieldBasis === 'air-dry' ? yieldBasisPercents['oven-dry'] : yieldBasisPercents['air-dry'];
  return {
    eatenPercent,
    shares,
    basisPercent,
    otherBasisPercent,
    reaches,
    grounds,
    usableAc: sumOf(grounds, (each) => each.usableAc),
    usualYears,
    normalYearLb,
    poorYearLb,
    endPercent,
    normalLb,
    poorLb,
    kinds,
    firstKind: first.kind,
    firstHead,
    firstLbPerDay,
    herdLbPerDay,
    othersLbPerDay,
    seasonDays,
    seasonNeedLb,
    grownPercent,
    thisLb,
    years: [normal, poor, year('this', thisLb)],
    monthLines,
    normalHead: normal.yearHead,
    poorHead: poor.yearHead,
    otherBasisHead: carries((normalLb * otherBasisPercent) / basisPercent, seasonDays),
    goneDays,
    leftDays,
    eatenSoFarLb,
    leftLb,
    leftNeedLb: herdLbPerDay * leftDays,
    balanceLb: leftLb - herdLbPerDay * leftDays,
    lastsDays,
    outDay: todayDay + Math.floor(lastsDays),
    forFirstLb: Math.max(0, leftLb - othersLbPerDay * leftDays),
    nowHead: carries(leftLb, leftDays),
    waitDays,
    verdict,
    exactGoHead,
    goHead: whole(exactGoHead),
    lowGoHead: whole(mustGo(thisYearLb(100), waitDays).head),
    highGoHead: whole(mustGo(thisYearLb(0), waitDays).head),
    nowGoHead: whole(nowGo),
    delays: Array.from({ length: Math.ceil(leftDays / everyDays) }, (_, index) => {
      const delayDays = index * everyDays;
      const gone = mustGo(thisLb, delayDays);
      const outcome: 'lasts' | 'too-late' = gone.isLate ? 'too-late' : 'lasts';
      return { delayDay: todayDay + delayDays, delayHead: whole(gone.head), dryHead: whole(mustGo(thisYearLb(0), delayDays).head), outcome };
    }),
  };
}
