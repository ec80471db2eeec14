import { grownPercentBy, growthBegins, isCurveInOrder, isOneGrowth, lastFirstOf } from '../../asks/growthCurve.ts';
import { rainTableOf } from '../../asks/rainTable.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { feedDaysGained, feedDaysLost } from '../../math/decision/feedDaysLost.ts';
import { bestForagePercent, cagedForageLbPerAc, feedDaysNeeded } from '../../math/decision/feedDaysNeeded.ts';
import { likeYearsCaughtUp } from '../../math/decision/likeYearsCaughtUp.ts';
import { relativeForageGreatBasinPercent, relativeForagePercent } from '../../math/decision/relativeForagePercent.ts';
import { percentOfNormal } from '../../math/drought/percentOfNormal.ts';
import { quantileType6 } from '../../math/drought/quantileType6.ts';
import { splitSeasons } from '../../math/drought/splitSeasons.ts';
import { yearsCaughtUp } from '../../math/drought/yearsCaughtUp.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { firstOfMonth, monthIndexOf, sameDayIn, yearOf } from '../../units/days.ts';
import { monthNumber } from '../../units/months.ts';
import type { inputs } from './inputs.ts';
import { isLeaving } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;

const poundsPerTon = 2000;
/** Hay with 15 percent water. */
const hayDryShare = 0.85;
/** Fewer whole seasons than this are no record. */
const leastYears = 3;

const medianOf = (values: readonly number[]): number => quantileType6(values, 0.5);

/** First day on which rain is counted: the last first of that month that does not come after the first date. In winter it lies ahead of today. */
export function sinceDayOf({ sinceMonth, steps }: Pick<Asked, 'sinceMonth' | 'steps'>): number {
  return lastFirstOf(monthNumber(sinceMonth) - 1, Math.min(...steps.map(({ day }) => day)));
}

/** Station medians as the readings of past years from one to another, so that they go the way of a record. */
function stationReadings(stationIn: readonly number[], firstYear: number, lastYear: number): Asked['rainRecord'] {
  return Array.from({ length: lastYear - firstYear + 1 }, (_, ahead) => firstYear + ahead).flatMap((each) =>
    stationIn.map((amount, month) => {
      const next = firstOfMonth(month + 1, each);
      return { day: next - 1, amount, days: next - firstOfMonth(month, each) };
    }),
  );
}
/** The past seasons, split at some days of this one. */
function seasonsOf(asked: Asked, atDays: readonly number[]) {
  const [fromDay, pastYear] = [sinceDayOf(asked), yearOf(asked.endDay) - 1];
  // A season that begins two calendar years before its end has its past one three before.
  const readings =
    asked.rainFrom === 'record' ? asked.rainRecord : stationReadings(asked.stationIn, Math.min(pastYear, yearOf(fromDay)) - 1, pastYear);
  return splitSeasons({ table: rainTableOf(readings), fromDay, toDay: asked.endDay, atDays });
}

type Fault = 'none' | 'too-far' | 'too-early' | 'after-end' | 'ended' | 'two-growths' | 'no-record' | 'no-herd-left';
// Six refusals ask it of the same answers, and splitting the seasons of a record takes as long as half the answer.
const faults = new WeakMap<Asked, Fault>();
/** What is wrong with the dates or the record, if anything. */
export function faultOf(asked: Asked): Fault {
  const fault = faults.get(asked) ?? faultIn(asked);
  faults.set(asked, fault);
  return fault;
}
function faultIn(asked: Asked): Fault {
  const { todayDay, endDay, steps } = asked;
  const yearBefore = sameDayIn(endDay, yearOf(endDay) - 1);
  if (todayDay >= endDay) return 'ended';
  if (todayDay <= yearBefore) return 'too-far';
  if (steps.some(({ day }) => day >= endDay)) return 'after-end';
  if (steps.some(({ day }) => day <= yearBefore)) return 'too-early';
  if (isCurveInOrder(asked) && !isOneGrowth(asked, Math.min(...steps.map(({ day }) => day)), endDay)) return 'two-growths';
  if (asked.rainFrom === 'record' && seasonsOf(asked, []).length < leastYears) return 'no-record';
  return totalSaveOf(asked) > 0.95 * asked.herdLbPerDay ? 'no-herd-left' : 'none';
}

