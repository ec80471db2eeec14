import { rangeEnd } from '../../asks/hay.ts';
import { onDryBasis } from '../../math/forage/onDryBasis.ts';
import { costPerNutrientLb } from '../../math/hay/costPerNutrientLb.ts';
import { costPerTonEaten } from '../../math/hay/costPerTonEaten.ts';
import { eatenShare } from '../../math/hay/eatenShare.ts';
import { keptShare } from '../../math/hay/keptShare.ts';
import { priceAfterLoss } from '../../math/hay/priceAfterLoss.ts';
import { pricePerTonFromBale } from '../../math/hay/pricePerTonFromBale.ts';
import { rindShare } from '../../math/hay/rindShare.ts';
import { storageLossPercent as lossByMonths } from '../../math/hay/storageLossPercent.ts';
import { oneAtATimeSwings } from '../../math/money/oneAtATimeSwings.ts';
import { feederWaste } from '../../tables/feederWaste.ts';
import type { Values } from './inputs.ts';

const poundsPerTon = 2000;
const inchesPerFoot = 12;
/** How far an input may be off where nothing published says: own practice, told beside the table of swings. */
const offPoints = 5;
const offMoisturePoints = 3;
const offRindIn = 1;
const guessedPercent = 90;

interface Ends {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}
const around = (likely: number, by: number): Ends => ({ low: Math.max(0, likely - by), likely, high: likely + by });

function rindPercent({ diameterFt, ends, widthFt }: Values, rindIn: number): number {
  const bale = { diameterIn: inchesPerFoot * diameterFt, rindIn };
  return 100 * rindShare(ends === 'spoiled' ? { ...bale, widthIn: inchesPerFoot * widthFt } : bale);
}
function storageEnds(values: Values): Ends & { readonly lossAt9Percent: number; readonly lossAt15Percent: number } {
  const { storage, storedMonths, yearlyRain, rindIn, knownStoragePercent } = values;
  const noTable = { lossAt9Percent: 0, lossAt15Percent: 0 };
  if (storage === 'known') return { ...around(knownStoragePercent, offPoints), ...noTable };
  if (storage === 'rind') {
    const { low, likely, high } = around(rindIn, offRindIn);
    return { low: rindPercent(values, low), likely: rindPercent(values, likely), high: rindPercent(values, high), ...noTable };
  }
  const end = rangeEnd[yearlyRain];
  const { low, high, ...rest } = lossByMonths({ method: storage, months: storedMonths });
  return {
    low,
    likely: { low, high, ...rest }[end],
    high,
    lossAt9Percent: lossByMonths({ method: storage, months: 9 })[end],
    lossAt15Percent: lossByMonths({ method: storage, months: 15 })[end],
  };
}
function feedingEnds({ feeder, knownFeedingPercent }: Values): Ends {
  if (feeder === 'known') return around(knownFeedingPercent, offPoints);
  const found = feederWaste.find((each) => each.feeder === feeder);
  if (!found) throw new RangeError(`feedingEnds needs a feeder of the table, got ${feeder}`);
  const { low, likely, high } = around(found.likelyPercent, offPoints);
  return { low: Math.min(low, found.lowPercent), likely, high: Math.max(high, found.highPercent) };
}
const priceEnds = (values: Values): Ends =>
  values.pricedBy === 'ton'
    ? { low: values.lowPriceUsdPerTon, likely: values.priceUsdPerTon, high: values.highPriceUsdPerTon }
    : { low: values.lowBalePriceUsd, likely: values.balePriceUsd, high: values.highBalePriceUsd };
const weightEnds = ({ baleLb, pricedBy, isWeighed }: Values): Ends => ({
  low: pricedBy === 'bale' && !isWeighed ? (guessedPercent / 100) * baleLb : baleLb,
  likely: baleLb,
  high: baleLb,
});

export type Swinger = 'price' | 'weight' | 'moisture' | 'storage' | 'feeding';
type ValueOf = (input: Swinger) => number;

