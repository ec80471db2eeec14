import { densityOf } from '../../asks/stand.ts';
import { stockLinesOf } from '../../asks/stock.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { availableFromHeight } from '../../math/forage/availableFromHeight.ts';
import { availableLbPerAc as aboveStubble } from '../../math/forage/availableLbPerAc.ts';
import { clipFactor } from '../../math/forage/clipFactor.ts';
import { clippedLbPerAc as dryClippedLbPerAc } from '../../math/forage/clippedLbPerAc.ts';
import { dryMatterPercent } from '../../math/forage/dryMatterPercent.ts';
import { eatenLbPerAc as shareEatenLbPerAc } from '../../math/forage/eatenLbPerAc.ts';
import { frameAreaFt2 as areaOfFrameFt2, type Frame } from '../../math/forage/frameAreaFt2.ts';
import { grazingDays } from '../../math/forage/grazingDays.ts';
import { linearFit } from '../../math/forage/linearFit.ts';
import { onDryBasis } from '../../math/forage/onDryBasis.ts';
import { fewestPairs, plateMeterCalibration } from '../../math/forage/plateMeterCalibration.ts';
import { plotsNeeded } from '../../math/forage/plotsNeeded.ts';
import { sampleInterval } from '../../math/forage/sampleInterval.ts';
import { stickDensity } from '../../math/forage/stickDensity.ts';
import { tabledEatenPercent } from '../../math/forage/tabledEatenPercent.ts';
import { usableForageLb } from '../../math/forage/usableForageLb.ts';
import { animalUnitMonthLb } from '../../math/herd/animalUnitMonthLb.ts';
import { monthRule } from '../../math/herd/monthRule.ts';
import { studentQuantile } from '../../math/special/studentQuantile.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { airDryPercentByGroup } from '../../tables/dryMatterByStage.ts';
import { type Grass, type inputs, isByHeight, isCutHigh, type placeInputs, type Stage } from './inputs.ts';

const totalOf = (values: readonly number[]): number => sumOf(values, (value) => value);

/** Air-dry weight in a hundred of green weight. */
export function airDryPercentOf(grass: Grass, stage: Stage): number {
  const found = airDryPercentByGroup.find(({ group }) => group === grass);
  if (!found) throw new RangeError(`airDryPercentOf needs a group of the table, got ${grass}`);
  return {
    'before-heading': found.beforeHeading,
    headed: found.headed,
    'seed-ripe': found.seedRipe,
    'leaves-dry': found.leavesDry,
    dormant: found.dormant,
  }[stage];
}

type Read = Pick<ValuesOf<typeof placeInputs>, 'way' | 'platePairs' | 'plateReadings'>;

/** The line of the place's own clips, and what it makes of each reading. Without a plate everything is empty. */
export function plateOf({ way, platePairs, plateReadings }: Read, surePercent: number, clipLbPerAc: (greenG: number) => number) {
  const pairs = (way === 'plate' ? platePairs : []).map(({ pairReadingCount, greenG }) => ({
    pairReadingCount,
    greenG,
    pairLbPerAc: clipLbPerAc(greenG),
  }));
  const count = pairs.length;
  const pairMeanReadingCount = count === 0 ? 0 : sumOf(pairs, (pair) => pair.pairReadingCount) / count;
  const pairMeanLbPerAc = count === 0 ? 0 : sumOf(pairs, (pair) => pair.pairLbPerAc) / count;
  const { slope, intercept } =
    count === 0
      ? { slope: 0, intercept: 0 }
      : plateMeterCalibration(pairs.map(({ pairReadingCount, pairLbPerAc }) => ({ reading: pairReadingCount, lbPerAc: pairLbPerAc })));
  const pairLines = pairs.map((pair) => ({
    ...pair,
    readingSquaredRatio: (pair.pairReadingCount - pairMeanReadingCount) ** 2,
    productRatio: (pair.pairReadingCount - pairMeanReadingCount) * (pair.pairLbPerAc - pairMeanLbPerAc),
    offLineRatio: (pair.pairLbPerAc - intercept - slope * pair.pairReadingCount) ** 2,
  }));
  const readingSpreadRatio = sumOf(pairLines, (pair) => pair.readingSquaredRatio);
  const offLineSumRatio = sumOf(pairLines, (pair) => pair.offLineRatio);
  const readings = (way === 'plate' ? plateReadings : []).map(({ readingCount }) => readingCount);
  const meanReadingCount = readings.length === 0 ? 0 : totalOf(readings) / readings.length;
  const lineTRatio = count === 0 ? 0 : studentQuantile(0.5 + surePercent / 200, count - 2);
  const scatterLbPerAc = count === 0 ? 0 : Math.sqrt(offLineSumRatio / (count - 2));
  return {
    pairLines,
    pairCount: count,
    pairReadingSumCount: sumOf(pairs, (pair) => pair.pairReadingCount),
    pairSumLbPerAc: sumOf(pairs, (pair) => pair.pairLbPerAc),
    pairMeanReadingCount,
    pairMeanLbPerAc,
    readingSpreadRatio,
    productSumRatio: sumOf(pairLines, (pair) => pair.productRatio),
    offLineSumRatio,
    plateSlopeLbPerAc: slope,
    plateStartLbPerAc: intercept,
    readings,
    readingSumCount: totalOf(readings),
    meanReadingCount,
    lineTRatio,
    scatterLbPerAc,
    lineOffLbPerAc:
      count === 0 ? 0 : lineTRatio * scatterLbPerAc * Math.sqrt(1 / count + (meanReadingCount - pairMeanReadingCount) ** 2 / readingSpreadRatio),
  };
}

