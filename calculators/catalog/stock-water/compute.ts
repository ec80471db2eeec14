import { poisonSulfate, riskySalt } from '../../asks/waterSlip.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { bucketFlowGpm, deliveredGal } from '../../math/stockWater/deliveredGal.ts';
import { herdDemandGal } from '../../math/stockWater/herdDemandGal.ts';
import { pipeFlowGpm } from '../../math/stockWater/pipeHeadLossFt.ts';
import { planningIntakeGal } from '../../math/stockWater/planningIntakeGal.ts';
import { pondDays } from '../../math/stockWater/pondDays.ts';
import { pondLossInPerDay } from '../../math/stockWater/pondLossInPerDay.ts';
import { pondDepthFt, pondStorageAtGal, pondStorageGal } from '../../math/stockWater/pondStorageGal.ts';
import { mostSurfaceAc, pondSurfaceAc } from '../../math/stockWater/pondSurfaceAc.ts';
import { roundEndTankGal, roundTankGal, tankGal } from '../../math/stockWater/tankGal.ts';
import { troughPlan } from '../../math/stockWater/troughPlan.ts';
import { gallonsToInchAcres } from '../../math/water/waterVolume.ts';
import { intakeRanges, pipeRoughness, reserveDays } from '../../tables/stockWater.ts';
import { boreIn, type Values } from './inputs.ts';
import { isListName, type ListName } from './words.ts';

/** Nobody plans further without rain; past it the answer is a year or more. */
export const lookAheadDays = 365;
const shownFirstDays = 3;
const weekDays = 7;
/** Nobody knows a pond's loss to better than about a quarter. */
const moreLoss = 1.25;

/** Plastic is what is laid for stock. */
const plastic = pipeRoughness[0].coefficient;

/** Nothing should drink it as it is, however much there is. */
export const isUnfit = ({ hasScum, slip, sulfateMgPerL, saltMgPerL }: Values): boolean =>
  hasScum || (slip === 'tested' && (sulfateMgPerL >= poisonSulfate || saltMgPerL >= riskySalt));
export type Verdict = 'lasts' | 'short' | 'a-year' | 'keeps-up' | 'unfit';

export const headOf = ({ herd }: Pick<Values, 'herd'>): number => sumOf(herd, ({ countHead }) => countHead);

/** Which of the stock that is there some list knows by heat, and which none. */
export function knownByHeat({ herd }: Pick<Values, 'herd'>): ReadonlySet<boolean> {
  return new Set(herd.filter(({ countHead }) => countHead > 0).map(({ stock }) => !intakeRanges.some(({ animal }) => animal === stock)));
}

export function pondAcOf({ surfaceFrom, surfaceAc, lengthFt, widthFt, shoreFt }: Values): number {
  if (surfaceFrom === 'known') return surfaceAc;
  return surfaceFrom === 'across' ? pondSurfaceAc(lengthFt, widthFt) : mostSurfaceAc(shoreFt);
}
/** What was drunk while the stake stood, as a depth over the pond. */
export const stakeDrunkInOf = (values: Values): number => gallonsToInchAcres(values.stakeDrunkGal) / pondAcOf(values);

function needOf({ herd, hotF, intakeFrom }: Values) {
  const lines = herd.map(({ stock, countHead, knownGalPerDay }) => {
    const { galPerDay, leastGalPerDay: least, source } = planningIntakeGal(stock, hotF);
    const eachGalPerDay = intakeFrom === 'known' ? knownGalPerDay : galPerDay;
    const leastGalPerDay = intakeFrom === 'known' ? knownGalPerDay : least;
    const from: ListName = intakeFrom === 'lists' && isListName(source) ? source : 'own';
    return {
      stock,
      countHead,
      from,
      eachGalPerDay,
      lineGalPerDay: countHead * eachGalPerDay,
      leastGalPerDay,
      leastLineGalPerDay: countHead * leastGalPerDay,
    };
  });
  const dayOf = (each: 'eachGalPerDay' | 'leastGalPerDay'): number =>
    herdDemandGal(lines.map((line) => ({ head: line.countHead, galPerHeadDay: line[each], days: 1 }))).perDayGal;
  return { lines, needGalPerDay: dayOf('eachGalPerDay'), leastNeedGalPerDay: dayOf('leastGalPerDay') };
}

