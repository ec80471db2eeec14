import { checkList } from '../checks.ts';
import { valueOfGainUsdPerLb } from './valueOfGainUsdPerLb.ts';

const noble = { source: 'noble-value-of-gain-2005', where: 'second paragraph', seen: 'print' } as const;
const rasby = { source: 'rasby-value-of-gain-2015', where: 'example', seen: 'print' } as const;
const mills = { source: 'mills-value-of-gain-2015', where: 'steers of 400 and 450 lb', seen: 'print' } as const;

const calf = () => valueOfGainUsdPerLb({ startWeightLb: 500, startPriceUsdPerCwt: 140, endWeightLb: 600, endPriceUsdPerCwt: 126 });
const steer = () => valueOfGainUsdPerLb({ startWeightLb: 550, startPriceUsdPerCwt: 230, endWeightLb: 750, endPriceUsdPerCwt: 190 });
// The page prints prices cut to the cent and head values of $1,168 and $1,273; the prices here are those values over the weights.
const clemson = () =>
  valueOfGainUsdPerLb({ startWeightLb: 400, startPriceUsdPerCwt: 116_800 / 400, endWeightLb: 450, endPriceUsdPerCwt: 127_300 / 450 });

export default checkList('valueOfGainUsdPerLb', [
  { what: 'calf of 500 lb at $1.40, dollars', ours: () => calf().startUsd, printed: '700', ...noble },
  { what: 'the same calf at 600 lb and $1.26, dollars', ours: () => calf().endUsd, printed: '756', ...noble },
  { what: 'worth of its 100 lb, dollars', ours: () => calf().gainUsd, printed: '56', ...noble },
  { what: 'value of its gain, dollars a lb', ours: () => calf().gainUsdPerLb, printed: '0.56', ...noble },
  { what: 'steer of 550 lb at $2.30, dollars', ours: () => steer().startUsd, printed: '1,265', ...rasby },
  { what: 'steer of 750 lb at $1.90, dollars', ours: () => steer().endUsd, printed: '1,425', ...rasby },
  { what: 'worth of its 200 lb, dollars', ours: () => steer().gainUsd, printed: '160', ...rasby },
  { what: 'value of its gain, dollars a lb', ours: () => steer().gainUsdPerLb, printed: '0.80', ...rasby },
  { what: 'steer from 400 to 450 lb, worth of the gain, dollars', ours: () => clemson().gainUsd, printed: '105', ...mills },
  { what: 'steer from 400 to 450 lb, dollars a lb', ours: () => clemson().gainUsdPerLb, printed: '2.10', ...mills },
]);
