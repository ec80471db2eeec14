/** How full a handful feels: percent of the available water that is there, from dry end to wet end. */
export const soilFeel = {
  source: 'nrcs-feel-loam',
  where: 'percent available; the sheet for clays has the same classes',
  seen: 'print',
  filledPercent: {
    dry: { low: 0, high: 25 },
    'slightly-moist': { low: 25, high: 50 },
    moist: { low: 50, high: 75 },
    wet: { low: 75, high: 100 },
    full: { low: 100, high: 100 },
  },
} as const;
