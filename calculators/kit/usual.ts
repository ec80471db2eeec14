/**
 * What a number in the field usually is, by what it measures. Past it the number is asked about at its field and never refused: that a decimal
 * point or a unit slipped is likelier than that it is so. All common practice, set wide: most people must never meet the question.
 * As the key of an input does, each name ends in its unit. The least and the most.
 */
export const usual = {
  // Animals: a lamb or a kid to a heavy bull.
  animalLb: [30, 2500],
  cowLb: [700, 2000],
  earlyCalfLb: [120, 650],
  calfLb: [250, 900],
  // More than a calf for each cow is a slip, or sheep and goats.
  weanedPercent: [0, 100],
  gainLbPerDay: [0, 3.5],
  eatenLbPerDay: [1.5, 60],
  drunkGalPerDay: [0.5, 35],
  herdHead: [0, 3000],
  // Hay: a small square bale to the largest round or square one.
  baleLb: [35, 2500],
  baleDensityLbPerFt3: [6, 20],
  hayUsdPerTon: [30, 500],
  feedUsdPerTon: [60, 1500],
  baleUsd: [3, 400],
  hayMoisturePercent: [6, 40],
  hayProteinPercent: [3, 30],
  hayTdnPercent: [35, 75],
  rindIn: [0, 10],
  // Grass.
  clippedG: [3, 5000],
  forageLbPerAc: [100, 10_000],
  stubbleLbPerAc: [0, 4000],
  swardIn: [0, 48],
  stubbleIn: [0, 14],
  swardLbPerAcIn: [50, 600],
  growthLbPerAcDay: [0, 150],
  // Money.
  calfUsdPerCwt: [60, 600],
  cowUsd: [300, 6000],
  cowUsdPerDay: [0.5, 10],
  sellingUsd: [0, 500],
  freightUsdPerLoad: [0, 3000],
  freightUsdPerTon: [0, 200],
  interestPercent: [0, 20],
  // Water and weather.
  stormIn: [0, 12],
  soakingIn: [0, 6],
  seasonIn: [0, 40],
  yearIn: [6, 80],
  useInPerDay: [0, 0.45],
  evaporationInPerDay: [0, 0.6],
  seepageInPerDay: [0, 0.5],
  springGpm: [0.1, 100],
  walkFt: [50, 15_000],
  pondFt: [0, 25],
  troughFt: [0, 6],
  bucketGal: [0, 60],
  bucketS: [2, 1800],
  paceFt: [1.5, 5],
  // What one tells by the inch alone is likely meant for other ground.
  waterPerTonIn: [1.8, 8],
  // Ground.
  soakingInPerHr: [0.02, 60],
  pastureAc: [0.5, 10_000],
  soilPercent: [0.3, 8],
  soilGPerCm3: [0.8, 1.85],
  waterMi: [0, 4],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;
export type UsualName = keyof typeof usual;
