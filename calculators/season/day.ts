import { pastureCoverFactor } from '../math/erosion/pastureCoverFactor.ts';
import { coverShares } from '../math/growth/coverShares.ts';
import { dyingShare } from '../math/growth/dyingShare.ts';
import { regrowthLbPerAcDay } from '../math/growth/regrowthLbPerAcDay.ts';
import { biteOfDay } from '../math/herd/biteOfDay.ts';
import { needThere } from '../math/need.ts';
import { curveNumberByCover } from '../math/runoff/curveNumberByCover.ts';
import { retentionByDepletionIn } from '../math/runoff/retentionByDepletionIn.ts';
import { runoffIn } from '../math/runoff/runoffIn.ts';
import { depletionFraction } from '../math/soilWater/depletionFraction.ts';
import { dualCoefficientDay } from '../math/soilWater/dualCoefficientDay.ts';
import { exposedShare } from '../math/soilWater/exposedShare.ts';
import { leafCoefficient } from '../math/soilWater/leafCoefficient.ts';
import { leafWaterDay } from '../math/soilWater/leafWaterDay.ts';
import { topFootDay } from '../math/soilWater/topFootDay.ts';
import { FLAG, numberAt, wholeAt } from './flat.ts';
import { type HerdState, herdAtStart, herdMorning } from './herd.ts';
import type { Plan } from './plan.ts';
import type { Grass, Management, Paddock, Side, Start } from './side.ts';
import { type Sky, type SkyDay, skyDay } from './sky.ts';

/** How a paddock stands in the evening: water in millimeters, dry matter in pounds an acre. */
export interface PaddockState {
  /** Water on leaves and litter. */
  heldMm: number;
  /** Water missing from the surface, the root zone, and its top foot. */
  surfaceMm: number;
  depletionMm: number;
  topMm: number;
  greenLbPerAc: number;
  deadLbPerAc: number;
  litterLbPerAc: number;
  /** Days since stock were in it. */
  restDays: number;
}

/** What one paddock did in one day. */
export interface PaddockDay {
  runoffMm: number;
  drainageMm: number;
  evaporationMm: number;
  transpirationMm: number;
  driedMm: number;
  /** Share of their wanted water that plants got. */
  waterShare: number;
  /** Share of the ground under cover in the morning. */
  coverShare: number;
  soilLostTonPerAc: number;
  grownLbPerAc: number;
  rottedLbPerAc: number;
  cutLbPerAc: number;
  eatenLbPerAc: number;
  trampledLbPerAc: number;
  hayWasteLbPerAc: number;
  isStubbleBroken: boolean;
}

/** What a whole side did in one day. */
export interface SideDay {
  readonly paddocks: readonly PaddockDay[];
  readonly grazed: number | undefined;
  readonly demandLb: number;
  readonly eatenLb: number;
  readonly fedLb: number;
  readonly fromBarnLb: number;
  readonly madeLb: number;
}

const mmPerIn = 25.4;
const longRested = 1000;

export function stateAtStart({ paddocks }: Side, start: Start): { readonly paddocks: PaddockState[]; readonly herd: HerdState } {
  return {
    paddocks: paddocks.map(({ availableMm, topAvailableMm }) => ({
      heldMm: 0,
      surfaceMm: 0,
      depletionMm: start.depletedShare * availableMm,
      topMm: start.depletedShare * topAvailableMm,
      greenLbPerAc: start.greenLbPerAc,
      deadLbPerAc: start.deadLbPerAc,
      litterLbPerAc: start.litterLbPerAc,
      restDays: longRested,
    })),
    herd: herdAtStart(),
  };
}

const standing = ({ greenLbPerAc, deadLbPerAc }: PaddockState): number => greenLbPerAc + deadLbPerAc;

/** Rain that runs off by the morning's cover and the wetness of the top foot, and the soil that goes with it. */
function runoffOfDay(state: PaddockState, ground: Paddock, grass: Grass, sky: SkyDay, groundShare: number) {
  const waterMm = sky.rainMm + sky.meltMm;
  if (waterMm <= 0) return { runoffMm: 0, soilLostTonPerAc: 0 };
  const { abstractionRatio } = grass;
  const curveNumber = curveNumberByCover({ ...ground, groundCoverPercent: grass.fixedCoverPercent ?? 100 * groundShare });
  const retentionIn = retentionByDepletionIn({ curveNumber, depletedShare: state.topMm / ground.topAvailableMm, abstractionRatio });
  const factor = pastureCoverFactor({ coverPercent: 100 * groundShare, coverKind: 'grass', canopyPercent: 0, canopyHeight: 'short-brush' });
  return {
    // On ground that takes in nothing, inches and back can miss the rain by one rounding.
    runoffMm: Math.min(waterMm, mmPerIn * runoffIn({ rainIn: waterMm / mmPerIn, retentionIn, abstractionRatio })),
    soilLostTonPerAc: ground.bareLossTonPerAc * sky.erosivityShare * factor,
  };
}

