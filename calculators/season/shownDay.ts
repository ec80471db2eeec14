import { pastureCoverFactor } from '../math/erosion/pastureCoverFactor.ts';
import { needThere } from '../math/need.ts';
import { antecedentCurveNumber } from '../math/runoff/antecedentCurveNumber.ts';
import { curveNumberByCover } from '../math/runoff/curveNumberByCover.ts';
import { retentionIn } from '../math/runoff/retentionIn.ts';
import { FLAG, numberAt, TRACE, wholeAt } from './flat.ts';
import type { Outcome } from './run.ts';
import { type Sky, skyDay } from './sky.ts';
import type { Weather } from './weather.ts';

const nothing = -1;

/** What is kept of a paddock's day, where the run kept its days. */
export function traced({ memory, plan }: Outcome, day: number, paddock: number, field: number): number {
  const { trace } = memory;
  if (trace === undefined) throw new RangeError('traced needs a run that kept its days');
  return numberAt(trace, ((day - memory.tracedFrom) * plan.paddocks + paddock) * TRACE.width + field);
}

/** The day of one hay year that has this date; its first day where there is none, and the second of a record, which has an evening before it. */
export function dayIn(outcome: Outcome, sky: Sky, year: number, monthDay: number): number {
  const { period, whole } = outcome.periods;
  const wanted = needThere('dayIn', `hay year ${year}`, whole[year]);
  const found = sky.monthDay.findIndex((date, day) => period[day] === wanted && date === monthDay);
  return Math.max(1, found === nothing ? period.indexOf(wanted) : found);
}

/** What all stock would eat on a day if none were sold, pounds, and the share of them that is there. */
const herdOn = ({ plan, memory }: Outcome, day: number): { readonly fullDemandLb: number; readonly keptShare: number } => ({
  fullDemandLb: numberAt(plan.demandLb, day),
  keptShare: numberAt(memory.kept, day - memory.tracedFrom),
});

/** The grazed paddock that feeds the herd on a day; nothing where it is on hay. */
export function grazedOn(outcome: Outcome, day: number): number | undefined {
  for (let paddock = 0; paddock < outcome.plan.paddocks; paddock += 1) if (traced(outcome, day, paddock, TRACE.eaten) > 0) return paddock;
  return undefined;
}

/** One day of one paddock by its names, with the evening before: enough to work it through by hand. Water in millimeters. */
export function paddockDay(outcome: Outcome, sky: Sky, day: number, paddock: number) {
  const before = (field: number): number => traced(outcome, day - 1, paddock, field);
  const is = (field: number): number => traced(outcome, day, paddock, field);
  const ground = needThere('paddockDay', `paddock ${paddock}`, outcome.plan.side.paddocks[paddock]);
  const { rainMm, meltMm, ...weather } = skyDay(sky, day);
  const coverShare = is(TRACE.cover);
  const curveNumber = curveNumberByCover({ ...ground, groundCoverPercent: 100 * coverShare });
  return {
    ...weather,
    waterMm: rainMm + meltMm,
    ground,
    isInSeason: (wholeAt(outcome.plan.flags, day) & FLAG.inSeason) !== 0,
    ...herdOn(outcome, day),
    before: {
      greenLbPerAc: before(TRACE.green),
      deadLbPerAc: before(TRACE.dead),
      litterLbPerAc: before(TRACE.litter),
      heldMm: before(TRACE.held),
      surfaceMm: before(TRACE.surface),
      depletionMm: before(TRACE.depletion),
      topMm: before(TRACE.top),
    },
    coverShare,
    curveNumber,
    dryRetentionIn: retentionIn(antecedentCurveNumber(curveNumber, 'dry')),
    wetRetentionIn: retentionIn(antecedentCurveNumber(curveNumber, 'wet')),
    coverFactor: pastureCoverFactor({ coverPercent: 100 * coverShare, coverKind: 'grass', canopyPercent: 0, canopyHeight: 'short-brush' }),
    runoffMm: is(TRACE.runoff),
    drainageMm: is(TRACE.drainage),
    evaporationMm: is(TRACE.evaporation),
    transpirationMm: is(TRACE.transpiration),
    driedMm: is(TRACE.dried),
    grownLbPerAc: is(TRACE.grown),
    eatenLbPerAc: is(TRACE.eaten),
    greenLbPerAc: is(TRACE.green),
    deadLbPerAc: is(TRACE.dead),
    litterLbPerAc: is(TRACE.litter),
    depletionMm: is(TRACE.depletion),
    soilLostTonPerAc: is(TRACE.soilLost),
  };
}

/** One hay year in spans of days: sums of what falls and is fed, the state on the last day of each. Means over the grazed acres. */
export function stripOf(outcome: Outcome, { sky, weather }: { readonly sky: Sky; readonly weather: Weather }, year: number, spanDays: number) {
  const { periods, plan } = outcome;
  const wanted = needThere('stripOf', `hay year ${year}`, periods.whole[year]);
  const first = needThere('stripOf', `hay year ${year}`, periods.firstDays[year]);
  const last = periods.period.lastIndexOf(wanted);
  const { paddocks } = plan.side;
  const grazed = paddocks.flatMap(({ isMeadow }, index) => (isMeadow ? [] : [index]));
  const over = (day: number, field: number): number => grazed.reduce((sum, index) => sum + traced(outcome, day, index, field), 0) / grazed.length;
  const availableMm = grazed.reduce((sum, index) => sum + needThere('stripOf', 'paddock', paddocks[index]).availableMm, 0) / grazed.length;
  const wantedLb = (day: number): number => {
    const { fullDemandLb, keptShare } = herdOn(outcome, day);
    return fullDemandLb * keptShare;
  };
  const eatenLb = (day: number): number => paddocks.reduce((sum, { areaAc }, index) => sum + areaAc * traced(outcome, day, index, TRACE.eaten), 0);
  const spans = Array.from({ length: Math.ceil((last - first + 1) / spanDays) }, (_, span) => first + span * spanDays);
  return spans.map((from) => {
    const to = Math.min(last, from + spanDays - 1);
    const days = Array.from({ length: to - from + 1 }, (_, at) => from + at);
    const sum = (of: (day: number) => number): number => days.reduce((total, day) => total + of(day), 0);
    const waterMm = sum((day) => skyDay(sky, day).rainMm + skyDay(sky, day).meltMm);
    const runoffMm = sum((day) => over(day, TRACE.runoff));
    return {
      day: from,
      /** Days whose rain or temperature nobody read. */
      filledDays: days.filter((day) => weather.madeUp[day] !== 0).length,
      waterMm,
      runoffMm,
      soakedMm: waterMm - runoffMm,
      // All paddocks full can miss 1 by one rounding.
      filledShare: Math.min(1, Math.max(0, 1 - over(to, TRACE.depletion) / availableMm)),
      standingLbPerAc: over(to, TRACE.green) + over(to, TRACE.dead),
      coverShare: over(to, TRACE.cover),
      grownLbPerAc: sum((day) => over(day, TRACE.grown)),
      fedLb: Math.max(
        0,
        sum((day) => wantedLb(day) - eatenLb(day)),
      ),
    };
  });
}