function storedOf({ storage, ownStoredGal, tanksCount, tankAcrossFt, tankLengthFt, tankWidthFt, tankDepthFt }: Values): number {
  switch (storage) {
    case 'none':
      return 0;
    case 'known':
      return ownStoredGal;
    case 'round':
      return tanksCount * roundTankGal(tankAcrossFt, tankDepthFt);
    case 'square':
      return tanksCount * tankGal(tankLengthFt, tankWidthFt, tankDepthFt);
    case 'round-end':
      return tanksCount * roundEndTankGal(tankLengthFt, tankWidthFt, tankDepthFt);
  }
}

interface Level {
  readonly atDays: number;
  readonly leftGal: number;
}
/** Every day of a short run; of a long one every week, and the last. */
function thinned(byDayGal: readonly number[]): readonly Level[] {
  const last = byDayGal.length - 1;
  const every = last > 4 * weekDays ? weekDays : 1;
  return byDayGal.map((leftGal, atDays) => ({ atDays, leftGal })).filter(({ atDays }) => atDays % every === 0 || atDays === last);
}

function pondPart(values: Values, needGalPerDay: number, leastNeedGalPerDay: number) {
  const pondAc = pondAcOf(values);
  const { maxDepthFt, deadDepthFt, lossFrom, evaporationInPerDay, seepageInPerDay, dropIn, stakeDays, stakeDrunkGal } = values;
  const pond = { surfaceAc: pondAc, maxDepthFt };
  const isStake = lossFrom === 'stake';
  const lossInPerDay = isStake
    ? pondLossInPerDay({ dropIn, days: stakeDays, drunkGal: stakeDrunkGal, surfaceAc: pondAc })
    : evaporationInPerDay + seepageInPerDay;
  const seepage = isStake ? 0 : seepageInPerDay;
  const runFor = (drinkGal: number, times = 1) =>
    pondDays({
      pond,
      deadDepthFt,
      evaporationInByDay: Array.from({ length: lookAheadDays }, () => times * (lossInPerDay - seepage)),
      seepageInPerDay: times * seepage,
      drinkGalByDay: Array.from({ length: lookAheadDays }, () => drinkGal),
    });
  const run = runFor(needGalPerDay);
  const deadGal = pondStorageAtGal(pond, deadDepthFt);
  const pondGal = pondStorageGal(pondAc, maxDepthFt);
  const usableGal = pondGal - deadGal;
  const morningsFt = [maxDepthFt, ...run.depthByDayFt].slice(0, Math.min(shownFirstDays, run.depthByDayFt.length));
  const firstDays = morningsFt.map((morningFt, index) => {
    const sunkFt = Math.max(0, morningFt - lossInPerDay / 12);
    const sunkGal = pondStorageAtGal(pond, sunkFt);
    const drunkGal = Math.min(needGalPerDay, Math.max(0, sunkGal - deadGal));
    const eveningGal = sunkGal - drunkGal;
    return { atDays: index + 1, morningFt, sunkFt, sunkGal, drunkGal, eveningGal, eveningFt: pondDepthFt(pond, eveningGal) };
  });
  const usableByDay = [usableGal, ...run.depthByDayFt.map((depthFt) => Math.max(0, pondStorageAtGal(pond, depthFt) - deadGal))];
  return {
    pondAc,
    pondGal,
    deadGal,
    usableGal,
    lossInPerDay,
    firstDayLossGal: pondGal - pondStorageAtGal(pond, Math.max(0, maxDepthFt - lossInPerDay / 12)),
    firstDays,
    drunkGal: run.drunkGal,
    lostGal: run.evaporatedGal + run.seepedGal,
    leftGal: run.leftGal,
    drinkOnlyDays: usableGal / needGalPerDay,
    lastsDays: run.days,
    leastDays: runFor(needGalPerDay, moreLoss).days,
    mostDays: runFor(leastNeedGalPerDay).days,
    levels: thinned(usableByDay),
  };
}

