/**
 * Roots that stopped growing three days after one clipping, percent, by the share of the top that was cut. Four tests on three grasses; the much copied
 * single column is the first test alone. Growth came back after 6 to 18 days: this is about days, not about how deep roots reach.
 */
export const rootStoppage = {
  source: 'crider-1955',
  where: 'percentage of roots stopped, tests 1 to 4',
  seen: 'transcription',
  removedPercent: [0, 40, 50, 60, 70, 80, 90],
  stoppedPercent: [
    [0, 0, 2, 50, 78, 100, 100],
    [0, 0, 8, 80, 97, 100, 100],
    [0, 0, 38, 54, 77, 91, 100],
    [0, 0, 13, 36, 76, 81, 100],
  ],
} as const;
