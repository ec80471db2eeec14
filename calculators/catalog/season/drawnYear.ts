import { biteOfDay } from '../../math/herd/biteOfDay.ts';
import { needThere } from '../../math/need.ts';
import type { Outcome } from '../../season/run.ts';
import { grazedOn, paddockDay, stripOf } from '../../season/shownDay.ts';
import type { Management } from '../../season/side.ts';
import type { Sky } from '../../season/sky.ts';
import type { Weather } from '../../season/weather.ts';
import type { Asked } from './inputs.ts';

export const mmPerIn = 25.4;
export const hundred = 100;
const lbPerTon = 2000;
const spanDays = 7;
const dayMs = 86_400_000;

/** Days since 1970 of a day of the run. */
export const dayNumber = (sky: Sky, day: number): number => {
  const date = needThere('dayNumber', `day ${day}`, sky.monthDay[day]);
  return Date.UTC(needThere('dayNumber', `year of ${day}`, sky.year[day]), Math.floor(date / 100) - 1, date % 100) / dayMs;
};

/** The drawn year week by week. */
export const weeksOf = (
  outcome: Outcome,
  days: { readonly sky: Sky; readonly weather: Weather },
  year: number,
  rootsIn: number,
  rootsHoldIn: number,
) =>
  stripOf(outcome, days, year, spanDays).map(
    ({ day, filledDays, waterMm, runoffMm, soakedMm, filledShare, standingLbPerAc, coverShare, grownLbPerAc, fedLb }) => ({
      weekDay: dayNumber(days.sky, day),
      weekRainIn: waterMm / mmPerIn,
      weekRunoffIn: runoffMm / mmPerIn,
      weekSoakedIn: soakedMm / mmPerIn,
      // By what it has, to the last bit.
      weekFilledPercent: (hundred * (filledShare * rootsHoldIn)) / rootsHoldIn,
      weekTopIn: 0,
      weekDepthIn: rootsIn,
      weekHasIn: filledShare * rootsHoldIn,
      weekMissingIn: (1 - filledShare) * rootsHoldIn,
      weekStandingLbPerAc: standingLbPerAc,
      weekCoverPercent: hundred * coverShare,
      weekGrownLbPerAc: grownLbPerAc,
      weekFedTon: fedLb / lbPerTon,
      weekFilledDays: filledDays,
    }),
  );

/** One day of the first paddock worked through, each number that the day's equations need. */
export function workedDay(outcome: Outcome, sky: Sky, day: number, asked: Asked, management: Management) {
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
  const dayWantedLb = is.fullDemandLb * is.keptShare;
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
    wantedLb: isHere ? dayWantedLb : 0,
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
    dayFullLb: is.fullDemandLb,
    dayKeptRatio: is.keptShare,
    dayWantedLb,
    dayEatenLbPerAc: bite.eatenLbPerAc,
    dayEatenLb: isHere ? bite.eatenLbPerAc * ground.areaAc : grazed === undefined ? 0 : eatenThere(outcome, sky, day, grazed),
  };
}
const eatenThere = (outcome: Outcome, sky: Sky, day: number, paddock: number): number => {
  const { eatenLbPerAc, ground } = paddockDay(outcome, sky, day, paddock);
  return eatenLbPerAc * ground.areaAc;
};
