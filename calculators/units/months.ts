/** The months in order, by the keys that stand in links. */
export const months = {
  jan: 'January',
  feb: 'February',
  mar: 'March',
  apr: 'April',
  may: 'May',
  jun: 'June',
  jul: 'July',
  aug: 'August',
  sep: 'September',
  oct: 'October',
  nov: 'November',
  dec: 'December',
} as const;

export type Month = keyof typeof months;
export const isMonth = (key: string): key is Month => Object.hasOwn(months, key);
export const monthKeys = (): readonly Month[] => Object.keys(months).filter(isMonth);
/** 1 for January. */
export const monthNumber = (month: Month): number => Object.keys(months).indexOf(month) + 1;
/** Months from one to another going on round the year, over New Year if need be: 0 to 11. */
export const monthsOnTo = (from: Month, to: Month): number => (monthNumber(to) - monthNumber(from) + 12) % 12;
/** `January` for 0. */
export const monthName = (index: number): string => Object.values(months)[index] ?? '';
/** `Jan` for 0. */
export const shortMonthName = (index: number): string => monthName(index).slice(0, 3);

type NamedMonth = Lowercase<(typeof months)[Month]>;
const isByName = (built: object): built is Readonly<Record<NamedMonth, string>> =>
  Object.values(months).every((name) => Object.hasOwn(built, name.toLowerCase()));
/** `january: 'January'`, for links that have their months by name. */
export function monthsByName(): Readonly<Record<NamedMonth, string>> {
  const built: object = Object.fromEntries(Object.values(months).map((name) => [name.toLowerCase(), name]));
  if (!isByName(built)) throw new TypeError('monthsByName needs every month');
  return built;
}