const saveOf = ({ step, leaveHead, eachLbPerDay }: Asked['steps'][number]): number => (isLeaving(step) ? leaveHead * eachLbPerDay : 0);
const totalSaveOf = ({ steps }: Asked): number => sumOf(steps, saveOf);

function forageOf({ response, triggerPercent }: Asked) {
  const proportion = relativeForagePercent(triggerPercent);
  const greatBasin = relativeForageGreatBasinPercent(triggerPercent);
  return response === 'proportion'
    ? { dryPercent: proportion, otherDryPercent: greatBasin }
    : { dryPercent: greatBasin, otherDryPercent: proportion };
}
/** Rain of a season by one of the days that were asked for. */
function fellBy(through: readonly number[], index: number): number {
  const fellIn = through[index];
  if (fellIn === undefined) throw new RangeError(`fellBy needs one of ${through.length} days, got ${index}`);
  return fellIn;
}

export function compute(asked: Asked) {
  const { todayDay, endDay, feedDays, herdLbPerDay, grassLbPerAc, triggerPercent } = asked;
  const steps = asked.steps.toSorted((one, other) => one.day - other.day);
  const sinceDay = sinceDayOf(asked);
  const isBegun = todayDay >= sinceDay;
  // Before the first day that counts none is usual, and none of what fell is counted.
  const rainSoFarIn = isBegun ? asked.rainSoFarIn : 0;
  const monthEnds: number[] = [];
  for (let at = sinceDay; at < endDay; ) {
    const end = Math.min(endDay, firstOfMonth(monthIndexOf(at) + 1, yearOf(at)) - 1);
    monthEnds.push(end);
    at = end + 1;
  }
  const atDays = [Math.max(todayDay, sinceDay), ...steps.map(({ day }) => day), ...monthEnds];
  const seasons = seasonsOf(asked, atDays);
  const isCounted = asked.rainFrom === 'record';
  const normalBy = (index: number): number => medianOf(seasons.map(({ through }) => fellBy(through, index)));
  const splitAt = (index: number) =>
    seasons.map(({ through, whole }) => ({ beforeIn: fellBy(through, index), afterIn: Math.max(0, whole - fellBy(through, index)) }));
  const seasonNormalIn = medianOf(seasons.map(({ whole }) => whole));
  const { dryPercent, otherDryPercent } = forageOf(asked);
  const beginDay = growthBegins(asked, endDay);
  /** Percent of the growth that the season lives on. */
  const grownBy = (day: number): number => grownPercentBy(asked, beginDay, day);

  const normalSoFarIn = isBegun ? normalBy(0) : 0;
  const untilToday = isBegun ? splitAt(0) : seasons.map(({ whole }) => ({ beforeIn: 0, afterIn: whole }));
  const like = likeYearsCaughtUp(rainSoFarIn, untilToday, seasonNormalIn);
  const soFarTriggerIn = (normalSoFarIn * triggerPercent) / 100;
  const soFarSays = normalSoFarIn === 0 ? 'too-early' : rainSoFarIn < soFarTriggerIn ? 'under' : 'over';
  const rainSays: 'not-begun' | 'too-early' | 'under' | 'over' = isBegun ? soFarSays : 'not-begun';

  const endPercent = grownBy(endDay);
  const dateOf = (day: number, index: number) => {
    const grownPercent = grownBy(day);
    const normalIn = normalBy(index + 1);
    const leftDays = endDay - day;
    const bestPercent = bestForagePercent(grownPercent, dryPercent);
    const comesPercent = Math.max(0, endPercent - grownPercent);
    return {
      day,
      grownPercent,
      normalIn,
      triggerIn: (normalIn * triggerPercent) / 100,
      cageLbPerAc: cagedForageLbPerAc(grassLbPerAc, grownPercent, triggerPercent),
      leftDays,
      comesPercent,
      needDays: feedDaysNeeded({ leftDays, normalFeedDays: feedDays, comesPercent, dryPercent }),
      bestPercent,
      bestShortDays: feedDaysLost(feedDays, bestPercent),
    };
  };
  const dated = steps.map((each, index) => [each, dateOf(each.day, index)] as const);
  const dates = dated.map(([, date]) => date);
  const best = dates.map(({ day, bestPercent, bestShortDays }) => ({ bestDay: day, bestYearPercent: bestPercent, bestYearDays: bestShortDays }));
  const odds = dates.map(({ day, normalIn, triggerIn, bestShortDays }, index) => {
    const split = splitAt(index + 1);
    const { years, caughtUp } = likeYearsCaughtUp(triggerIn, split, seasonNormalIn);
    const rest = yearsCaughtUp({
      shortfallIn: normalIn * (1 - triggerPercent / 100),
      normalRestIn: Math.max(0, seasonNormalIn - normalIn),
      restOfSeasonIn: split.map(({ afterIn }) => afterIn),
    });
    return {
      oddsDay: day,
      dryCount: isCounted ? years : 0,
      dryCaughtCount: isCounted ? caughtUp : 0,
      madeUpCount: isCounted ? rest.caughtUp : 0,
      atBestDays: bestShortDays,
    };
  });

  const totalSaveLbPerDay = totalSaveOf(asked);
  const remainLbPerDay = herdLbPerDay - totalSaveLbPerDay;
  const plan = dated.map(([each, { triggerIn, needDays }]) => {
    const saveLbPerDay = saveOf(each);
    const hayTon = each.step === 'buy-hay' ? each.hayTon : 0;
    const leftDays = endDay - each.day;
    const gained = (days: number): number => feedDaysGained(remainLbPerDay + saveLbPerDay, saveLbPerDay, days);
    return {
      planDay: each.day,
      step: each.step,
      goHead: isLeaving(each.step) ? each.leaveHead : 0,
      spareLbPerDay: isLeaving(each.step) ? each.eachLbPerDay : 0,
      boughtTon: hayTon,
      planLeftDays: leftDays,
      saveLbPerDay,
      savedLb: saveLbPerDay * leftDays + hayTon * poundsPerTon * hayDryShare,
      gainDays: gained(leftDays) + (hayTon * poundsPerTon * hayDryShare) / remainLbPerDay,
      weekDays: gained(7),
      countedFromDay: sinceDay,
      underIn: triggerIn,
      underDays: needDays,
    };
  });
  const gainedDays = sumOf(plan, (each) => each.gainDays);
  const dryShortDays = feedDaysLost(feedDays, dryPercent);
  const ahead = steps.find(({ day }) => day >= todayDay);
  const next = ahead ?? steps.at(-1);
  if (!next) throw new RangeError('compute needs a plan of one date at least');
  return {
    nextDay: next.day,
    ahead: ahead ? ('ahead' as const) : ('past' as const),
    nextStep: next.step,
    sinceDay,
    yearsCount: isCounted ? seasons.length : 0,
    seasonNormalIn,
    normalSoFarIn,
    soFarPercent: normalSoFarIn > 0 ? percentOfNormal(rainSoFarIn, normalSoFarIn) : 100,
    soFarTriggerIn,
    rainSays,
    likeCount: isCounted ? like.years : 0,
    likeCaughtCount: isCounted ? like.caughtUp : 0,
    likeLowPercent: isCounted ? like.lowerPercent : 0,
    likeHighPercent: isCounted ? like.upperPercent : 100,
    endPercent,
    dryPercent,
    otherDryPercent,
    dryShortDays,
    dates,
    best,
    odds,
    totalSaveLbPerDay,
    remainLbPerDay,
    plan,
    gainedDays,
    weekLostDays: sumOf(plan, (each) => each.weekDays),
    stillShortDays: Math.max(0, dryShortDays - gainedDays),
    season: monthEnds.map((day, index) => ({
      monthDay: day,
      grassPercent: grownBy(day),
      rainPercent: seasonNormalIn > 0 ? (100 * normalBy(1 + steps.length + index)) / seasonNormalIn : 100,
    })),
  };
}