/** Water of one paddock for one day: runoff, leaves, surface and roots, top foot, in this order. */
function waterDay(state: PaddockState, ground: Paddock, grass: Grass, sky: SkyDay) {
  const { greenShare, groundShare } = coverShares({ ...grass, ...state });
  const { runoffMm, soilLostTonPerAc } = runoffOfDay(state, ground, grass, sky, groundShare);
  const leaf = leafWaterDay({
    keptMm: sky.rainMm + sky.meltMm - runoffMm,
    storeMm: grass.leafStoreMm * groundShare,
    heldMm: state.heldMm,
    referenceMm: sky.referenceMm,
  });
  const basalCoefficient = leafCoefficient({ ...grass, greenShare });
  const wantedMm = basalCoefficient * leaf.referenceLeftMm;
  const soil = dualCoefficientDay({
    surfaceDepletionMm: state.surfaceMm,
    depletionMm: state.depletionMm,
    rainMm: leaf.throughMm,
    referenceMm: leaf.referenceLeftMm,
    basalCoefficient,
    maximumCoefficient: Math.max(grass.maximumCoefficient, basalCoefficient + 0.05),
    exposedShare: exposedShare(groundShare, 0),
    readilyEvaporableMm: ground.readilyEvaporableMm,
    evaporableMm: ground.evaporableMm,
    totalAvailableMm: ground.availableMm,
    depletionFraction: depletionFraction(grass.depletionFraction, wantedMm),
    dayOrder: 'after-rain',
  });
  const topMm = topFootDay({
    topDepletionMm: state.topMm,
    topAvailableMm: ground.topAvailableMm,
    depletionMm: state.depletionMm,
    availableMm: ground.availableMm,
    rootShareInTop: grass.rootShareInTop,
    throughMm: leaf.throughMm,
    evaporationMm: soil.evaporationMm,
    transpirationMm: soil.transpirationMm,
  });
  Object.assign(state, {
    heldMm: leaf.heldMm,
    // Dividing by the exposed share and multiplying by it again can miss the limit by one rounding.
    surfaceMm: Math.min(ground.evaporableMm, soil.surfaceDepletionMm),
    depletionMm: Math.min(ground.availableMm, soil.depletionMm),
    topMm,
  });
  const { drainageMm, evaporationMm, transpirationMm } = soil;
  const waterShare = wantedMm > 0 ? transpirationMm / wantedMm : soil.stress;
  const { driedMm } = leaf;
  return { runoffMm, soilLostTonPerAc, drainageMm, evaporationMm, transpirationMm, driedMm, waterShare, coverShare: groundShare };
}

/** Growth, dying, fall to litter and rot of one paddock for one day. */
function grassDay(state: PaddockState, ground: Paddock, grass: Grass, sky: SkyDay, waterShare: number) {
  const { greenLbPerAc, deadLbPerAc, litterLbPerAc } = state;
  const grownLbPerAc = regrowthLbPerAcDay({ ...grass, ...ground, greenLbPerAc, deadLbPerAc, response: sky.response * waterShare });
  const share = dyingShare({
    waterShare,
    isHardFrost: sky.isHardFrost,
    byAge: grass.dyingByAge,
    byDrought: grass.dyingByDrought,
    byFrost: grass.dyingByFrost,
  });
  const dying = (greenLbPerAc + grownLbPerAc) * share;
  const fallen = deadLbPerAc * grass.fallingShare;
  const rottedLbPerAc = litterLbPerAc * sky.rotShare;
  state.greenLbPerAc = greenLbPerAc + grownLbPerAc - dying;
  state.deadLbPerAc = deadLbPerAc - fallen + dying;
  state.litterLbPerAc = litterLbPerAc + fallen - rottedLbPerAc;
  return { grownLbPerAc, rottedLbPerAc };
}

