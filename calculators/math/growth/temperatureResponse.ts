import { need } from '../need.ts';

/**
 * Share of its best growth that a day's warmth allows: 0 up to where growth starts, rising evenly to 1, flat while warmth is best, falling evenly
 * to 0 where growth stops, with mean = `meanF` and the four corners `startF`, `bestFromF`, `bestToF`, `stopF`.
 * @param options.meanF - Mean temperature of the day, degrees Fahrenheit; any finite number
 * @param options.startF - Mean temperature at which growth starts, degrees Fahrenheit
 * @param options.bestFromF - Lower end of the best range, degrees Fahrenheit; above `startF`
 * @param options.bestToF - Upper end of the best range, degrees Fahrenheit; at least `bestFromF`
 * @param options.stopF - Mean temperature at which growth stops, degrees Fahrenheit; above `bestToF`
 * @returns Share of best growth, 0 to 1
 * @throws RangeError if the corners are not in order
 * @source jouven-2006, temperature function (from memory); corners by group in the table
 * @example temperatureResponse({ meanF: 53.5, startF: 42, bestFromF: 65, bestToF: 75, stopF: 85 }) //=> 0.5
 */
export function temperatureResponse({
  meanF,
  startF,
  bestFromF,
  bestToF,
  stopF,
}: {
  readonly meanF: number;
  readonly startF: number;
  readonly bestFromF: number;
  readonly bestToF: number;
  readonly stopF: number;
}): number {
  need('temperatureResponse', 'meanF', meanF);
  need('temperatureResponse', 'bestFromF', bestFromF, { above: startF });
  need('temperatureResponse', 'bestToF', bestToF, { atLeast: bestFromF });
  need('temperatureResponse', 'stopF', stopF, { above: bestToF });
  const rising = (meanF - startF) / (bestFromF - startF);
  const falling = (stopF - meanF) / (stopF - bestToF);
  return Math.max(0, Math.min(1, rising, falling));
}
