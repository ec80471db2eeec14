import { rainTableOf } from '../../asks/rainTable.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { type DecileGroup, decileGroup, decileType6 } from '../../math/drought/decileType6.ts';
import { type DroughtEvent, droughtEvents } from '../../math/drought/droughtEvents.ts';
import { gammaFitThom } from '../../math/drought/gammaFitThom.ts';
import { bearsIndex, indexSeries } from '../../math/drought/indexSeries.ts';
import { indexStandardError } from '../../math/drought/indexStandardError.ts';
import { percentOfNormal } from '../../math/drought/percentOfNormal.ts';
import { lastMonthEnd, periodMonths } from '../../math/drought/periodMonths.ts';
import { type PrecipitationIndexClass, precipitationIndexClass } from '../../math/drought/precipitationIndexClass.ts';
import { quantileType6 } from '../../math/drought/quantileType6.ts';
import { type RainByDay, rainBetween } from '../../math/drought/rainByDay.ts';
import { rankInRecord } from '../../math/drought/rankInRecord.ts';
import { periodRain, samePeriods, type YearsPeriod } from '../../math/drought/samePeriods.ts';
import { indexUnderGamma } from '../../math/drought/standardizedPrecipitationIndex.ts';
import { regularizedIncompleteGamma } from '../../math/special/regularizedIncompleteGamma.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import type { inputs } from './inputs.ts';

/** A short period is drawn in steps of some days, if the record is one of days. */
const fineMonths = 3;
const fineDays = 5;

/** Rain so far at each step of the period, in the year asked about and in the years that judge it, all laid on the days of that year. */
export function runningTotals({
  table,
  endsDay,
  months,
  years,
  isMonthly,
}: {
  readonly table: RainByDay;
  readonly endsDay: number;
  readonly months: number;
  readonly years: readonly YearsPeriod[];
  readonly isMonthly: boolean;
}) {
  const isFine = months <= fineMonths && !isMonthly;
  /** Steps of a period that ends with a day: as many in each year. */
  const stepsOf = (lastDay: number): readonly number[] => {
    const parts = periodMonths(lastDay, months);
    const before = (parts[0]?.firstDay ?? lastDay) - 1;
    if (!isFine) return [before, ...parts.map((part) => part.lastDay)];
    const count = Math.ceil((30 * months) / fineDays);
    return Array.from({ length: count + 1 }, (_, step) => before + Math.round((step * (lastDay - before)) / count));
  };
  const soFar = (lastDay: number): readonly number[] => {
    const [before = lastDay, ...steps] = stepsOf(lastDay);
    return [0, ...steps.map((step) => (step > before ? rainBetween(table, before + 1, step).rain : 0))];
  };
  const steps = stepsOf(endsDay);
  const own = soFar(endsDay);
  // Counted from the end: where the period begins within a February, one year may have a step more than another.
  const others = years.map(({ lastDay }) => soFar(lastDay));
  const sumOf = (list: readonly number[], step: number): number => {
    const sum = list.at(step - steps.length);
    if (sum === undefined) throw new RangeError(`no rain so far at step ${step}`);
    return sum;
  };
  const running = steps.map((stepDay, step) => {
    const all = others.map((list) => sumOf(list, step));
    return { stepDay, thisIn: sumOf(own, step), middleIn: quantileType6(all, 0.5), leastIn: Math.min(...all), mostIn: Math.max(...all) };
  });
  return running;
}

/** Rain of each month of the period, or of the part of one that belongs to it, beside the median of the same one in the years that judge it. */
export function monthByMonth({
  table,
  endsDay,
  months,
  years,
}: {
  readonly table: RainByDay;
  readonly endsDay: number;
  readonly months: number;
  readonly years: readonly YearsPeriod[];
}) {
  const rainOf = (lastDay: number): readonly number[] =>
    periodMonths(lastDay, months).map((part) => rainBetween(table, part.firstDay, part.lastDay).rain);
  const parts = periodMonths(endsDay, months);
  const own = rainOf(endsDay);
  const others = years.map(({ lastDay }) => rainOf(lastDay));
  // Counted from the end: where the period begins within a February, one year may have a part more than another.
  const nth = (list: readonly number[], index: number): number => {
    const rain = list.at(index - parts.length);
    if (rain === undefined) throw new RangeError(`no rain of part ${index}`);
    return rain;
  };
  return parts.map(({ lastDay }, index) => ({
    monthDay: lastDay,
    monthIn: nth(own, index),
    usualIn: quantileType6(
      others.map((list) => nth(list, index)),
      0.5,
    ),
  }));
}