/** Cuts a meadow if what stands is worth it: what is above the stubble, less what stays on the ground. */
function cutDay(state: PaddockState, rule: Management): number {
  const mass = standing(state);
  if (mass < rule.cutWorthLbPerAc) return 0;
  const cutLbPerAc = mass - rule.cutLeavesLbPerAc;
  const share = cutLbPerAc / mass;
  state.greenLbPerAc -= share * state.greenLbPerAc;
  state.deadLbPerAc -= share * state.deadLbPerAc;
  state.litterLbPerAc += cutLbPerAc * (1 - rule.hayKeptShare);
  return cutLbPerAc;
}

/** Grazes and tramples one paddock; gives pounds eaten in all of it. */
function grazeDay(state: PaddockState, ground: Paddock, rule: Management, result: PaddockDay, wantedLb: number): number {
  const { greenLbPerAc, deadLbPerAc } = state;
  const bite = biteOfDay({ ...rule, greenLbPerAc, deadLbPerAc, wantedLb, areaAc: ground.areaAc });
  state.greenLbPerAc -= bite.fromGreenLbPerAc;
  state.deadLbPerAc = Math.max(0, deadLbPerAc - bite.fromDeadLbPerAc);
  state.litterLbPerAc += bite.trampledLbPerAc;
  state.restDays = 0;
  result.eatenLbPerAc = bite.eatenLbPerAc;
  result.trampledLbPerAc = bite.trampledLbPerAc;
  result.isStubbleBroken = standing(state) < rule.stubbleLbPerAc;
  return bite.eatenLbPerAc * ground.areaAc;
}

/**
 * One day of one management, in the order that the season keeps: the herd's morning on last evening's stand; each paddock's water, then its growth and hay;
 * grazing and trampling where the herd is; hay for what it did not get. Changes the states and tells what happened. This is what the season means; the
 * flat kernel must equal it.
 */
export function seasonDay(states: readonly PaddockState[], herd: HerdState, plan: Plan, sky: Sky, day: number): SideDay {
  const { side } = plan;
  const { grass, management: rule } = side;
  const today = skyDay(sky, day);
  const flags = wholeAt(plan.flags, day);
  const fullDemandLb = numberAt(plan.demandLb, day);
  const grazed = herdMorning(
    herd,
    states.map((state) => ({ standingLbPerAc: standing(state), restDays: state.restDays })),
    side,
    {
      monthDay: wholeAt(sky.monthDay, day),
      isTurnOut: (flags & FLAG.turnOut) !== 0,
      isInSeason: (flags & FLAG.inSeason) !== 0,
      isSaleDay: (flags & FLAG.sell) !== 0,
      fullDemandLb,
    },
  );
  const demandLb = fullDemandLb * herd.keptShare;
  let madeLb = 0;
  const paddocks = states.map((state, index): PaddockDay => {
    const ground = needThere('seasonDay', `paddock ${index}`, side.paddocks[index]);
    const water = waterDay(state, ground, grass, today);
    const grown = grassDay(state, ground, grass, today, water.waterShare);
    const cutLbPerAc = ground.isMeadow && flags & FLAG.cut ? cutDay(state, rule) : 0;
    madeLb += cutLbPerAc * rule.hayKeptShare * ground.areaAc;
    state.restDays += 1;
    return { ...water, ...grown, cutLbPerAc, eatenLbPerAc: 0, trampledLbPerAc: 0, hayWasteLbPerAc: 0, isStubbleBroken: false };
  });
  const at = <Each>(list: readonly Each[], index: number): Each => needThere('seasonDay', `paddock ${index}`, list[index]);
  const eatenLb = grazed === undefined ? 0 : grazeDay(at(states, grazed), at(side.paddocks, grazed), rule, at(paddocks, grazed), demandLb);
  const fedLb = Math.max(0, demandLb - eatenLb);
  const fromBarnLb = fedLb / (1 - rule.feedingLossShare);
  if (rule.feedPaddock !== undefined) {
    const waste = (fromBarnLb - fedLb) / at(side.paddocks, rule.feedPaddock).areaAc;
    at(states, rule.feedPaddock).litterLbPerAc += waste;
    at(paddocks, rule.feedPaddock).hayWasteLbPerAc = waste;
  }
  return { paddocks, grazed, demandLb, eatenLb, fedLb, fromBarnLb, madeLb };
}
