import { need } from '../need.ts';
import type { WetDayChain } from './wetDayChain.ts';

/** Gamma shape of a wet day's rain where only the month's sum is known: fitted months lie between 0.6 and 0.9 (our own). */
const usualShape = 0.75;

/**
 * Rain chain of a month of which only the usual sum and the number of wet days are known: p01 = 0.75 f and p11 = 0.25 + p01, with f the share of days
 * that are wet, and a gamma amount with the mean of a wet day.
 * @param options.rainMm - Usual rain of the month, millimeters; at least 0
 * @param options.wetDays - Days with rain in a usual month; 0 to `days`; with 0 there is no rain
 * @param options.days - Days of the month; 28 to 31
 * @returns Chances of a wet day after a wet and after a dry one, shape and scale (millimeters) of a wet day's rain
 * @throws RangeError if a parameter is outside its range
 * @source geng-1986, transition probabilities from the share of wet days; the shape is our own
 * @example chainFromMonth({ rainMm: 90, wetDays: 12, days: 30 }) //=> { wetAfterWet: 0.55, wetAfterDry: 0.3, shape: 0.75, scaleMm: 10 }
 */
export function chainFromMonth({ rainMm, wetDays, days }: { readonly rainMm: number; readonly wetDays: number; readonly days: number }): WetDayChain {
  need('chainFromMonth', 'days', days, { atLeast: 28, atMost: 31 });
  need('chainFromMonth', 'rainMm', rainMm, { atLeast: 0 });
  need('chainFromMonth', 'wetDays', wetDays, { atLeast: 0, atMost: days });
  // It does not rain on no days.
  if (wetDays === 0) need('chainFromMonth', 'rainMm', rainMm, { atMost: 0 });
  const wetAfterDry = (0.75 * wetDays) / days;
  const meanMm = wetDays > 0 ? rainMm / wetDays : 1;
  // A month in which it rains every day stays wet; one without rain draws nothing.
  return {
    wetAfterWet: Math.min(1, 0.25 + wetAfterDry),
    wetAfterDry: rainMm > 0 ? wetAfterDry : 0,
    shape: usualShape,
    scaleMm: (rainMm > 0 ? meanMm : 1) / usualShape,
  };
}
