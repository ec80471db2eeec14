import type { ValuesOf } from '../../kit/inputs.ts';
import type { Between, SideNamed } from '../../kit/shown.ts';
import { geometricMean } from '../../math/infiltration/geometricMean.ts';
import { infiltrationClass } from '../../math/infiltration/infiltrationClass.ts';
import { ringOverRead } from '../../math/infiltration/ringOverRead.ts';
import { boreFromFillIn, ringDepthIn, ringTest } from '../../math/infiltration/ringTest.ts';
import { isBoundedRatio, scatterFactor, usualVariationPercent, visitChange } from '../../math/infiltration/visitRatio.ts';
import { studentQuantile } from '../../math/special/studentQuantile.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { capillaryLengths } from '../../tables/infiltrationRates.ts';
import type { inputs } from './inputs.ts';

const confidencePercent = 95;

export type Asked = ValuesOf<typeof inputs>;
type AskedRing = Asked['rings'][number];

export const usedBoreIn = ({
  boreFrom,
  boreIn,
  fillWaterMl,
  fillDepthIn,
}: Pick<Asked, 'boreFrom' | 'boreIn' | 'fillWaterMl' | 'fillDepthIn'>): number =>
  boreFrom === 'filled' ? boreFromFillIn(fillWaterMl, fillDepthIn) : boreIn;

const timesOf = ({ pours, firstMin, secondMin, thirdMin }: AskedRing): { readonly before: readonly number[]; readonly lastMin: number } => {
  switch (pours) {
    case 'once':
      return { before: [], lastMin: firstMin };
    case 'twice':
      return { before: [firstMin], lastMin: secondMin };
    case 'thrice':
      return { before: [firstMin, secondMin], lastMin: thirdMin };
  }
};

/** Each ring by its last pouring; what was left standing at the stop did not soak in. */
function lineOf(ring: AskedRing, { waterMl, ringIn, depthIn }: { waterMl: number; ringIn: number; depthIn: number }) {
  const { before, lastMin } = timesOf(ring);
  const leftIn = ring.end === 'left' ? ring.leftIn : 0;
  const soakedMl = waterMl * (1 - leftIn / depthIn);
  const pourings = [...before.map((minutes) => ({ volumeMl: waterMl, minutes })), { volumeMl: soakedMl, minutes: lastMin }];
  const { rows, totalIn, firstRateInPerHr, leadingRateInPerHr } = ringTest({ boreIn: ringIn, pourings });
  return {
    pouringsCount: pourings.length,
    firstMin: ring.firstMin,
    lastMin,
    leftIn,
    totalIn,
    firstInPerHr: firstRateInPerHr,
    ringInPerHr: leadingRateInPerHr,
    logRate: Math.log(leadingRateInPerHr),
    rates: rows.map(({ rateInPerHr }) => rateInPerHr),
  };
}

const withGaps = <T extends { readonly logRate: number }>(list: readonly T[]) => {
  const logSum = sumOf(list, ({ logRate }) => logRate);
  const gapped = list.map((line) => ({ ...line, gapSquare: (line.logRate - logSum / list.length) ** 2 }));
  return { gapped, logSum, gapSum: sumOf(gapped, ({ gapSquare }) => gapSquare) };
};

/** This test over the other one, with the range that holds the true ratio 19 times in 20. */
function besideOther(rates: readonly number[], others: readonly number[]) {
  const count = rates.length + others.length;
  if (rates.length < 2 || others.length < 2) {
    const middle = geometricMean(rates) / geometricMean(others);
    const rings = { earlierRings: others.length, laterRings: rates.length };
    const scatterTimes = count >= 3 ? scatterFactor({ ...rings, variationPercent: usualVariationPercent, confidencePercent }) : 0;
    return { verdict: 'too-few' as const, ratioTimes: middle, lowRatioTimes: middle, highRatioTimes: middle, studentTimes: 0, scatterTimes };
  }
  const { verdict, ratio, low, high, scatterTimes } = visitChange({ earlier: others, later: rates, confidencePercent });
  const studentTimes = studentQuantile(0.5 + confidencePercent / 200, count - 2);
  return { verdict, ratioTimes: ratio, lowRatioTimes: low, highRatioTimes: high, studentTimes, scatterTimes };
}

