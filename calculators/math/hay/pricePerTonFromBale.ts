import { need } from '../need.ts';

const poundsPerTon = 2000;

/**
 * Price of a ton at a price for the bale: 2,000 p / W, with p = `pricePerBale`, W = `baleLb`.
 * @param options.pricePerBale - Price of one bale, dollars; at least 0
 * @param options.baleLb - Weight of the bale as fed, lb; above 0
 * @returns Price, dollars per ton as fed
 * @throws RangeError if a value is outside its range
 * @source banta-2012, price per ton
 * @example pricePerTonFromBale({ pricePerBale: 50, baleLb: 1100 }) //=> 90.91
 */
export function pricePerTonFromBale({ pricePerBale, baleLb }: { readonly pricePerBale: number; readonly baleLb: number }): number {
  need('pricePerTonFromBale', 'pricePerBale', pricePerBale, { atLeast: 0 });
  need('pricePerTonFromBale', 'baleLb', baleLb, { above: 0 });
  return (poundsPerTon * pricePerBale) / baleLb;
}
