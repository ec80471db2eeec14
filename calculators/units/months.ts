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
/** `January` for 0. */
export const monthName = (index: number): string => Object.values(months)[index] ?? '';
/** `Jan` for 0. */
export const shortMonthName = (index: number): string => monthName(index).slice(0, 3);
