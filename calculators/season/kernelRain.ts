// biome-ignore-all lint/complexity/useMathMinMax: as in `kernel.ts`, Math.min and Math.max mind zeros with a sign
import { GROUND, MORNING, numberAt as numberIn, rowAt as rowIn, SKY, STATE, SUM } from './flat.ts';
import type { Memory } from './memory.ts';
import type { Plan } from './plan.ts';
import type { Sky } from './sky.ts';

// Constants of this module are folded into the code when it is compiled; those of another, its functions too, are looked up each time.
const numberAt = numberIn;
const rowAt = rowIn;
const { width: widthSky, rain: rainSky, melt: meltSky, erosivity: erosivitySky } = SKY;
const { top: topState } = STATE;
const {
  fair: fairGround,
  poorMiddle: poorMiddleGround,
  fairMiddle: fairMiddleGround,
  goodMiddle: goodMiddleGround,
  perPoorer: perPoorerGround,
  perBetter: perBetterGround,
  perTop: perTopGround,
  bareLoss: bareLossGround,
} = GROUND;
const { cover: coverMorning, runoff: runoffMorning, soilLost: soilLostMorning } = MORNING;
const { runoff: runoffSum, soilLost: soilLostSum } = SUM;

/** Nearly the tangent of 1.33 S^1.15 at 4 in, a hair below it: it lies below the curve everywhere. */
const tangentSlope = 1.8833;
const tangentLow = 0.9836;

/**
 * Runoff and soil loss of a day with rain or melt, by the cover that the morning left in each row. By itself: the power is a call out of what is compiled, and
 * within the long loop all that stands ready there would be put away for it and fetched again.
 */
export function kernelRain(plan: Plan, sky: Sky, { rows }: Memory, day: number): void {
  const { paddocks, dry, wet, factor } = plan;
  const { abstractionRatio, fixedCoverPercent } = plan.side.grass;
  const isConverted = abstractionRatio === 0.05;
  const fixedPercent = fixedCoverPercent ?? -1;
  const { at: dryAt, step: dryStep } = dry;
  const { at: wetAt, step: wetStep } = wet;
  const { at: factorAt, step: factorStep } = factor;
  const { daily } = sky;
  const at = day * widthSky;
  const water = numberAt(daily, at + rainSky) + numberAt(daily, at + meltSky);
  const waterIn = water / 25.4;
  const erosivity = numberAt(daily, at + erosivitySky);
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    const row = rowAt(rows, paddock);
    let runoff = 0;
    const covered = 100 * numberAt(row, coverMorning);
    const percent = fixedPercent < 0 ? covered : fixedPercent;
    const fairMiddle = numberAt(row, fairMiddleGround);
    const goodMiddle = numberAt(row, goodMiddleGround);
    let from = percent < goodMiddle ? percent : goodMiddle;
    let perPercent = numberAt(row, perBetterGround);
    if (percent < fairMiddle) {
      const poorMiddle = numberAt(row, poorMiddleGround);
      from = percent > poorMiddle ? percent : poorMiddle;
      perPercent = numberAt(row, perPoorerGround);
    }
    const number = numberAt(row, fairGround) + (from - fairMiddle) * perPercent;
    const whole = number | 0;
    const part = number - whole;
    const dryIn = 1000 / (numberAt(dryAt, whole) + numberAt(dryStep, whole) * part) - 10;
    const wetIn = 1000 / (numberAt(wetAt, whole) + numberAt(wetStep, whole) * part) - 10;
    const tabled = wetIn + numberAt(row, topState) * numberAt(row, perTopGround) * (dryIn - wetIn);
    if (!isConverted || waterIn > 0.05 * (tangentSlope * tabled - tangentLow)) {
      const retention = isConverted ? 1.33 * tabled ** 1.15 : tabled;
      const past = waterIn - abstractionRatio * retention;
      if (past > 0) {
        const ran = (25.4 * (past * past)) / (past + retention);
        runoff = ran < water ? ran : water;
      }
    }
    const wholeCovered = covered | 0;
    const cFactor = numberAt(factorAt, wholeCovered) + numberAt(factorStep, wholeCovered) * (covered - wholeCovered);
    const lost = numberAt(row, bareLossGround) * erosivity * cFactor;
    row[runoffSum] = numberAt(row, runoffSum) + runoff;
    row[soilLostSum] = numberAt(row, soilLostSum) + lost;
    row[runoffMorning] = runoff;
    row[soilLostMorning] = lost;
  }
}