/** What keeps ten clips from being a line: none, a plate that always read the same, or clips that do not get heavier as it rises. */
export function plateFault({ way, platePairs, plateReadings }: Read): 'few' | 'same' | 'falls' | 'nothing' | 'none' {
  if (way !== 'plate') return 'none';
  if (platePairs.length < fewestPairs) return 'few';
  const pairs = platePairs.map(({ pairReadingCount, greenG }): [number, number] => [pairReadingCount, greenG]);
  if (new Set(pairs.map(([reading]) => reading)).size === 1) return 'same';
  const { slope, intercept } = linearFit(pairs);
  if (slope <= 0) return 'falls';
  return plateReadings.every(({ readingCount }) => intercept + slope * readingCount <= 0) ? 'nothing' : 'none';
}

type Asked = ValuesOf<typeof inputs>;

/** Air-dry forage still holds about a tenth of water. */
const airDryPercent = 90;

function frameOf({ frame, aroundIn, acrossIn, lengthIn, widthIn }: Asked): Frame {
  if (frame === 'hoop-around') return { shape: frame, circumferenceIn: aroundIn };
  if (frame === 'hoop-across') return { shape: frame, diameterIn: acrossIn };
  return { shape: 'rectangle', lengthIn, widthIn };
}
/** What the clippings hold when the water is out, and what a table says where nobody dried any. */
function dryness(asked: Asked): { readonly stagePercent: number; readonly dryPercent: number } {
  const stagePercent = airDryPercentOf(asked.grass, asked.stage);
  if (asked.dryFrom === 'known') return { stagePercent, dryPercent: asked.knownDryPercent };
  if (asked.dryFrom === 'stage')
    return { stagePercent, dryPercent: onDryBasis({ weightLb: stagePercent, fromDryMatterPercent: airDryPercent, toDryMatterPercent: 100 }) };
  return { stagePercent, dryPercent: dryMatterPercent({ wetWeight: asked.wetG, dryWeight: asked.dryG, plateWeight: asked.plateG }) };
}
interface Density {
  readonly used: number;
  readonly low: number;
  readonly high: number;
}
function densityFrom(
  asked: Asked,
  clips: readonly { readonly cutIn: number; readonly clipLbPerAc: number; readonly clipLbPerAcIn: number }[],
): Density {
  if (asked.way === 'height-known') return { used: asked.densityLbPerAcIn, low: asked.densityLbPerAcIn, high: asked.densityLbPerAcIn };
  if (asked.way === 'height-clips') {
    const each = clips.map(({ clipLbPerAcIn }) => clipLbPerAcIn);
    return {
      used: stickDensity(clips.map(({ cutIn, clipLbPerAc }) => ({ heightCutIn: cutIn, lbPerAc: clipLbPerAc }))),
      low: Math.min(...each),
      high: Math.max(...each),
    };
  }
  const [low, high] = densityOf(asked.stand, asked.condition);
  return { used: (low + high) / 2, low, high };
}
const monthLbOf = (rule: ReturnType<typeof monthRule>): number => animalUnitMonthLb({ animalUnits: 1, ...rule });

