import { need } from '../need.ts';

/**
 * Price of the hay that is left after a loss: p / (1 - l) by division, p (1 + l) by the multiplication that some guides print, with p = `price`, l
 * = `lossPercent` / 100. Division is what the feed costs; multiplication charges too little, and the more so the larger the loss.
 * @param options.price - Price before the loss, dollars for any unit; at least 0
 * @param options.lossPercent - Loss, percent of what was bought; at least 0, below 100
 * @param options.convention - Convention: divide or multiply
 * @returns Price for the same unit of hay left, dollars
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example priceAfterLoss({ price: 80, lossPercent: 20, convention: 'divide' }) //=> 100
 */
export function priceAfterLoss({
  price,
  lossPercent,
  convention,
}: {
  readonly price: number;
  readonly lossPercent: number;
  readonly convention: 'divide' | 'multiply';
}): number {
  need('priceAfterLoss', 'price', price, { atLeast: 0 });
  need('priceAfterLoss', 'lossPercent', lossPercent, { atLeast: 0, below: 100 });
  return convention === 'divide' ? price / (1 - lossPercent / 100) : price * (1 + lossPercent / 100);
}