type Asked = ValuesOf<typeof inputs>;
/** Under so many years a fitted curve says more than the record bears. */
export const fewestIndexYears = 30;
/** A shorter record cannot tell its outer tenths apart. */
export const fewestDecileYears = 9;
const mostSpells = 6;
const mostDriest = 5;

const mean = (list: readonly number[]): number => sumOf(list, (each) => each) / list.length;
const percent = (rain: number, normal: number): number => (normal > 0 ? percentOfNormal(rain, normal) : 0);

const nothing = {
  basis: 'not-read' as 'index' | 'ranks' | 'alone' | 'not-read' | 'medians',
  beginsDay: 0,
  endsDay: 0,
  totalIn: 0,
  unreadDays: 0,
  recordCount: 0,
  yearsCount: 0,
  leftOutCount: 0,
  drierCount: 0,
  rankCount: 0,
  meanIn: 0,
  medianIn: 0,
  ofMeanPercent: 0,
  ofMedianPercent: 0,
  otherMedianPercent: 0,
  quarterPlaceCount: 0,
  quarterBelowIn: 0,
  quarterAboveIn: 0,
  quarterIn: 0,
  tenthIn: 0,
  decile: 0,
  group: 'near' as DecileGroup,
  zeroRatio: 0,
  wetMeanIn: 0,
  meanLog: 0,
  gap: 0,
  shape: 0,
  scaleIn: 0,
  gammaRatio: 0,
  belowRatio: 0,
  index: 0,
  indexError: 0,
  lowIndex: 0,
  highIndex: 0,
  otherIndex: 0,
  verdict: 'near-normal' as PrecipitationIndexClass,
};

/** The middle of the driest quarter, step by step, as the working shows it: the two years around its place are quantiles at whole places. */
function quarterOf(record: readonly number[]) {
  const places = record.length + 1;
  const quarterPlaceCount = 0.25 * places;
  const below = Math.floor(Math.max(1, quarterPlaceCount));
  const yearAt = (place: number): number => quantileType6(record, Math.min(place, record.length) / places);
  return { quarterPlaceCount, quarterBelowIn: yearAt(below), quarterAboveIn: yearAt(below + 1), quarterIn: quantileType6(record, 0.25) };
}

/** The index with each number on the way to it. */
function indexOf(totalIn: number, record: readonly number[]) {
  const wet = record.filter((rain) => rain > 0);
  const fit = gammaFitThom(wet);
  const zeroRatio = 1 - wet.length / record.length;
  const wetMeanIn = mean(wet);
  const meanLog = mean(wet.map(Math.log));
  const gammaRatio = regularizedIncompleteGamma(fit.shape, totalIn / fit.scale);
  const index = indexUnderGamma({ ...fit, amount: totalIn, zeroShare: zeroRatio });
  const indexError = indexStandardError(index, record.length);
  return {
    zeroRatio,
    wetMeanIn,
    meanLog,
    gap: Math.log(wetMeanIn) - meanLog,
    shape: fit.shape,
    scaleIn: fit.scale,
    gammaRatio,
    belowRatio: zeroRatio + (1 - zeroRatio) * gammaRatio,
    index,
    indexError,
    lowIndex: index - 2 * indexError,
    highIndex: index + 2 * indexError,
    verdict: precipitationIndexClass(index),
  };
}

interface Spell {
  readonly spellFromDay: number;
  readonly spellToDay: number;
  readonly spellMonths: number;
  readonly lowest: number;
  readonly magnitude: number;
}
/** The dry spells that the index tells, the worst first. */
function spellsIn(table: RainByDay, months: number, leastShare: number): readonly Spell[] {
  return indexSeries({ table, months, leastShare })
    .flatMap((run) =>
      droughtEvents(run.map(({ index }) => index)).flatMap(
        ({ startsAt, endsAt, months: spellMonths, magnitude, lowestIndex }: DroughtEvent): readonly Spell[] => {
          const [first, last] = [run[startsAt], run[endsAt]];
          return first && last ? [{ spellFromDay: first.lastDay, spellToDay: last.lastDay, spellMonths, lowest: lowestIndex, magnitude }] : [];
        },
      ),
    )
    .sort((one, other) => other.magnitude - one.magnitude)
    .slice(0, mostSpells);
}