export function compute(asked: Asked) {
  const { way, areaAc, reachPercent, surePercent } = asked;
  const isWeighed = !isByHeight(way);
  const frameAreaFt2 = asked.frame === 'area' ? asked.frameKnownFt2 : areaOfFrameFt2(frameOf(asked));
  const { stagePercent, dryPercent } = dryness(asked);
  const clip = (greenG: number): number => dryClippedLbPerAc({ greenGrams: greenG, plots: 1, frameAreaFt2, dryMatterPercent: dryPercent });

  const { readings, ...plate } = plateOf(asked, surePercent, clip);
  const read = readings.map((readingCount) => ({
    readingCount,
    readLbPerAc: Math.max(0, plate.plateStartLbPerAc + plate.plateSlopeLbPerAc * readingCount),
  }));
  const plots = (way === 'clips' ? asked.plots : []).map(({ greenG }) => ({ greenG, plotLbPerAc: clip(greenG) }));
  const heightsIn = isWeighed ? [] : asked.heights.map(({ heightIn }) => heightIn);
  const sample =
    way === 'plate' ? read.map(({ readLbPerAc }) => readLbPerAc) : way === 'clips' ? plots.map(({ plotLbPerAc }) => plotLbPerAc) : heightsIn;
  const { mean, low, high, variationPercent } = sampleInterval(sample, surePercent);
  const offSquaredRatio = (value: number): number => ((value - mean) / mean) ** 2;
  const [clippedLbPerAc, meanHeightIn] = isWeighed ? [mean, 0] : [0, mean];

  const clips = (way === 'height-clips' ? asked.calibration : []).map(({ cutIn, greenG }) => {
    const clipLbPerAc = clip(greenG);
    return { cutIn, greenG, clipLbPerAc, clipLbPerAcIn: clipLbPerAc / cutIn };
  });
  const density = densityFrom(asked, clips);
  const available = (measured: number, poundsPerAcreInch: number): number =>
    isWeighed
      ? aboveStubble({ clippedLbPerAc: measured, clippedTo: isCutHigh(asked) ? 'stubble' : 'ground', stubbleLbPerAc: asked.stubbleLbPerAc })
      : availableFromHeight({ heightIn: measured, stubbleIn: asked.stubbleHeightIn, poundsPerAcreInch });
  const availableLbPerAc = available(mean, density.used);
  const lowAvailableLbPerAc = available(Math.max(0, low - plate.lineOffLbPerAc), density.low);
  const highAvailableLbPerAc = available(high + plate.lineOffLbPerAc, density.high);

  const eatenPercent = asked.eatenFrom === 'own' ? asked.ownEatenPercent : tabledEatenPercent(asked.stayDays);
  const eatenOf = (lbPerAc: number): number => shareEatenLbPerAc({ measured: 'above-stubble', lbPerAc, grazedShare: eatenPercent / 100 });
  const withinReachLb = (lbPerAc: number): number => usableForageLb([{ areaAc, usableShare: reachPercent / 100, lbPerAc }]);
  const stockLines = stockLinesOf(asked.stock);
  const demandLbPerDay = sumOf(stockLines, ({ lineLbPerDay }) => lineLbPerDay);
  const daysOf = (lbPerAc: number): number => grazingDays({ eatenLb: withinReachLb(eatenOf(lbPerAc)), dailyDemandLb: demandLbPerDay });
  const sampleCount = sample.length;
  const eatenLb = withinReachLb(eatenOf(availableLbPerAc));
  const standingLbPerAc = isWeighed ? clippedLbPerAc : meanHeightIn * density.used;

  return {
    grazingForDays: daysOf(availableLbPerAc),
    lowGrazingDays: daysOf(lowAvailableLbPerAc),
    highGrazingDays: daysOf(highAvailableLbPerAc),
    frameAreaFt2,
    gramLbPerAc: clipFactor({ frameAreaFt2, plots: 1 }),
    stagePercent,
    dryPercent,
    plotLines: plots.map((each) => ({ ...each, offSquaredRatio: offSquaredRatio(each.plotLbPerAc) })),
    ...plate,
    readingLines: read.map((each) => ({ ...each, offSquaredRatio: offSquaredRatio(each.readLbPerAc) })),
    plotSumLbPerAc: totalOf(isWeighed ? sample : []),
    heightLines: heightsIn.map((heightIn) => ({ heightIn, offSquaredRatio: offSquaredRatio(heightIn) })),
    heightSumIn: totalOf(heightsIn),
    clipLines: clips,
    cutSumIn: sumOf(clips, ({ cutIn }) => cutIn),
    clipSumLbPerAc: sumOf(clips, ({ clipLbPerAc }) => clipLbPerAc),
    usedLbPerAcIn: density.used,
    lowLbPerAcIn: density.low,
    highLbPerAcIn: density.high,
    sampleCount,
    offSumRatio: sumOf(sample, offSquaredRatio),
    variationPercent,
    tRatio: studentQuantile(0.5 + surePercent / 200, sampleCount - 1),
    closePercent: (100 * (high - mean)) / mean,
    clippedLbPerAc,
    meanHeightIn,
    standingLbPerAc,
    stubbleKeptLbPerAc: standingLbPerAc - availableLbPerAc,
    availableLbPerAc,
    lowAvailableLbPerAc,
    highAvailableLbPerAc,
    eatenPercent,
    eatenLbPerAc: eatenOf(availableLbPerAc),
    trampledLbPerAc: availableLbPerAc - eatenOf(availableLbPerAc),
    eatenLb,
    rangeMonths: eatenLb / monthLbOf(monthRule('range-society', 'twelfth')),
    airDryMonths:
      onDryBasis({ weightLb: eatenLb, fromDryMatterPercent: 100, toDryMatterPercent: airDryPercent }) / monthLbOf(monthRule('air-dry-30', 'twelfth')),
    stockLines,
    demandLbPerDay,
    cutHighGrazingDays: daysOf(isWeighed ? clippedLbPerAc : availableLbPerAc),
    neededPlots: plotsNeeded({ variationPercent, withinPercent: asked.withinPercent, confidencePercent: surePercent }),
  };
}
