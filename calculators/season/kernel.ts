// biome-ignore-all lint/complexity/useMathMinMax: Math.min and Math.max mind zeros with a sign, which costs a tenth of this loop's speed
import { FLAG, GROUND, HERD, numberAt, SKY, STATE, SUM, TRACE, wholeAt, YEAR } from './flat.ts';
import { kernelEvening } from './kernelEvening.ts';
import { kernelHerd } from './kernelHerd.ts';
import type { Memory } from './memory.ts';
import type { Plan } from './plan.ts';
import type { Sky } from './sky.ts';

/*
 * The readable day (`day.ts`) in one flat loop over typed arrays: no object, no closure and no array is made in a day. Each line keeps the order of
 * operations of the readable functions, so that the two agree to rounding and decide alike; a property test runs both day by day. Three savings stay inside
 * that: a table for e^−x, a power only where a tangent below it leaves some runoff, and Ks for the water share unless the soil ran out within the day.
 */

// Constants of this module are folded into the loop when it is compiled; those of another are looked up each time, which costs a fifth of the speed.
const {
  width: widthSky,
  rain: rainSky,
  melt: meltSky,
  reference: referenceSky,
  response: responseSky,
  frost: frostSky,
  rot: rotSky,
  erosivity: erosivitySky,
} = SKY;
const {
  width: widthGround,
  available: availableGround,
  topAvailable: topAvailableGround,
  belowAvailable: belowAvailableGround,
  evaporable: evaporableGround,
  fair: fairGround,
  fairMiddle: fairMiddleGround,
  poor: poorGround,
  poorMiddle: poorMiddleGround,
  goodMiddle: goodMiddleGround,
  good: goodGround,
  perTop: perTopGround,
  bareLoss: bareLossGround,
  perSlowing: perSlowingGround,
  perBelow: perBelowGround,
  perCeiling: perCeilingGround,
  rate: rateGround,
  isMeadow: isMeadowGround,
  area: areaGround,
} = GROUND;
const {
  width: widthState,
  green: greenState,
  dead: deadState,
  litter: litterState,
  depletion: depletionState,
  top: topState,
  held: heldState,
  surface: surfaceState,
  rest: restState,
} = STATE;
const {
  width: widthSum,
  runoff: runoffSum,
  soilLost: soilLostSum,
  cut: cutSum,
  drainage: drainageSum,
  evaporation: evaporationSum,
  transpiration: transpirationSum,
  dried: driedSum,
  stressDays: stressDaysSum,
  grown: grownSum,
  cover: coverSum,
  peak: peakSum,
} = SUM;
const {
  width: widthTrace,
  runoff: runoffTrace,
  soilLost: soilLostTrace,
  drainage: drainageTrace,
  evaporation: evaporationTrace,
  transpiration: transpirationTrace,
  dried: driedTrace,
  grown: grownTrace,
  cover: coverTrace,
} = TRACE;

/** Nearly the tangent of 1.33 S^1.15 at 4 in, a hair below it: it lies below the curve everywhere. */
const tangentSlope = 1.8833;
const tangentLow = 0.9836;

/**
 * e^−x from the nearest entry of a table by five terms of the series: within 3e-16 of the exact one and three times as fast. Its two uses stand in the loop,
 * because a function as long as this is not inlined there, and each call would then make an object of its number.
 */
const lastStep = 4095;
const stepsPerUnit = 64 / Math.LN2;
const unitsPerStep = Math.LN2 / 64;
/** Past this e^−x is nothing beside 1. */
const farthest = lastStep * unitsPerStep;
const decay = Float64Array.from({ length: lastStep + 2 }, (_, step) => Math.exp(-step * unitsPerStep));
const [third, fourth, fifth] = [1 / 6, 1 / 24, 1 / 120];

