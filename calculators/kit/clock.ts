import { sameDayIn, yearOf } from '../units/days.ts';

// What a form says of today, and when its device is doubted.

/** At a date, as the word for whose it is: by the device, or by the answer of `ClockQuestion`. */
export const todayMarks = { device: 'today, by this device', answer: 'today, as you said' } as const;
export const exampleDates = 'Example dates';

/** So long after its day a copy is seldom still in use; a clock that far on is more likely wrong. */
const longestYears = 3;
/** Is the device's clock likely wrong? By a copy built on that day; one day before it may be another time zone. */
export const isDoubtful = (todayDay: number, builtDay: number): boolean =>
  todayDay < builtDay - 1 || todayDay > sameDayIn(builtDay, yearOf(builtDay) + longestYears);
