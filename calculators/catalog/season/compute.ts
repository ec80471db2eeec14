import { stockLinesOf } from '../../asks/stock.ts';
import { biteOfDay } from '../../math/herd/biteOfDay.ts';
import { needThere } from '../../math/need.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { median } from '../../season/fit.ts';
import { yearsFrom } from '../../season/hayYears.ts';
import { barnAnswer, type Count, hayLists, hayToHave } from '../../season/odds.ts';
import { grazingDefaults } from '../../season/parameters.ts';
import { type Fits, sideOn } from '../../season/pasture.ts';
import { type Outcome, runBySteps } from '../../season/run.ts';
import { dayIn, grazedOn, paddockDay, stripOf } from '../../season/shownDay.ts';
import type { Management, StockRow } from '../../season/side.ts';
import type { Sky } from '../../season/sky.ts';
import { type HayYear, hayYearsOf } from '../../season/years.ts';
import type { Asked } from './inputs.ts';
import { fitsOf, monthDayOf, placeOf } from './place.ts';

const mmPerIn = 25.4;
const hundred = 100;
const lbPerTon = 2000;
const spanDays = 7;
const dayMs = 86_400_000;

const managementOf = (asked: Asked): Management => ({
  ...grazingDefaults,
  ...placeOf(asked).haying,
  turnOut: monthDayOf(asked.turnOutDay),
  pull: monthDayOf(asked.pullDay),
  mostDaysIn: asked.stayDays,
  leastRestDays: asked.restDays,
  next: asked.next,
  stubbleLbPerAc: asked.stubbleIn * asked.densityLbPerAcIn,
  whenShort: asked.whenShort,
  pullBelowDays: asked.pullBelowDays,
  feedingLossShare: asked.feedingLossPercent / hundred,
  trampledPerEaten: asked.trampledRatio,
  fullIntakeFromLbPerAc: asked.fullIntakeLbPerAc,
});

/** Each line twice: on grass from turn-out on, and in winter, when it eats another share of that. */
const stockOf = ({ stock, keptPercent, winterPercent }: Asked, { turnOut, pull }: Management): readonly StockRow[] =>
  stock.flatMap(({ countHead, weightLb, intakePercent }): readonly StockRow[] => {
    const head = (countHead * keptPercent) / hundred;
    const winter = { head, weightLb, intakePercent: (intakePercent * winterPercent) / hundred };
    // With one date for both there is no season, and it is winter all year.
    if (turnOut === pull) return [{ ...winter, from: 101, to: 1232 }];
    return [
      { head, weightLb, intakePercent, from: turnOut, to: pull },
      { ...winter, from: pull, to: turnOut },
    ];
  });

/** Yearly sums that say how a management treats its ground: means of the years that count. */
function meansOf(years: readonly HayYear[]) {
  const mean = (of: (year: HayYear) => number): number => sumOf(years, of) / years.length;
  return {
    runoffIn: mean(({ runoffMm }) => runoffMm) / mmPerIn,
    soilLostTonPerAc: mean(({ soilLostTonPerAc }) => soilLostTonPerAc),
    grownLbPerAc: mean(({ grownLbPerAc }) => grownLbPerAc),
    eatenLbPerAc: mean(({ eatenLbPerAc }) => eatenLbPerAc),
    grazedDays: mean(({ grazedDays }) => grazedDays),
    brokenDays: mean(({ stubbleBrokenDays }) => stubbleBrokenDays),
    stressDays: mean(({ stressDays }) => stressDays),
    coverPercent: hundred * mean(({ coverShare }) => coverShare),
    movesCount: mean(({ moves }) => moves),
  };
}

const lineOf = (rule: 'filled' | 'carried', { short, of, lowerShare, upperShare }: Count) => ({
  rule,
  barnShortCount: short,
  barnYearsCount: of,
  barnLowPercent: hundred * lowerShare,
  barnHighPercent: hundred * upperShare,
});

/** Roots of this side; the shallowest that the form takes, where the difference would leave less. */
const rootsOf = ({ rootsIn, rootsMoreIn }: Asked): number => Math.max(3, rootsIn + rootsMoreIn);
const dayNumber = (sky: Sky, day: number): number => {
  const date = needThere('dayNumber', `day ${day}`, sky.monthDay[day]);
  return Date.UTC(needThere('dayNumber', `year of ${day}`, sky.year[day]), Math.floor(date / 100) - 1, date % 100) / dayMs;
};

