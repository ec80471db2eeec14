/** Milliseconds in a day: a day number counts days since 1970-01-01. */
export const dayMs = 86_400_000;
export const yearOf = (day: number): number => new Date(day * dayMs).getUTCFullYear();
/** 0 for January. */
export const monthIndexOf = (day: number): number => new Date(day * dayMs).getUTCMonth();
/** First day of a month; an index past December runs on into the next year. */
export const firstOfMonth = (monthIndex: number, year: number): number => Date.UTC(year, monthIndex, 1) / dayMs;
