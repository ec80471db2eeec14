/** What is understood of a record of which nothing could be read. */
export const nothingRead = {
  lines: [],
  questions: [],
  told: [],
  isMonthly: false,
  dateColumn: '',
  rainColumn: '',
  counting: 'in',
  missing: [],
  isConfirmed: false,
} as const;