function againstMedians({ untilDay, windowMonths, ownRainIn, stationIn }: Asked) {
  const parts = periodMonths(untilDay, windowMonths);
  const medianIn = parts.reduce((sum, part) => {
    const ofMonth = stationIn[part.month - 1];
    if (ofMonth === undefined) throw new RangeError(`no median for month ${part.month}`);
    return sum + (ofMonth * (part.lastDay - part.firstDay + 1)) / part.monthDays;
  }, 0);
  return {
    ...nothing,
    basis: 'medians' as const,
    beginsDay: parts[0]?.firstDay ?? untilDay,
    endsDay: untilDay,
    totalIn: ownRainIn,
    medianIn,
    ofMedianPercent: percent(ownRainIn, medianIn),
  };
}

function againstRecord({ rainRecord, untilDay, windowMonths, leastPercent, ownYear }: Asked) {
  const table = rainTableOf(rainRecord);
  const months = windowMonths;
  const leastShare = leastPercent / 100;
  const isMonthly = rainRecord.filter(({ days = 1 }) => days > 27).length > rainRecord.length / 2;
  const asked = Math.min(untilDay, table.lastDay);
  const endsDay = isMonthly ? lastMonthEnd(asked) : asked;
  const beginsDay = periodMonths(endsDay, months)[0]?.firstDay ?? endsDay;
  const own = periodRain({ table, lastDay: endsDay, months, leastShare });
  const periods = samePeriods({ table, lastDay: endsDay, months, leastShare });
  const full = periods.filter(({ isFull }) => isFull);
  const others = full.filter(({ lastDay }) => lastDay !== endsDay);
  const isLeftOut = ownYear === 'left-out';
  const judges = isLeftOut ? others : full;
  const [record, otherRecord] = [judges, isLeftOut ? full : others].map((years) => years.map(({ rain }) => rain));
  const start = {
    ...nothing,
    beginsDay,
    endsDay,
    totalIn: own.rain,
    unreadDays: own.unreadDays,
    recordCount: full.length,
    yearsCount: judges.length,
    leftOutCount: periods.length - full.length,
  };
  const lists = { driest: [], spells: [], byMonth: [], running: [] };
  if (!own.isFull || full.length === 0 || !record || !otherRecord) return { ...start, ...lists };
  if (others.length === 0) return { ...start, ...lists, basis: 'alone' as const };
  const [medianIn, meanIn] = [quantileType6(record, 0.5), mean(record)];
  const { drierYears, rank } = rankInRecord(own.rain, record);
  // How long the record is does not change with who is judged by it.
  const hasIndex = full.length >= fewestIndexYears && bearsIndex(record) && bearsIndex(otherRecord);
  const decile = judges.length >= fewestDecileYears ? decileType6(own.rain, record) : undefined;
  const driest = full
    .toSorted((one, other) => one.rain - other.rain)
    .slice(0, mostDriest)
    .map(({ year, rain }) => ({ dryYear: String(year), dryIn: rain, dryPercent: percent(rain, medianIn) }));
  return {
    ...start,
    basis: hasIndex ? ('index' as const) : ('ranks' as const),
    drierCount: drierYears,
    rankCount: rank,
    meanIn,
    medianIn,
    ofMeanPercent: percent(own.rain, meanIn),
    ofMedianPercent: percent(own.rain, medianIn),
    otherMedianPercent: percent(own.rain, quantileType6(otherRecord, 0.5)),
    ...(decile === undefined ? {} : { ...quarterOf(record), tenthIn: quantileType6(record, 0.1), decile, group: decileGroup(decile) }),
    ...(hasIndex ? { ...indexOf(own.rain, record), otherIndex: indexOf(own.rain, otherRecord).index } : {}),
    driest,
    spells: hasIndex ? spellsIn(table, months, leastShare) : [],
    byMonth: monthByMonth({ table, endsDay, months, years: judges }),
    running: runningTotals({ table, endsDay, months, years: judges, isMonthly }),
  };
}

export const compute = (asked: Asked) =>
  asked.compareWith === 'medians' ? { ...againstMedians(asked), driest: [], spells: [], byMonth: [], running: [] } : againstRecord(asked);
