/** The months in order, by the keys that stand in links. */
export const months = {
  jan: { label: 'January' },
  feb: { label: 'February' },
  mar: { label: 'March' },
  apr: { label: 'April' },
  may: { label: 'May' },
  jun: { label: 'June' },
  jul: { label: 'July' },
  aug: { label: 'August' },
  sep: { label: 'September' },
  oct: { label: 'October' },
  nov: { label: 'November' },
  dec: { label: 'December' },
} as const;

export type Month = keyof typeof months;