export function compute(asked: Asked) {
  const { waterMl, insertedIn, site, moisture, rings, others } = asked;
  const ringIn = usedBoreIn(asked);
  const depthIn = ringDepthIn(waterMl, ringIn);
  const read = rings.map((ring) => lineOf(ring, { waterMl, ringIn, depthIn }));
  const rates = read.map(({ ringInPerHr }) => ringInPerHr);
  const { gapped, logSum, gapSum } = withGaps(read.map(({ rates: _, ...line }) => line));
  const other = withGaps(others.map(({ thenInPerHr }) => ({ thenInPerHr, logRate: Math.log(thenInPerHr) })));
  const middleInPerHr = geometricMean(rates);
  const over = (capillaryLengthIn: number): number => ringOverRead({ boreIn: ringIn, insertedIn, pondedIn: depthIn / 2, capillaryLengthIn });
  const overLowTimes = over(capillaryLengths.soilsIn['coarse-sand-or-open-cracks']);
  const overHighTimes = over(capillaryLengths.soilsIn['fine-unstructured']);
  const ratio = besideOther(
    rates,
    others.map(({ thenInPerHr }) => thenInPerHr),
  );
  const compared = rates.length + others.length - 2;
  const spread = compared > 0 ? Math.sqrt((gapSum + other.gapSum) / compared) : 0;
  const onlyFirst = rings.some(({ pours }) => pours === 'once') && moisture === 'dry';
  const shared = Math.min(...read.map(({ pouringsCount }) => pouringsCount));
  return {
    judged: site !== 'none' ? site : onlyFirst ? ('first-only' as const) : ('judged' as const),
    ringIn,
    depthIn,
    lines: gapped,
    ringsCount: rings.length,
    logSum,
    gapSum,
    middleInPerHr,
    slowestInPerHr: Math.min(...rates),
    fastestInPerHr: Math.max(...rates),
    inchMin: 60 / middleInPerHr,
    rateClass: infiltrationClass(middleInPerHr),
    pondedIn: depthIn / 2,
    overLowTimes,
    overHighTimes,
    straightLowInPerHr: middleInPerHr / overHighTimes,
    straightHighInPerHr: middleInPerHr / overLowTimes,
    otherLines: other.gapped,
    othersCount: others.length,
    otherLogSum: other.logSum,
    otherGapSum: other.gapSum,
    otherInPerHr: geometricMean(others.map(({ thenInPerHr }) => thenInPerHr)),
    spread,
    ...ratio,
    // Only pourings that every ring had, so that the curve does not jump where a ring drops out.
    byPouring: Array.from({ length: shared }, (_, index) => {
      const at = read.flatMap(({ rates: each }) => each.slice(index, index + 1));
      return { pouring: index + 1, fastInPerHr: Math.max(...at), middlingInPerHr: geometricMean(at), slowInPerHr: Math.min(...at) };
    }),
  };
}

type Side = SideNamed<'judged' | 'moisture' | 'lines'>;
/** How far a gap between the rates of two places is to be believed: the one verdict that another place on the same day gets in `others`. */
export function rateGap(here: Side, there: Side): Between {
  if (here.word('judged') !== 'judged' || there.word('judged') !== 'judged')
    return { instead: 'Can’t be compared', because: 'one of the two tests can’t be judged' };
  const [other, rates] = [here.column('lines', 'ringInPerHr'), there.column('lines', 'ringInPerHr')];
  const { verdict, ratioTimes: ratio, lowRatioTimes: low, highRatioTimes: high } = besideOther(rates, other);
  if (verdict === 'too-few') return { unbounded: 'too few rings to tell it from chance' };
  if (!isBoundedRatio({ ratio, high })) return { unbounded: 'these rings scatter too much to bound it' };
  const range = { low, high, times: 'as fast' };
  if (verdict === 'perhaps-faster' || verdict === 'perhaps-slower') return { ...range, hint: 'rings usually scatter as much' };
  return here.word('moisture') === there.word('moisture') ? range : { ...range, hint: 'the ground was not as wet on both' };
}
