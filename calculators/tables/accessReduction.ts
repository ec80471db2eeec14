/** How much less cattle use ground far from water or steep, percent; `upTo` is the upper end of the class. */
export const waterDistanceReduction = [
  { upTo: 1, reductionPercent: 0 },
  { upTo: 2, reductionPercent: 50 },
  { upTo: Number.POSITIVE_INFINITY, reductionPercent: 100 },
] as const;
export const waterDistanceSource = {
  source: 'rangelands-gateway-matching',
  where: 'Access by distance from water (1.6 and 3.2 km)',
  seen: 'print',
} as const;

export const slopeReduction = [
  { upTo: 10, reductionPercent: 0 },
  { upTo: 30, reductionPercent: 30 },
  { upTo: 60, reductionPercent: 60 },
  { upTo: Number.POSITIVE_INFINITY, reductionPercent: 100 },
] as const;
/** That the guide starts at 10 percent of slope and 1.6 km was read in Millward and others (2020); the steps are recalled. */
export const slopeSource = { source: 'holechek-1988', where: 'Reduction by slope', seen: 'memory' } as const;
