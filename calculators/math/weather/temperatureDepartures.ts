import { need } from '../need.ts';
import { inverseNormal } from '../special/inverseNormal.ts';
import type { RandomSource } from './seededRandom.ts';

/** How far a day's high and low stand from their usual, in spreads (standard deviations) of the month. */
export interface Departures {
  readonly high: number;
  readonly low: number;
}

/**
 * A source of day-to-day departures of the high and the low from their usual: each keeps the share r of yesterday's and adds √(1 − r²) of a fresh normal
 * number, and the low shares the part s of the high's departure, with r = `dayToDayCorrelation`, s = `highToLowCorrelation`. Warm spells then last, and a
 * warm day has a warm night.
 * @param options.dayToDayCorrelation - Correlation of a day with the day before, no unit; 0 to 1
 * @param options.highToLowCorrelation - Correlation of the high with the low, no unit; 0 to 1
 * @param options.random - Random source; the same source state gives the same days
 * @returns Function that gives the next day's departures each time, in spreads of the month
 * @throws RangeError if a correlation is outside its range
 * @source richardson-1984, departures that carry over from day to day; one correlation for both is our own
 * @example temperatureDepartures({ dayToDayCorrelation: 0.6, highToLowCorrelation: 0.8, random: () => 0.5 })() //=> ({ high: 0, low: 0 })
 */
export function temperatureDepartures({
  dayToDayCorrelation,
  highToLowCorrelation,
  random,
}: {
  readonly dayToDayCorrelation: number;
  readonly highToLowCorrelation: number;
  readonly random: RandomSource;
}): () => Departures {
  need('temperatureDepartures', 'dayToDayCorrelation', dayToDayCorrelation, { atLeast: 0, atMost: 1 });
  need('temperatureDepartures', 'highToLowCorrelation', highToLowCorrelation, { atLeast: 0, atMost: 1 });
  const next = (kept: number): number => dayToDayCorrelation * kept + Math.sqrt(1 - dayToDayCorrelation ** 2) * inverseNormal(random());
  let high = 0;
  let lowOwn = 0;
  return () => {
    high = next(high);
    lowOwn = next(lowOwn);
    return { high, low: highToLowCorrelation * high + Math.sqrt(1 - highToLowCorrelation ** 2) * lowOwn };
  };
}