/** Whole days that a store covers a daily shortage. A hair is added, so that a unit's conversion does not cost a day. */
const daysOf = (storedGal: number, shortGal: number): number =>
  shortGal > 0 ? Math.min(lookAheadDays, Math.floor(storedGal / shortGal + 1e-9)) : lookAheadDays;

function tankPart(storedGal: number, shortGal: number, leastShortGal: number, wantedDays: number) {
  const lastsDays = daysOf(storedGal, shortGal);
  const spanDays = shortGal > 0 ? Math.min(lookAheadDays, lastsDays + 1) : wantedDays;
  return {
    pondAc: 0,
    pondGal: 0,
    deadGal: 0,
    usableGal: 0,
    lossInPerDay: 0,
    firstDayLossGal: 0,
    firstDays: [],
    drunkGal: 0,
    lostGal: 0,
    leftGal: 0,
    drinkOnlyDays: 0,
    lastsDays,
    leastDays: lastsDays,
    mostDays: daysOf(storedGal, leastShortGal),
    levels: thinned(Array.from({ length: spanDays + 1 }, (_, day) => Math.max(0, storedGal - day * shortGal))),
  };
}

export function compute(values: Values) {
  const { supply, wantedDays, pumpedHr, loadGal, weeklyLoadsCount } = values;
  const { lines, needGalPerDay, leastNeedGalPerDay } = needOf(values);
  const flowGpm = values.flowFrom === 'known' ? values.knownGpm : bucketFlowGpm(values.bucketGal, values.bucketFillS);
  const pipeInsideIn = boreIn[values.pipeSize];
  const pipeGpm = pipeFlowGpm(values.pipeHeadFt, { insideIn: pipeInsideIn, lengthFt: values.pipeLengthFt, roughness: plastic });
  const arrivesGpm = values.pipe === 'piped' ? Math.min(flowGpm, pipeGpm) : flowGpm;
  const supplyGalPerDay = supply === 'flow' ? deliveredGal(arrivesGpm, pumpedHr) : supply === 'hauled' ? (loadGal * weeklyLoadsCount) / weekDays : 0;
  const shortGalPerDay = Math.max(0, needGalPerDay - supplyGalPerDay);
  const storedGal = storedOf(values);
  const part =
    supply === 'pond'
      ? pondPart(values, needGalPerDay, leastNeedGalPerDay)
      : tankPart(storedGal, shortGalPerDay, Math.max(0, leastNeedGalPerDay - supplyGalPerDay), wantedDays);
  const lastsVerdict = part.lastsDays >= lookAheadDays ? 'a-year' : part.lastsDays >= wantedDays ? 'lasts' : 'short';
  const byGallons = supply !== 'pond' && shortGalPerDay === 0 ? 'keeps-up' : lastsVerdict;
  // Water that runs down is told by its days, with the same words beside them.
  const verdict: Verdict = isUnfit(values) && (byGallons === 'keeps-up' || byGallons === 'a-year') ? 'unfit' : byGallons;
  const reserveGal = reserveDays.days * needGalPerDay;
  const trough = troughPlan({ dailyGal: needGalPerDay, head: headOf(values), walkFt: values.walkFt });
  return {
    lines,
    needGalPerDay,
    leastNeedGalPerDay,
    ...part,
    verdict,
    flowGpm,
    pipeInsideIn,
    pipeGpm,
    arrivesGpm,
    supplyGalPerDay,
    shortGalPerDay,
    supplyPercent: (100 * supplyGalPerDay) / needGalPerDay,
    neededHr: needGalPerDay / deliveredGal(arrivesGpm, 1),
    neededLoadsCount: (weekDays * needGalPerDay) / loadGal,
    storedGal,
    storedDays: storedGal / needGalPerDay,
    reserveGal,
    reserveShortGal: Math.max(0, reserveGal - storedGal),
    headCount: headOf(values),
    comes: trough.comes,
    troughGal: trough.tankGal,
    refillGpm: trough.flowGpm,
    atOnceHead: trough.atOnceHighHead,
    edgeFt: trough.edgeFt,
  };
}
export type Results = ReturnType<typeof compute>;