/** The drawn year week by week. */
const weeksOf = (outcome: Outcome, sky: Sky, year: number, rootsIn: number, rootsHoldIn: number) =>
  stripOf(outcome, sky, year, spanDays).map(
    ({ day, waterMm, runoffMm, soakedMm, filledShare, standingLbPerAc, coverShare, grownLbPerAc, fedLb }) => ({
      weekDay: dayNumber(sky, day),
      weekRainIn: waterMm / mmPerIn,
      weekRunoffIn: runoffMm / mmPerIn,
      weekSoakedIn: soakedMm / mmPerIn,
      weekFilledPercent: hundred * filledShare,
      weekTopIn: 0,
      weekDepthIn: rootsIn,
      weekHasIn: filledShare * rootsHoldIn,
      weekMissingIn: (1 - filledShare) * rootsHoldIn,
      weekStandingLbPerAc: standingLbPerAc,
      weekCoverPercent: hundred * coverShare,
      weekGrownLbPerAc: grownLbPerAc,
      weekFedTon: fedLb / lbPerTon,
    }),
  );

/** One day of the first paddock worked through, each number that the day's equations need. */
function workedDay(outcome: Outcome, sky: Sky, day: number, asked: Asked, management: Management) {
  const is = paddockDay(outcome, sky, day, 0);
  const { ground, before } = is;
  const grass = outcome.plan.side.grass;
  const greenRatio = 1 - Math.exp(-grass.perGreenAcPerLb * before.greenLbPerAc);
  const tabledIn = is.wetRetentionIn + (before.topMm / ground.topAvailableMm) * (is.dryRetentionIn - is.wetRetentionIn);
  const retentionIn = asked.abstraction === 'late' ? 1.33 * tabledIn ** 1.15 : tabledIn;
  const waterIn = is.waterMm / mmPerIn;
  const runoffIn = is.runoffMm / mmPerIn;
  const leafStoreIn = (grass.leafStoreMm / mmPerIn) * is.coverShare;
  const heldIn = before.heldMm / mmPerIn;
  const dripIn = Math.max(0, heldIn - leafStoreIn);
  const caughtIn = Math.min(waterIn - runoffIn, leafStoreIn - (heldIn - dripIn));
  const referenceIn = is.referenceMm / mmPerIn;
  const driedIn = Math.min(heldIn - dripIn + caughtIn, referenceIn);
  const leftIn = referenceIn - driedIn;
  const throughIn = waterIn - runoffIn - caughtIn + dripIn;
  const basalRatio = grass.bareCoefficient + (grass.fullCoefficient - grass.bareCoefficient) * greenRatio;
  const wantedIn = basalRatio * leftIn;
  const easyRatio = Math.max(0.1, Math.min(0.8, grass.depletionFraction + 0.04 * (5 - mmPerIn * wantedIn)));
  const rootsHoldIn = ground.availableMm / mmPerIn;
  const rootsMissingIn = Math.max(0, before.depletionMm / mmPerIn - throughIn);
  const stressRatio = Math.min(1, (rootsHoldIn - rootsMissingIn) / ((1 - easyRatio) * rootsHoldIn));
  const surfaceHoldIn = ground.evaporableMm / mmPerIn;
  const surfaceEasyIn = ground.readilyEvaporableMm / mmPerIn;
  const surfaceMissingIn = Math.max(0, before.surfaceMm / mmPerIn - throughIn);
  const exposedRatio = Math.max(0.01, 1 - is.coverShare);
  const groundRatio = Math.min(
    Math.min(1, (surfaceHoldIn - surfaceMissingIn) / (surfaceHoldIn - surfaceEasyIn)) * (grass.maximumCoefficient - basalRatio),
    exposedRatio * grass.maximumCoefficient,
  );
  const evaporationIn = Math.min(groundRatio * leftIn, exposedRatio * (surfaceHoldIn - surfaceMissingIn), rootsHoldIn - rootsMissingIn);
  const transpirationIn = Math.min(stressRatio * wantedIn, rootsHoldIn - rootsMissingIn - evaporationIn);
  const waterRatio = wantedIn > 0 ? transpirationIn / wantedIn : stressRatio;
  const grazed = grazedOn(outcome, day);
  const isHere = grazed === 0;
  const afterGreenLbPerAc = before.greenLbPerAc + is.grownLbPerAc;
  const dyingRatio = grass.dyingByAge + grass.dyingByDrought * (1 - waterRatio) + grass.dyingByFrost * (is.isHardFrost ? 1 : 0);
  const dyingLbPerAc = afterGreenLbPerAc * dyingRatio;
  const standsGreenLbPerAc = afterGreenLbPerAc - dyingLbPerAc;
  const fallenLbPerAc = before.deadLbPerAc * grass.fallingShare;
  const standsDeadLbPerAc = before.deadLbPerAc - fallenLbPerAc + dyingLbPerAc;
  const bite = biteOfDay({
    ...management,
    greenLbPerAc: standsGreenLbPerAc,
    deadLbPerAc: standsDeadLbPerAc,
    wantedLb: isHere ? is.demandLb : 0,
    areaAc: ground.areaAc,
  });
  return {
    workedDay: dayNumber(sky, day),
    herdOn: grazed === undefined ? ('hay' as const) : isHere ? ('here' as const) : ('elsewhere' as const),
    dayWaterIn: waterIn,
    dayReferenceIn: referenceIn,
    dayResponseRatio: is.response,
    dayFrostRatio: is.isHardFrost ? 1 : 0,
    dayGreenLbPerAc: before.greenLbPerAc,
    dayDeadLbPerAc: before.deadLbPerAc,
    dayLitterLbPerAc: before.litterLbPerAc,
    dayHeldIn: heldIn,
    daySurfaceIn: before.surfaceMm / mmPerIn,
    dayMissingIn: before.depletionMm / mmPerIn,
    dayTopIn: before.topMm / mmPerIn,
    topHoldIn: ground.topAvailableMm / mmPerIn,
    rootsHoldIn,
    surfaceHoldIn,
    surfaceEasyIn,
    greenRatio,
    coverRatio: is.coverShare,
    dayCurveNumber: is.curveNumber,
    dryRetentionIn: is.dryRetentionIn,
    wetRetentionIn: is.wetRetentionIn,
    tabledIn,
    retentionIn,
    abstractedRatio: grass.abstractionRatio,
    dayRunoffIn: runoffIn,
    leafStoreIn,
    dripIn,
    caughtIn,
    throughIn,
    driedIn,
    leftIn,
    basalRatio,
    wantedIn,
    easyRatio,
    rootsMissingIn,
    stressRatio,
    surfaceMissingIn,
    exposedRatio,
    groundRatio,
    evaporationIn,
    transpirationIn,
    drainageIn: Math.max(0, throughIn - before.depletionMm / mmPerIn),
    waterRatio,
    rateRatio: ground.ratePerDay,
    ceilingLbPerAc: ground.ceilingLbPerAc,
    dayGrownLbPerAc: is.grownLbPerAc,
    dyingLbPerAc,
    fallenLbPerAc,
    standsGreenLbPerAc,
    standsDeadLbPerAc,
    paddockAc: ground.areaAc,
    dayWantedLb: is.demandLb,
    dayEatenLbPerAc: bite.eatenLbPerAc,
    dayEatenLb: isHere ? bite.eatenLbPerAc * ground.areaAc : grazed === undefined ? 0 : eatenThere(outcome, sky, day, grazed),
  };
}
const eatenThere = (outcome: Outcome, sky: Sky, day: number, paddock: number): number => {
  const { eatenLbPerAc, ground } = paddockDay(outcome, sky, day, paddock);
  return eatenLbPerAc * ground.areaAc;
};

