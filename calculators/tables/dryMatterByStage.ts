/** Air-dry weight of green forage, percent, by stage. Drying a sample comes before any of these. */
export const airDryPercentUtah = [
  { species: 'alkali-sacaton', name: 'Alkali sacaton', toFlowering: 35, fullBloom: 60, seedShed: 80 },
  { species: 'bearded-wheatgrass', name: 'Bearded wheatgrass', toFlowering: 30, fullBloom: 40, seedShed: 80 },
  { species: 'bluebunch-wheatgrass', name: 'Bluebunch wheatgrass', toFlowering: 30, fullBloom: 60, seedShed: 85 },
  { species: 'blue-wildrye', name: 'Blue wildrye', toFlowering: 25, fullBloom: 35, seedShed: 75 },
  { species: 'cheatgrass', name: 'Cheatgrass', toFlowering: 20, fullBloom: 50, seedShed: 100 },
  { species: 'columbia-needlegrass', name: 'Columbia needlegrass', toFlowering: 25, fullBloom: 40, seedShed: 75 },
  { species: 'crested-wheatgrass', name: 'Crested wheatgrass', toFlowering: 30, fullBloom: 60, seedShed: 85 },
  { species: 'dryland-sedge', name: 'Dryland sedge', toFlowering: 30, fullBloom: 45, seedShed: 85 },
] as const;
export const airDryUtahSource = { source: 'utah-scs-air-dry', where: 'Clippings of 1953 to 1963', seen: 'transcription' } as const;

export const airDryPercentByGroup = [
  { group: 'cool-season', name: 'Cool-season grasses', beforeHeading: 35, headed: 45, seedRipe: 60, leavesDry: 85, dormant: 95 },
  { group: 'warm-tall', name: 'Warm-season tall grasses', beforeHeading: 30, headed: 45, seedRipe: 60, leavesDry: 85, dormant: 95 },
  { group: 'warm-mid', name: 'Warm-season midgrasses', beforeHeading: 40, headed: 55, seedRipe: 65, leavesDry: 90, dormant: 95 },
  { group: 'warm-short', name: 'Warm-season shortgrasses', beforeHeading: 45, headed: 60, seedRipe: 80, leavesDry: 90, dormant: 95 },
] as const;
export const airDryByGroupSource = { source: 'nrph-2003', where: 'Chapter 4, exhibit on percentage of air-dry matter', seen: 'memory' } as const;
