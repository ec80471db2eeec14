/** What a growing pasture uses, as a share of the reference, and the share of the available water it takes before it slows (at 5 mm a day). */
export const pastureWaterUse = {
  source: 'allen-1998',
  where: 'tables 12 and 22, grazing pasture; rotated is printed as 0.85 to 1.05',
  seen: 'print',
  coefficient: { rotated: 0.95, extensive: 0.75 },
  depletionFraction: 0.6,
} as const;
