import type { ValuesOf } from '../../kit/inputs.ts';
import { availableFromHeight } from '../../math/forage/availableFromHeight.ts';
import { availableLbPerAc as aboveStubble } from '../../math/forage/availableLbPerAc.ts';
import { clipFactor } from '../../math/forage/clipFactor.ts';
import { clippedLbPerAc as dryClippedLbPerAc } from '../../math/forage/clippedLbPerAc.ts';
import { dryMatterPercent } from '../../math/forage/dryMatterPercent.ts';
import { eatenLbPerAc as shareEatenLbPerAc } from '../../math/forage/eatenLbPerAc.ts';
import { frameAreaFt2 as areaOfFrameFt2, type Frame } from '../../math/forage/frameAreaFt2.ts';
import { grazingDays } from '../../math/forage/grazingDays.ts';
import { onDryBasis } from '../../math/forage/onDryBasis.ts';
import { plotsNeeded } from '../../math/forage/plotsNeeded.ts';
import { sampleInterval } from '../../math/forage/sampleInterval.ts';
import { stickDensity } from '../../math/forage/stickDensity.ts';
import { usableForageLb } from '../../math/forage/usableForageLb.ts';
import { animalUnitMonthLb } from '../../math/herd/animalUnitMonthLb.ts';
import { dailyIntakeLb } from '../../math/herd/dailyIntakeLb.ts';
import { monthRule } from '../../math/herd/monthRule.ts';
import { studentQuantile } from '../../math/special/studentQuantile.ts';
import { grazedShareByDays } from '../../tables/harvestShare.ts';
import type { inputs } from './inputs.ts';
import { plateOf } from './plate.ts';
import { airDryPercentOf, densityOf } from './stands.ts';
import { isByHeight, isCutHigh } from './ways.ts';

type Asked = ValuesOf<typeof inputs>;

/** Air-dry forage still holds about a tenth of water. */
const airDryPercent = 90;

/** Share eaten of what stands above the stubble; the table ends at a week, and a longer stay is read there. */
const tabledEatenPercent = (days: number): number => grazedShareByDays.findLast((row) => row.days <= days)?.percent ?? grazedShareByDays[0].percent;

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
const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

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
  const stockLines = asked.stock.map(({ countHead, weightLb, intakePercent }) => ({
    countHead,
    weightLb,
    intakePercent,
    lineLbPerDay: dailyIntakeLb({ head: countHead, weightLb, intakePercent }),
  }));
  const demandLbPerDay = sumOf(stockLines.map(({ lineLbPerDay }) => lineLbPerDay));
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
    plotSumLbPerAc: sumOf(isWeighed ? sample : []),
    heightLines: heightsIn.map((heightIn) => ({ heightIn, offSquaredRatio: offSquaredRatio(heightIn) })),
    heightSumIn: sumOf(heightsIn),
    clipLines: clips,
    cutSumIn: sumOf(clips.map(({ cutIn }) => cutIn)),
    clipSumLbPerAc: sumOf(clips.map(({ clipLbPerAc }) => clipLbPerAc)),
    usedLbPerAcIn: density.used,
    lowLbPerAcIn: density.low,
    highLbPerAcIn: density.high,
    sampleCount,
    offSumRatio: sumOf(sample.map(offSquaredRatio)),
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
