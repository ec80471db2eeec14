// biome-ignore-all lint/complexity/useMathMinMax: Math.min and Math.max mind zeros with a sign, which costs a tenth of this loop's speed
import { FLAG, GROUND, MORNING, numberAt as numberIn, rowAt as rowIn, SKY, STATE, SUM, TRACE, wholeAt as wholeIn, YEAR } from './flat.ts';
import { kernelEvening } from './kernelEvening.ts';
import { kernelHerd } from './kernelHerd.ts';
import { kernelRain } from './kernelRain.ts';
import { keepSums, type Memory, nowhere, takeSums } from './memory.ts';
import type { Plan } from './plan.ts';
import type { Sky } from './sky.ts';

/*
 * The readable day (`day.ts`) in one flat loop over typed arrays: no object, no closure and no array is made in a day. Each line keeps the order of
 * operations of the readable functions, so that the two agree to rounding and decide alike; a property test runs both day by day. Three savings stay inside
 * that: a table for e^−x, a power only where a tangent below it leaves some runoff, and Ks for the water share unless the soil ran out within the day.
 */

// Constants of this module are folded into the loop when it is compiled; those of another, its functions too, are looked up each time, which costs a fifth of the speed.
const numberAt = numberIn;
const rowAt = rowIn;
const wholeAt = wholeIn;
const { width: widthSky, rain: rainSky, melt: meltSky, reference: referenceSky, response: responseSky, frost: frostSky, rot: rotSky } = SKY;
const {
  available: availableGround,
  topAvailable: topAvailableGround,
  belowAvailable: belowAvailableGround,
  evaporable: evaporableGround,
  perTop: perTopGround,
  perSlowing: perSlowingGround,
  perBelow: perBelowGround,
  perCeiling: perCeilingGround,
  rate: rateGround,
  isMeadow: isMeadowGround,
  area: areaGround,
} = GROUND;
const {
  green: greenState,
  dead: deadState,
  litter: litterState,
  depletion: depletionState,
  top: topState,
  held: heldState,
  surface: surfaceState,
} = STATE;
const {
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
const { greenShare: greenShareMorning, cover: coverMorning, runoff: runoffMorning, soilLost: soilLostMorning } = MORNING;
const { cut: cutFlag } = FLAG;
const { made: madeYear, days: daysYear } = YEAR;

/**
 * e^−x from the nearest entry of a table by three terms of the series: within 1e-15 of the exact one and three times as fast. x comes in steps of the table,
 * and what is left of a step goes into the series as it is. Its two uses stand in the loop, because a function as long as this is not inlined there, and each
 * call would then make an object of its number. `toWhole` added and taken off leaves the nearest whole number, which is waited for less than one made of an
 * integer.
 */
const stepsPerUnit = 1024 / Math.LN2;
const unitsPerStep = Math.LN2 / 1024;
/** Past this e^−x is nothing beside 1. */
const lastStep = 54_272;
const decay = Float64Array.from({ length: lastStep + 1 }, (_, step) => Math.exp(-step * unitsPerStep));
const second = unitsPerStep ** 2 / 2;
const third = unitsPerStep ** 3 / 6;
const toWhole = 1.5 * 2 ** 52;

/** Runs the days `from` to before `to`. `period` says into which sums each day goes. Called by years it is compiled after a few calls. */
export function runKernel(plan: Plan, sky: Sky, period: Int32Array, memory: Memory, from: number, to: number): void {
  const { paddocks, hasStock, flags, haying } = plan;
  const { grass } = plan.side;
  const { crownLbPerAc, dyingByAge, dyingByDrought, dyingByFrost, fallingShare, perGreenAcPerLb, perDeadAcPerLb, perLitterAcPerLb } = grass;
  const { bareCoefficient, maximumCoefficient, depletionFraction, rootShareInTop, leafStoreMm } = grass;
  const greenStepsPerLb = perGreenAcPerLb * stepsPerUnit;
  const deadStepsPerLb = perDeadAcPerLb * stepsPerUnit;
  const litterStepsPerLb = perLitterAcPerLb * stepsPerUnit;
  const openBase = 1 - grass.baseShare;
  const rootShareBelow = 1 - rootShareInTop;
  const coefficientSpan = grass.fullCoefficient - bareCoefficient;
  const { rows, yearRows, trace } = memory;
  const { daily } = sky;

  let ofPeriod = wholeAt(period, from);
  takeSums(memory, plan, ofPeriod);
  for (let day = from; day < to; day += 1) {
    const at = day * widthSky;
    const water = numberAt(daily, at + rainSky) + numberAt(daily, at + meltSky);
    const reference = numberAt(daily, at + referenceSky);
    const response = numberAt(daily, at + responseSky);
    const frost = numberAt(daily, at + frostSky);
    const rot = numberAt(daily, at + rotSky);
    const isCut = (wholeAt(flags, day) & cutFlag) !== 0;
    if (wholeAt(period, day) !== ofPeriod) {
      keepSums(memory, plan, ofPeriod);
      ofPeriod = wholeAt(period, day);
      takeSums(memory, plan, ofPeriod);
    }
    const year = rowAt(yearRows, ofPeriod);
    const traced = (day - memory.tracedFrom) * paddocks * widthTrace;
    const isTraced = traced >= 0 && traced < trace.length;
    const grazed = hasStock || isTraced ? kernelHerd(plan, sky, memory, day, year) : nowhere;

    // Cover of the morning, of all paddocks before anything else of one: their tables are then waited for side by side.
    for (let paddock = 0; paddock < paddocks; paddock += 1) {
      // Not by `rowAt`: a row that were missing stops the run at its first number.
      const row = rows[paddock] as Float64Array;
      const greenSteps = greenStepsPerLb * numberAt(row, greenState);
      const byGreen = greenSteps < lastStep ? greenSteps : lastStep;
      const greenStep = byGreen + toWhole - toWhole;
      const greenRest = greenStep - byGreen;
      row[greenShareMorning] =
        1 - numberAt(decay, greenStep | 0) * (1 + greenRest * unitsPerStep + greenRest * greenRest * (second + greenRest * third));
      const allSteps = greenSteps + deadStepsPerLb * numberAt(row, deadState) + litterStepsPerLb * numberAt(row, litterState);
      const byAll = allSteps < lastStep ? allSteps : lastStep;
      const allStep = byAll + toWhole - toWhole;
      const allRest = allStep - byAll;
      row[coverMorning] =
        1 - openBase * (numberAt(decay, allStep | 0) * (1 + allRest * unitsPerStep + allRest * allRest * (second + allRest * third)));
    }
    if (water > 0) kernelRain(plan, sky, memory, day);

    for (let paddock = 0; paddock < paddocks; paddock += 1) {
      const row = rows[paddock] as Float64Array;
      const top = numberAt(row, topState);
      const cover = numberAt(row, coverMorning);

      // Leaves, and what reaches the ground below them. On most days no rain falls and nothing drips, and all of it stands as it stood.
      const held = numberAt(row, heldState);
      const store = leafStoreMm * cover;
      const drip = held > store ? held - store : 0;
      let onLeaves = held;
      let surface = numberAt(row, surfaceState);
      let roots = numberAt(row, depletionState);
      let wetTop = top;
      let drainage = 0;
      if (water > 0 || drip > 0) {
        const runoff = water > 0 ? numberAt(row, runoffMorning) : 0;
        const keptWater = water - runoff;
        const room = store - (held - drip);
        const caught = keptWater < room ? keptWater : room;
        const through = keptWater - caught + drip;
        onLeaves = held - drip + caught;
        surface -= through;
        if (surface < 0) surface = 0;
        roots -= through;
        if (roots < 0) {
          drainage = -roots;
          roots = 0;
          row[drainageSum] = numberAt(row, drainageSum) + drainage;
        }
        wetTop -= through;
        if (wetTop < 0) wetTop = 0;
      }
      const dried = onLeaves < reference ? onLeaves : reference;
      const left = reference - dried;

      // Ground and roots.
      const basal = bareCoefficient + coefficientSpan * numberAt(row, greenShareMorning);
      const wanted = basal * left;
      const most = maximumCoefficient > basal + 0.05 ? maximumCoefficient : basal + 0.05;
      const bare = 1 - cover;
      const exposed = bare > 0.01 ? bare : 0.01;
      const perExposed = 1 / exposed;
      const evaporable = numberAt(row, evaporableGround);
      const slowed = (evaporable - surface) * numberAt(row, perSlowingGround);
      const fromGround = (slowed < 1 ? slowed : 1) * (most - basal);
      const limit = exposed * most;
      let evaporation = (fromGround < limit ? fromGround : limit) * left;
      const available = numberAt(row, availableGround);
      const surfaceLeft = exposed * (evaporable - surface);
      const rootsLeft = available - roots;
      if (surfaceLeft < evaporation) evaporation = surfaceLeft;
      if (rootsLeft < evaporation) evaporation = rootsLeft;
      const fitted = depletionFraction + 0.04 * (5 - wanted);
      const fraction = fitted < 0.1 ? 0.1 : fitted > 0.8 ? 0.8 : fitted;
      const scarce = (1 - fraction) * available;
      let waterShare = rootsLeft < scarce ? rootsLeft / scarce : 1;
      let transpiration = waterShare * wanted;
      if (rootsLeft - evaporation < transpiration) {
        transpiration = rootsLeft - evaporation;
        waterShare = transpiration / wanted;
      }

      // The top foot.
      const topAvailable = numberAt(row, topAvailableGround);
      const belowAvailable = numberAt(row, belowAvailableGround);
      const belowAfter = roots - wetTop;
      const below = belowAfter < 0 ? 0 : belowAfter < belowAvailable ? belowAfter : belowAvailable;
      const topLeft = rootShareInTop * (topAvailable - wetTop) * numberAt(row, perTopGround);
      const belowLeft = rootShareBelow * (belowAvailable - below) * numberAt(row, perBelowGround);
      const topShare = topLeft + belowLeft > 0 ? topLeft / (topLeft + belowLeft) : 1;
      const all = roots + evaporation + transpiration;
      let evening = wetTop + evaporation + topShare * transpiration;
      if (all - belowAvailable > evening) evening = all - belowAvailable;
      const surfaceEvening = surface + evaporation * perExposed;
      row[heldState] = onLeaves - dried;
      row[surfaceState] = surfaceEvening < evaporable ? surfaceEvening : evaporable;
      row[depletionState] = all < available ? all : available;
      row[topState] = evening < topAvailable ? evening : topAvailable;

      // Grass, and hay on its day.
      const green = numberAt(row, greenState);
      const dead = numberAt(row, deadState);
      const litter = numberAt(row, litterState);
      const room0 = 1 - (green + dead) * numberAt(row, perCeilingGround);
      const grownRaw = numberAt(row, rateGround) * (response * waterShare) * (green + crownLbPerAc) * room0;
      const grown = grownRaw > 0 ? grownRaw : 0;
      const dying = (green + grown) * (dyingByAge + dyingByDrought * (1 - waterShare) + dyingByFrost * frost);
      const fallen = dead * fallingShare;
      let greenEvening = green + grown - dying;
      let deadEvening = dead - fallen + dying;
      let litterEvening = litter + fallen - litter * rot;
      const mass = greenEvening + deadEvening;
      if (isCut && mass >= haying.cutWorthLbPerAc && numberAt(row, isMeadowGround) !== 0) {
        const cut = mass - haying.cutLeavesLbPerAc;
        const cutShare = cut / mass;
        greenEvening -= cutShare * greenEvening;
        deadEvening -= cutShare * deadEvening;
        litterEvening += cut * (1 - haying.hayKeptShare);
        year[madeYear] = numberAt(year, madeYear) + cut * haying.hayKeptShare * numberAt(row, areaGround);
        row[cutSum] = numberAt(row, cutSum) + cut;
      }
      row[greenState] = greenEvening;
      row[deadState] = deadEvening;
      row[litterState] = litterEvening;
      row[evaporationSum] = numberAt(row, evaporationSum) + evaporation;
      row[transpirationSum] = numberAt(row, transpirationSum) + transpiration;
      row[driedSum] = numberAt(row, driedSum) + dried;
      row[stressDaysSum] = numberAt(row, stressDaysSum) + 1 - waterShare;
      row[grownSum] = numberAt(row, grownSum) + grown;
      row[coverSum] = numberAt(row, coverSum) + cover;
      if (mass > numberAt(row, peakSum)) row[peakSum] = mass;
      if (isTraced) {
        const t = traced + paddock * widthTrace;
        trace[t + runoffTrace] = water > 0 ? numberAt(row, runoffMorning) : 0;
        trace[t + soilLostTrace] = water > 0 ? numberAt(row, soilLostMorning) : 0;
        trace[t + drainageTrace] = drainage;
        trace[t + evaporationTrace] = evaporation;
        trace[t + transpirationTrace] = transpiration;
        trace[t + driedTrace] = dried;
        trace[t + grownTrace] = grown;
        trace[t + coverTrace] = cover;
      }
    }
    if (hasStock || isTraced) kernelEvening(plan, memory, day, year, grazed, isTraced ? traced : nowhere);
    else year[daysYear] = numberAt(year, daysYear) + 1;
  }
  keepSums(memory, plan, ofPeriod);
}
