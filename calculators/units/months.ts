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
export const monthKeys: readonly Month[] = Object.keys(months).filter(isMonth);
/** 1 for January. */
export const monthNumber = (month: Month): number => monthKeys.indexOf(month) + 1;
/** `January` first. */
export const monthNames: readonly string[] = Object.values(months);
/** `Jan` first. */
export const shortMonthNames: readonly string[] = monthNames.map((name) => name.slice(0, 3));
