/** Soil loss that is said to be bearable, tons an acre a year, by how deep roots can go and whether fertile ground can be made of the subsoil. */
export const soilLossTolerance = {
  source: 'mccormack-young-1981',
  where: 'guide for assigning soil loss tolerance',
  seen: 'memory',
  rows: [
    { toRootingDepthIn: 10, renewable: 1, nonRenewable: 1 },
    { toRootingDepthIn: 20, renewable: 2, nonRenewable: 1 },
    { toRootingDepthIn: 40, renewable: 3, nonRenewable: 2 },
    { toRootingDepthIn: 60, renewable: 4, nonRenewable: 3 },
    { toRootingDepthIn: Infinity, renewable: 5, nonRenewable: 5 },
  ],
} as const;
