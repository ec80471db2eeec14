import { stockLinesOf } from '../../asks/stock.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { availableFromHeight } from '../../math/forage/availableFromHeight.ts';
import { availableLbPerAc } from '../../math/forage/availableLbPerAc.ts';
import { eatenLbPerAc } from '../../math/forage/eatenLbPerAc.ts';
import { standingFeedDays } from '../../math/forage/standingFeedDays.ts';
import { standingFeedLeft } from '../../math/forage/standingFeedLeft.ts';
import { tabledEatenPercent } from '../../math/forage/tabledEatenPercent.ts';
import { paddockAcres } from '../../math/rotation/paddockAcres.ts';
import { stripDepthFt } from '../../math/rotation/stripDepthFt.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { roundedTo } from '../../units/printQuantity.ts';
import type { inputs } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;

/** By then new grass has long come, so nobody plans further. */
export const longestDays = 365;
/** Mean length of a month, days: 365.25 / 12. */
const daysPerMonth = 30.4375;
const rowEveryDays = 14;
/** Parts of the curve from the first day to the last. */
const curveParts = 12;
/** Less than this on an acre is no strip. */
const leastLbPerAc = 1;

export const waitMonthsOf = ({ startDay, measuredDay }: { readonly startDay: number; readonly measuredDay: number }): number =>
  (startDay - measuredDay) / daysPerMonth;
/** The loss is a share of what stood when measured; of the less that is left at the start it is a larger share. */
export const fromStartPercentOf = (lossPercent: number, waitMonths: number): number => {
  const left = standingFeedLeft({ startLbPerAc: 1, lossPercentPerMonth: lossPercent, months: waitMonths });
  return left > 0 ? lossPercent / left : 0;
};

export function compute(asked: Asked) {
  const { massFrom, areaAc, fenceFt, stripDays, startDay } = asked;
  const aboveLbPerAc =
    massFrom === 'known'
      ? availableLbPerAc({ clippedLbPerAc: asked.standingLbPerAc, clippedTo: 'ground', stubbleLbPerAc: asked.stubbleLbPerAc })
      : availableFromHeight({ heightIn: asked.heightIn, stubbleIn: asked.stubbleHeightIn, poundsPerAcreInch: asked.densityLbPerAcIn });
  const waitMonths = waitMonthsOf(asked);
  const stockLines = stockLinesOf(asked.stock);
  const demandLbPerDay = sumOf(stockLines, ({ lineLbPerDay }) => lineLbPerDay);
  const eatenPercent = asked.eatenFrom === 'own' ? asked.ownEatenPercent : tabledEatenPercent(stripDays);
  const leftAt = (lossPercent: number, months: number): number =>
    standingFeedLeft({ startLbPerAc: aboveLbPerAc, lossPercentPerMonth: lossPercent, months });
  const eatenOf = (lbPerAc: number): number => eatenLbPerAc({ measured: 'above-stubble', lbPerAc, grazedShare: eatenPercent / 100 }) * areaAc;

  const plan = (lossPercent: number) => {
    const caseStartLbPerAc = leftAt(lossPercent, waitMonths);
    const caseFromStartPercent = Math.min(100, fromStartPercentOf(lossPercent, waitMonths));
    const caseEatenLb = eatenOf(caseStartLbPerAc);
    const days = standingFeedDays({ eatenLb: caseEatenLb, dailyDemandLb: demandLbPerDay, lossPercentPerMonth: caseFromStartPercent });
    return { caseLossPercent: lossPercent, caseStartLbPerAc, caseFromStartPercent, caseEatenLb, caseDays: Math.min(longestDays, days) };
  };
  const likely = plan(asked.lossPercent);
  const none = plan(0);
  const twice = plan(2 * asked.lossPercent);

  const stripAcAt = (lbPerAc: number): number =>
    Math.min(
      areaAc,
      paddockAcres({ dailyDemandLb: demandLbPerDay, stayDays: stripDays, availableLbPerAc: lbPerAc, grazedShare: eatenPercent / 100 }),
    );
  const stripFtOf = (stripAc: number): number => stripDepthFt({ areaAc: stripAc, fenceLengthFt: fenceFt });
  const strips = [];
  for (let daysIn = 0; daysIn === 0 || daysIn < likely.caseDays; daysIn += rowEveryDays) {
    const ungrazedLbPerAc = leftAt(asked.lossPercent, waitMonths + daysIn / daysPerMonth);
    if (daysIn > 0 && ungrazedLbPerAc < leastLbPerAc) break;
    const stripAc = stripAcAt(ungrazedLbPerAc);
    strips.push({ atDay: startDay + daysIn, daysIn, ungrazedLbPerAc, stripAc, stripFt: stripFtOf(stripAc) });
  }
  // Days are told whole, so the date goes by the days that are told: the first day of grazing is the first of them.
  const toLastDays = Math.max(0, roundedTo(likely.caseDays, 0) - 1);
  const everyDays = Math.max(1, Math.ceil(toLastDays / curveParts));
  const dayByDay = Array.from({ length: Math.ceil(toLastDays / everyDays) + 1 }, (_, at) => {
    const afterDays = Math.min(toLastDays, at * everyDays);
    return { leftDay: startDay + afterDays, afterDays, leftLbPerAc: leftAt(asked.lossPercent, waitMonths + afterDays / daysPerMonth) };
  });
  const firstStripAc = stripAcAt(likely.caseStartLbPerAc);
  const wantedDays = asked.untilDay - asked.fromDay;
  const openDays = asked.untilDay - startDay;
  const shortDays = wantedDays - Math.min(openDays, likely.caseDays);
  const verdict: 'reaches' | 'short' = shortDays > 0 ? 'short' : 'reaches';
  return {
    grazingForDays: likely.caseDays,
    lowGrazingDays: twice.caseDays,
    highGrazingDays: none.caseDays,
    lastDay: startDay + toLastDays,
    verdict,
    wantedDays,
    openDays,
    shortDays,
    shortLb: shortDays * demandLbPerDay,
    aboveLbPerAc,
    waitMonths,
    weatheredPercent: asked.lossPercent * waitMonths,
    startLbPerAc: likely.caseStartLbPerAc,
    fromStartPercent: likely.caseFromStartPercent,
    eatenPercent,
    eatenLb: likely.caseEatenLb,
    stockLines,
    demandLbPerDay,
    lossDays: none.caseDays - likely.caseDays,
    firstStripAc,
    firstStripFt: stripFtOf(firstStripAc),
    lossCases: [none, likely, twice],
    dayByDay,
    strips,
  };
}