/** Runs the days `from` to before `to`. `period` says into which sums each day goes. Called by years it is compiled after a few calls. */
export function runKernel(plan: Plan, sky: Sky, period: Int32Array, memory: Memory, from: number, to: number): void {
  const { ground, paddocks, demandLb, flags, dry, wet, factorPercent, factor } = plan;
  const { grass, management: rule } = plan.side;
  const { crownLbPerAc, dyingByAge, dyingByDrought, dyingByFrost, fallingShare, perGreenAcPerLb, perDeadAcPerLb, perLitterAcPerLb } = grass;
  const { bareCoefficient, maximumCoefficient, depletionFraction, rootShareInTop, leafStoreMm, abstractionRatio } = grass;
  const openBase = 1 - grass.baseShare;
  const rootShareBelow = 1 - rootShareInTop;
  const coefficientSpan = grass.fullCoefficient - bareCoefficient;
  const isConverted = abstractionRatio === 0.05;
  const fixedPercent = grass.fixedCoverPercent ?? -1;
  const factorColumns = factor.length;
  const { state, herd, sums, trace } = memory;
  const { daily } = sky;

  for (let day = from; day < to; day += 1) {
    const at = day * widthSky;
    const rain = numberAt(daily, at + rainSky);
    const water = rain + numberAt(daily, at + meltSky);
    const waterIn = water / 25.4;
    const reference = numberAt(daily, at + referenceSky);
    const response = numberAt(daily, at + responseSky);
    const frost = numberAt(daily, at + frostSky);
    const rot = numberAt(daily, at + rotSky);
    const erosivity = numberAt(daily, at + erosivitySky);
    const isCut = (wholeAt(flags, day) & FLAG.cut) !== 0;
    const ofPeriod = wholeAt(period, day);
    const grazed = kernelHerd(plan, sky, memory, day, ofPeriod * YEAR.width);
    const demand = numberAt(demandLb, day) * numberAt(herd, HERD.keptShare);
    const traced = (day - memory.tracedFrom) * paddocks * widthTrace;
    const isTraced = trace !== undefined && traced >= 0 && traced < trace.length;
    let made = 0;

    for (let paddock = 0; paddock < paddocks; paddock += 1) {
      const s = paddock * widthState;
      const g = paddock * widthGround;
      const u = (ofPeriod * paddocks + paddock) * widthSum;
      const green = numberAt(state, s + greenState);
      const dead = numberAt(state, s + deadState);
      const litter = numberAt(state, s + litterState);
      const depletion = numberAt(state, s + depletionState);
      const top = numberAt(state, s + topState);
      const available = numberAt(ground, g + availableGround);
      const topAvailable = numberAt(ground, g + topAvailableGround);
      const belowAvailable = numberAt(ground, g + belowAvailableGround);
      const evaporable = numberAt(ground, g + evaporableGround);

      // Cover of the morning.
      const greenPart = perGreenAcPerLb * green;
      const byGreen = Math.min(farthest, greenPart);
      let step = (byGreen * stepsPerUnit + 0.5) | 0;
      let rest = step * unitsPerStep - byGreen;
      const greenShare = 1 - numberAt(decay, step) * (1 + rest * (1 + rest * (0.5 + rest * (third + rest * (fourth + rest * fifth)))));
      const byAll = Math.min(farthest, greenPart + perDeadAcPerLb * dead + perLitterAcPerLb * litter);
      step = (byAll * stepsPerUnit + 0.5) | 0;
      rest = step * unitsPerStep - byAll;
      const cover = 1 - openBase * (numberAt(decay, step) * (1 + rest * (1 + rest * (0.5 + rest * (third + rest * (fourth + rest * fifth))))));

      // Runoff and soil loss.
      let runoff = 0;
      let lost = 0;
      if (water > 0) {
        const percent = fixedPercent < 0 ? 100 * cover : fixedPercent;
        const fair = numberAt(ground, g + fairGround);
        const fairMiddle = numberAt(ground, g + fairMiddleGround);
        let number = fair;
        if (percent <= fairMiddle) {
          const poor = numberAt(ground, g + poorGround);
          const poorMiddle = numberAt(ground, g + poorMiddleGround);
          number = poor + (fair - poor) * Math.max(0, (percent - poorMiddle) / (fairMiddle - poorMiddle));
        } else {
          const goodMiddle = numberAt(ground, g + goodMiddleGround);
          number = fair + (numberAt(ground, g + goodGround) - fair) * Math.min(1, (percent - fairMiddle) / (goodMiddle - fairMiddle));
        }
        const whole = Math.floor(number);
        const part = number - whole;
        const wholeDry = numberAt(dry, whole);
        const wholeWet = numberAt(wet, whole);
        const dryIn = 1000 / (wholeDry + (numberAt(dry, whole + 1) - wholeDry) * part) - 10;
        const wetIn = 1000 / (wholeWet + (numberAt(wet, whole + 1) - wholeWet) * part) - 10;
        const tabled = wetIn + top * numberAt(ground, g + perTopGround) * (dryIn - wetIn);
        if (!isConverted || waterIn > 0.05 * (tangentSlope * tabled - tangentLow)) {
          const retention = isConverted ? 1.33 * tabled ** 1.15 : tabled;
          const past = waterIn - abstractionRatio * retention;
          if (past > 0) runoff = Math.min(water, (25.4 * (past * past)) / (past + retention));
        }
        const covered = 100 * cover;
        let column = 1;
        while (column < factorColumns && covered > numberAt(factorPercent, column)) column += 1;
        const lower = numberAt(factor, column - 1);
        const lowerPercent = numberAt(factorPercent, column - 1);
        const cFactor =
          column === factorColumns
            ? lower
            : lower + ((numberAt(factor, column) - lower) * (covered - lowerPercent)) / (numberAt(factorPercent, column) - lowerPercent);
        lost = numberAt(ground, g + bareLossGround) * erosivity * cFactor;
        sums[u + runoffSum] = numberAt(sums, u + runoffSum) + runoff;
        sums[u + soilLostSum] = numberAt(sums, u + soilLostSum) + lost;
      }

      // Leaves.
      const store = leafStoreMm * cover;
      const keptWater = water - runoff;
      const held = numberAt(state, s + heldState);
      const drip = held > store ? held - store : 0;
      const room = store - (held - drip);
      const caught = keptWater < room ? keptWater : room;
      const wetLeaf = held - drip + caught;
      const dried = wetLeaf < reference ? wetLeaf : reference;
      const through = keptWater - caught + drip;
      const left = reference - dried;

      // Ground and roots.
      const basal = bareCoefficient + coefficientSpan * greenShare;
      const wanted = basal * left;
      const most = maximumCoefficient > basal + 0.05 ? maximumCoefficient : basal + 0.05;
      const bare = 1 - cover;
      const exposed = bare > 0.01 ? bare : 0.01;
      const surfaceAfter = numberAt(state, s + surfaceState) - through;
      const surface = surfaceAfter > 0 ? surfaceAfter : 0;
      const rootsAfter = depletion - through;
      const roots = rootsAfter > 0 ? rootsAfter : 0;
      const drainage = rootsAfter < 0 ? -rootsAfter : 0;
      const slowed = (evaporable - surface) * numberAt(ground, g + perSlowingGround);
      const fromGround = (slowed < 1 ? slowed : 1) * (most - basal);
      const limit = exposed * most;
      let evaporation = (fromGround < limit ? fromGround : limit) * left;
      const surfaceLeft = exposed * (evaporable - surface);
      const rootsLeft = available - roots;
      if (surfaceLeft < evaporation) evaporation = surfaceLeft;
      if (rootsLeft < evaporation) evaporation = rootsLeft;
      const fitted = depletionFraction + 0.04 * (5 - wanted);
      const fraction = fitted < 0.1 ? 0.1 : fitted > 0.8 ? 0.8 : fitted;
      const easy = rootsLeft / ((1 - fraction) * available);
      let waterShare = easy < 1 ? easy : 1;
      let transpiration = waterShare * wanted;
      if (rootsLeft - evaporation < transpiration) {
        transpiration = rootsLeft - evaporation;
        waterShare = transpiration / wanted;
      }

      // The top foot.
      const topAfter = top - through;
      const wetTop = topAfter > 0 ? topAfter : 0;
      const belowAfter = roots - wetTop;
      const below = belowAfter < 0 ? 0 : belowAfter < belowAvailable ? belowAfter : belowAvailable;
      const topLeft = rootShareInTop * (topAvailable - wetTop) * numberAt(ground, g + perTopGround);
      const belowLeft = rootShareBelow * (belowAvailable - below) * numberAt(ground, g + perBelowGround);
      const topShare = topLeft + belowLeft > 0 ? topLeft / (topLeft + belowLeft) : 1;
      const all = roots + evaporation + transpiration;
      let evening = wetTop + evaporation + topShare * transpiration;
      if (all - belowAvailable > evening) evening = all - belowAvailable;
      const surfaceEvening = surface + evaporation / exposed;
      state[s + heldState] = wetLeaf - dried;
      state[s + surfaceState] = surfaceEvening < evaporable ? surfaceEvening : evaporable;
      state[s + depletionState] = all < available ? all : available;
      state[s + topState] = evening < topAvailable ? evening : topAvailable;

      // Grass, and hay on its day.
      const room0 = 1 - (green + dead) * numberAt(ground, g + perCeilingGround);
      const grownRaw = numberAt(ground, g + rateGround) * (response * waterShare) * (green + crownLbPerAc) * room0;
      const grown = grownRaw > 0 ? grownRaw : 0;
      const dying = (green + grown) * (dyingByAge + dyingByDrought * (1 - waterShare) + dyingByFrost * frost);
      const fallen = dead * fallingShare;
      let greenEvening = green + grown - dying;
      let deadEvening = dead - fallen + dying;
      let litterEvening = litter + fallen - litter * rot;
      const mass = greenEvening + deadEvening;
      if (isCut && mass >= rule.cutWorthLbPerAc && numberAt(ground, g + isMeadowGround) !== 0) {
        const cut = mass - rule.cutLeavesLbPerAc;
        const cutShare = cut / mass;
        greenEvening -= cutShare * greenEvening;
        deadEvening -= cutShare * deadEvening;
        litterEvening += cut * (1 - rule.hayKeptShare);
        made += cut * rule.hayKeptShare * numberAt(ground, g + areaGround);
        sums[u + cutSum] = numberAt(sums, u + cutSum) + cut;
      }
      state[s + greenState] = greenEvening;
      state[s + deadState] = deadEvening;
      state[s + litterState] = litterEvening;
      state[s + restState] = numberAt(state, s + restState) + 1;
      sums[u + drainageSum] = numberAt(sums, u + drainageSum) + drainage;
      sums[u + evaporationSum] = numberAt(sums, u + evaporationSum) + evaporation;
      sums[u + transpirationSum] = numberAt(sums, u + transpirationSum) + transpiration;
      sums[u + driedSum] = numberAt(sums, u + driedSum) + dried;
      sums[u + stressDaysSum] = numberAt(sums, u + stressDaysSum) + 1 - waterShare;
      sums[u + grownSum] = numberAt(sums, u + grownSum) + grown;
      sums[u + coverSum] = numberAt(sums, u + coverSum) + cover;
      if (mass > numberAt(sums, u + peakSum)) sums[u + peakSum] = mass;
      if (isTraced) {
        const t = traced + paddock * widthTrace;
        trace[t + runoffTrace] = runoff;
        trace[t + soilLostTrace] = lost;
        trace[t + drainageTrace] = drainage;
        trace[t + evaporationTrace] = evaporation;
        trace[t + transpirationTrace] = transpiration;
        trace[t + driedTrace] = dried;
        trace[t + grownTrace] = grown;
        trace[t + coverTrace] = cover;
      }
    }
    kernelEvening(plan, memory, day, ofPeriod, grazed, demand, made);
  }
}
