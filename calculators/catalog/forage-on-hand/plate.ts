import type { ValuesOf } from '../../kit/inputs.ts';
import { linearFit } from '../../math/forage/linearFit.ts';
import { fewestPairs, plateMeterCalibration } from '../../math/forage/plateMeterCalibration.ts';
import { studentQuantile } from '../../math/special/studentQuantile.ts';
import type { placeInputs } from './placeInputs.ts';

type Read = Pick<ValuesOf<typeof placeInputs>, 'way' | 'platePairs' | 'plateReadings'>;
const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** The line of the place's own clips, and what it makes of each reading. Without a plate everything is empty. */
export function plateOf({ way, platePairs, plateReadings }: Read, surePercent: number, clipLbPerAc: (greenG: number) => number) {
  const pairs = (way === 'plate' ? platePairs : []).map(({ pairReadingCount, greenG }) => ({
    pairReadingCount,
    greenG,
    pairLbPerAc: clipLbPerAc(greenG),
  }));
  const count = pairs.length;
  const pairMeanReadingCount = count === 0 ? 0 : sumOf(pairs.map((pair) => pair.pairReadingCount)) / count;
  const pairMeanLbPerAc = count === 0 ? 0 : sumOf(pairs.map((pair) => pair.pairLbPerAc)) / count;
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
  const readingSpreadRatio = sumOf(pairLines.map((pair) => pair.readingSquaredRatio));
  const offLineSumRatio = sumOf(pairLines.map((pair) => pair.offLineRatio));
  const readings = (way === 'plate' ? plateReadings : []).map(({ readingCount }) => readingCount);
  const meanReadingCount = readings.length === 0 ? 0 : sumOf(readings) / readings.length;
  const lineTRatio = count === 0 ? 0 : studentQuantile(0.5 + surePercent / 200, count - 2);
  const scatterLbPerAc = count === 0 ? 0 : Math.sqrt(offLineSumRatio / (count - 2));
  return {
    pairLines,
    pairCount: count,
    pairReadingSumCount: sumOf(pairs.map((pair) => pair.pairReadingCount)),
    pairSumLbPerAc: sumOf(pairs.map((pair) => pair.pairLbPerAc)),
    pairMeanReadingCount,
    pairMeanLbPerAc,
    readingSpreadRatio,
    productSumRatio: sumOf(pairLines.map((pair) => pair.productRatio)),
    offLineSumRatio,
    plateSlopeLbPerAc: slope,
    plateStartLbPerAc: intercept,
    readings,
    readingSumCount: sumOf(readings),
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