const onDry = (percent: number, { slipBasis, moisturePercent }: Values): number =>
  slipBasis === 'dry' ? percent : onDryBasis({ weightLb: percent, fromDryMatterPercent: 100, toDryMatterPercent: 100 - moisturePercent });
export const proteinOnDry = (values: Values): number => onDry(values.proteinPercent, values);
export const tdnOnDry = (values: Values): number => onDry(values.tdnPercent, values);

export function compute(values: Values) {
  const { pricedBy, freightUsdPerTon, moisturePercent, lossConvention } = values;
  const gateOf = (price: number, baleLb: number): number => (pricedBy === 'ton' ? price : pricePerTonFromBale({ pricePerBale: price, baleLb }));
  const stored = storageEnds(values);
  const fed = feedingEnds(values);
  const price = priceEnds(values);
  const weight = weightEnds(values);
  const wet = around(moisturePercent, offMoisturePoints);
  const convention = lossConvention;

  const deliveredOf = (of: ValueOf): number => gateOf(of('price'), of('weight')) + freightUsdPerTon;
  const ratioOf = (of: ValueOf): number =>
    eatenShare({ moisturePercent: of('moisture'), storageLossPercent: of('storage'), feedingLossPercent: of('feeding'), convention });

  const ends: readonly (Ends & { readonly input: Swinger })[] = [
    { input: 'price', ...price },
    { input: 'weight', ...weight },
    { input: 'moisture', ...wet },
    { input: 'storage', low: stored.low, likely: stored.likely, high: stored.high },
    { input: 'feeding', ...fed },
  ];
  const valueAt =
    (moved: Swinger | undefined, end: 'low' | 'high'): ValueOf =>
    (input) => {
      const found = ends.find((each) => each.input === input);
      if (!found) throw new RangeError(`valueAt needs an input with ends, got ${input}`);
      return input === moved ? found[end] : found.likely;
    };
  const likely = valueAt(undefined, 'low');

  const gateUsdPerTon = gateOf(price.likely, weight.likely);
  const deliveredUsdPerTon = deliveredOf(likely);
  const storageLossPercent = stored.likely;
  const feedingLossPercent = fed.likely;
  const afterStorageUsdPerTon = priceAfterLoss({ price: deliveredUsdPerTon, lossPercent: storageLossPercent, convention });
  const afterFeedingUsdPerTon = priceAfterLoss({ price: afterStorageUsdPerTon, lossPercent: feedingLossPercent, convention });
  const eatenUsdPerTon = costPerTonEaten({ pricePerTon: afterFeedingUsdPerTon, moisturePercent, storageLossPercent: 0, feedingLossPercent: 0 });
  const eatenRatio = ratioOf(likely);
  const other = lossConvention === 'divide' ? 'multiply' : 'divide';
  const otherUsdPerTon = deliveredUsdPerTon / eatenShare({ moisturePercent, storageLossPercent, feedingLossPercent, convention: other });

  const priceLines = (['low', 'likely', 'high'] as const).map((end) => {
    const lineDeliveredUsdPerTon = gateOf(price[end], weight.likely) + freightUsdPerTon;
    return {
      end,
      lineGateUsdPerTon: gateOf(price[end], weight.likely),
      lineDeliveredUsdPerTon,
      lineEatenUsdPerTon: lineDeliveredUsdPerTon / eatenRatio,
    };
  });
  const swings = oneAtATimeSwings((of) => deliveredOf(of) / ratioOf(of), ends)
    .filter(({ input }) => input !== 'weight' || weight.low < weight.high)
    .map(({ input, atLow, atHigh, swing }) => ({
      input,
      lowDeliveredUsdPerTon: deliveredOf(valueAt(input, 'low')),
      lowRatio: ratioOf(valueAt(input, 'low')),
      atLowUsdPerTon: atLow,
      highDeliveredUsdPerTon: deliveredOf(valueAt(input, 'high')),
      highRatio: ratioOf(valueAt(input, 'high')),
      atHighUsdPerTon: atHigh,
      swingUsdPerTon: swing,
    }));
  const [widest] = swings;
  if (!widest) throw new RangeError('compute needs an input to swing');
  const hangsOn: Swinger = widest.input;

  const waterLb = (poundsPerTon * moisturePercent) / 100;
  const dryLb = poundsPerTon - waterLb;
  const storageLostLb = (dryLb * storageLossPercent) / 100;
  const feedingLostLb = ((dryLb - storageLostLb) * feedingLossPercent) / 100;

  const proteinDryPercent = proteinOnDry(values);
  const tdnDryPercent = tdnOnDry(values);
  const eatenLb = dryLb - storageLostLb - feedingLostLb;
  const perLb = (nutrientPercent: number): number => costPerNutrientLb({ pricePerTon: eatenUsdPerTon, dryMatterPercent: 100, nutrientPercent });

  const { otherPriceUsdPerTon, otherMoisturePercent, otherProteinPercent, otherTdnPercent, otherLossPercent, against } = values;
  const otherNutrientPercent = against === 'tdn' ? otherTdnPercent : otherProteinPercent;
  const otherUsdPerLb = costPerNutrientLb({
    pricePerTon: priceAfterLoss({ price: otherPriceUsdPerTon, lossPercent: otherLossPercent, convention }),
    dryMatterPercent: 100 - otherMoisturePercent,
    nutrientPercent: otherNutrientPercent,
  });
  const comparedPercent = against === 'tdn' ? tdnDryPercent : proteinDryPercent;
  const worthUsdPerTon = (otherUsdPerLb * poundsPerTon * eatenRatio * comparedPercent) / 100 - freightUsdPerTon;

  const besideIt = worthUsdPerTon >= gateUsdPerTon ? 'cheaper' : 'dearer';
  const verdict: 'cheaper' | 'dearer' | 'not-its-freight' = worthUsdPerTon > 0 ? besideIt : 'not-its-freight';

  return {
    gateUsdPerTon,
    deliveredUsdPerTon,
    lossAt9Percent: stored.lossAt9Percent,
    lossAt15Percent: stored.lossAt15Percent,
    storageLossPercent,
    lowStoragePercent: stored.low,
    highStoragePercent: stored.high,
    feedingLossPercent,
    lowFeedingPercent: fed.low,
    highFeedingPercent: fed.high,
    lowMoisturePercent: wet.low,
    highMoisturePercent: wet.high,
    afterStorageUsdPerTon,
    afterFeedingUsdPerTon,
    eatenUsdPerTon,
    otherUsdPerTon,
    eatenRatio,
    priceLines,
    lowEatenUsdPerTon: (gateOf(price.low, weight.likely) + freightUsdPerTon) / eatenRatio,
    highEatenUsdPerTon: (gateOf(price.high, weight.likely) + freightUsdPerTon) / eatenRatio,
    swings,
    hangsOn,
    boughtLb: poundsPerTon,
    waterLb,
    storageLostLb,
    feedingLostLb,
    eatenLb,
    wastedUsdPerTon: deliveredUsdPerTon * (1 - keptShare([storageLossPercent, feedingLossPercent])),
    proteinDryPercent,
    tdnDryPercent,
    eatenProteinLb: (eatenLb * proteinDryPercent) / 100,
    eatenTdnLb: (eatenLb * tdnDryPercent) / 100,
    proteinUsdPerLb: perLb(proteinDryPercent),
    tdnUsdPerLb: perLb(tdnDryPercent),
    otherNutrientPercent,
    otherUsdPerLb,
    worthUsdPerTon,
    worthBaleUsd: (worthUsdPerTon * values.baleLb) / poundsPerTon,
    verdict,
  };
}
export type Results = ReturnType<typeof compute>;
