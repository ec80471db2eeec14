import { sameDayIn, yearOf } from '../units/days.ts';

// What a form says of today, and when its device is doubted.

/** At a date, as the word for whose it is: by the device, or by the answer of `ClockQuestion`. */
export const todayMarks = { device: 'today, by this device', answer: 'today, as you said' } as const;
export const exampleDates = 'Example dates';

/** So long after its day a copy is seldom still in use; a clock that far on is more likely wrong. */
const longestYears = 3;
/** The first and the last day that a copy built on that day takes for today; one day before it may be another time zone. */
export const likelyDays = (builtDay: number): readonly [first: number, last: number] => [
  builtDay - 1,
  sameDayIn(builtDay, yearOf(builtDay) + longestYears),
];
/** Is the device's clock likely wrong? */
export function isDoubtful(todayDay: number, builtDay: number): boolean {
  const [first, last] = likelyDays(builtDay);
  return todayDay < first || todayDay > last;
}