/** One management through all years, a year at a time: yields the share that is done. */
export function* computeBySteps(asked: Asked) {
  const place = placeOf(asked);
  const fits = fitsOf(asked);
  if (fits.kind !== 'fits') throw new RangeError('a yield that does not fit is refused before');
  const management = managementOf(asked);
  const { outcome, drawn } = yield* runFor(asked, fits, management);
  const { sky } = fits;
  const all = hayYearsOf(outcome, place.weather);
  const counted = all.filter(({ isCounted }) => isCounted);
  // Hay is told with the water that it holds in the barn.
  const asFedShare = 1 - asked.moisturePercent / hundred;
  const lists = hayLists(all);
  const { barnTons, count } = hayToHave(lists, asked.shortOfTenCount);
  const barn = {
    barnTons: asked.barnTon * asFedShare,
    mostBoughtTons: asked.mostBoughtTon * asFedShare,
    carriedShare: asked.carriedPercent / hundred,
  };
  const own = barnAnswer(lists, barn);
  const medianNeedDryTon = median(lists.needTons);
  const mostNeedDryTon = Math.max(...lists.needTons);
  const day = dayIn(outcome, sky, drawn, monthDayOf(asked.shownDay));
  const worked = workedDay(outcome, sky, day, asked, management);
  const fedLb = Math.max(0, worked.dayWantedLb - worked.dayEatenLb);
  return {
    hayDryTon: barnTons,
    hayTon: barnTons / asFedShare,
    shortCount: count.short,
    yearsCount: count.of,
    lowPercent: hundred * count.lowerShare,
    highPercent: hundred * count.upperShare,
    bound: own.canBoundOneInTen ? ('bounds' as const) : ('cannot' as const),
    medianNeedTon: medianNeedDryTon / asFedShare,
    mostNeedTon: mostNeedDryTon / asFedShare,
    seasonNeedTon: median(counted.map(({ needInSeasonTons }) => needInSeasonTons)) / asFedShare,
    cropTon: median(lists.cropTons) / asFedShare,
    barns: [lineOf('filled', own.filled), lineOf('carried', own.carried)],
    filledShortCount: own.filled.short,
    carriedShortCount: own.carried.short,
    carriedLowPercent: hundred * own.carried.lowerShare,
    carriedHighPercent: hundred * own.carried.upperShare,
    ...meansOf(counted),
    stockLines: stockLinesOf(asked.stock),
    herdLbPerDay: sumOf(stockLinesOf(asked.stock), ({ lineLbPerDay }) => lineLbPerDay),
    stubbleLbPerAc: management.stubbleLbPerAc,
    years: all.map((year, index) => ({
      startDay: dayNumber(sky, outcome.periods.period.indexOf(needThere('years', 'period', outcome.periods.whole[index]))),
      yearCount: index + 1,
      needTon: year.needTons / asFedShare,
      haveTon: asked.barnTon,
      yearCropTon: year.cropTons / asFedShare,
      enough: !year.isCounted ? ('not-counted' as const) : year.needTons > barn.barnTons ? ('short' as const) : ('enough' as const),
      yearGrownLbPerAc: year.grownLbPerAc,
      yearGrazedDays: year.grazedDays,
      yearBrokenDays: year.stubbleBrokenDays,
      yearRunoffIn: year.runoffMm / mmPerIn,
      yearSoilTonPerAc: year.soilLostTonPerAc,
      start: year.remembersStart ? ('made-up' as const) : ('worn-off' as const),
    })),
    weeks: weeksOf(outcome, sky, drawn, rootsOf(asked), worked.rootsHoldIn),
    ...worked,
    fedLb,
    outOfBarnLb: fedLb / (1 - management.feedingLossShare),
  };
}

/** The run, with the days of the year that is drawn kept, and the evening before it. */
function* runFor(asked: Asked, fits: Fits, management: Management) {
  const { sky } = fits;
  const side = sideOn(placeOf(asked), fits, {
    paddocks: asked.paddocksCount,
    rootsIn: rootsOf(asked),
    stock: stockOf(asked, management),
    management,
  });
  const { whole, period } = yearsFrom(sky, management.turnOut);
  const drawn = Math.min(asked.shownYearCount, whole.length) - 1;
  const first = period.indexOf(needThere('runFor', 'hay year', whole[drawn]));
  const outcome = yield* runBySteps(sky, side, { tracedFrom: Math.max(0, first - 1), tracedDays: 368 });
  return { outcome, drawn };
}

/** The same at one go. */
export function compute(asked: Asked) {
  const steps = computeBySteps(asked);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
