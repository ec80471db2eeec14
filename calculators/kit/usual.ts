import type { UnitName } from '../units/units.ts';

interface Usual {
  readonly unit: UnitName;
  readonly below?: number;
  readonly above?: number;
}

/**
 * What a number in the field usually is, by what it measures. Past it the number is asked about at its field and never refused: that a decimal
 * point or a unit slipped is likelier than that it is so. All common practice, set wide: most people must never meet the question.
 */
export const usual = {
  // Animals: a lamb or a kid to a heavy bull.
  animalLb: { unit: 'lb', below: 30, above: 2500 },
  cowLb: { unit: 'lb', below: 700, above: 2000 },
  earlyCalfLb: { unit: 'lb', below: 120, above: 650 },
  calfLb: { unit: 'lb', below: 250, above: 900 },
  gainLbPerDay: { unit: 'lb/d', above: 3.5 },
  eatenLbPerDay: { unit: 'lb/d', below: 1.5, above: 60 },
  drunkGalPerDay: { unit: 'gal/d', below: 0.5, above: 35 },
  herdHead: { unit: 'head', above: 3000 },
  // Hay: a small square bale to the largest round or square one.
  baleLb: { unit: 'lb', below: 35, above: 2500 },
  baleDensityLbPerFt3: { unit: 'lb/cuft', below: 6, above: 20 },
  hayUsdPerTon: { unit: 'usd/ton', below: 30, above: 500 },
  feedUsdPerTon: { unit: 'usd/ton', below: 60, above: 1500 },
  baleUsd: { unit: 'usd', below: 3, above: 400 },
  hayMoisturePercent: { unit: 'pct', below: 6, above: 40 },
  hayProteinPercent: { unit: 'pct', below: 3, above: 30 },
  hayTdnPercent: { unit: 'pct', below: 35, above: 75 },
  rindIn: { unit: 'in', above: 10 },
  // Grass.
  clippedG: { unit: 'g', below: 3, above: 5000 },
  forageLbPerAc: { unit: 'lb/ac', below: 100, above: 10_000 },
  stubbleLbPerAc: { unit: 'lb/ac', above: 4000 },
  swardIn: { unit: 'in', above: 48 },
  stubbleIn: { unit: 'in', above: 14 },
  swardLbPerAcIn: { unit: 'lb/ac/in', below: 50, above: 600 },
  growthLbPerAcDay: { unit: 'lb/ac/d', above: 150 },
  // Money.
  calfUsdPerCwt: { unit: 'usd/cwt', below: 60, above: 600 },
  cowUsd: { unit: 'usd', below: 300, above: 6000 },
  cowUsdPerDay: { unit: 'usd/d', below: 0.5, above: 10 },
  sellingUsd: { unit: 'usd', above: 500 },
  freightUsdPerLoad: { unit: 'usd/load', above: 3000 },
  freightUsdPerTon: { unit: 'usd/ton', above: 200 },
  interestPercent: { unit: 'pct', above: 20 },
  // Water and weather.
  stormIn: { unit: 'in', above: 12 },
  soakingIn: { unit: 'in', above: 6 },
  seasonIn: { unit: 'in', above: 40 },
  yearIn: { unit: 'in', below: 6, above: 80 },
  useInPerDay: { unit: 'in/d', above: 0.45 },
  evaporationInPerDay: { unit: 'in/d', above: 0.6 },
  seepageInPerDay: { unit: 'in/d', above: 0.5 },
  springGpm: { unit: 'gpm', below: 0.1, above: 100 },
  walkFt: { unit: 'ft', below: 50, above: 15_000 },
  pondFt: { unit: 'ft', above: 25 },
  troughFt: { unit: 'ft', above: 6 },
  bucketGal: { unit: 'gal', above: 60 },
  bucketS: { unit: 's', below: 2, above: 1800 },
  paceFt: { unit: 'ft', below: 1.5, above: 5 },
  // Ground.
  soakingInPerHr: { unit: 'in/hr', below: 0.02, above: 60 },
  pastureAc: { unit: 'ac', below: 0.5, above: 10_000 },
  soilPercent: { unit: 'pct', below: 0.3, above: 8 },
  soilGPerCm3: { unit: 'g/cc', below: 0.8, above: 1.85 },
  waterMi: { unit: 'mi', above: 4 },
} as const satisfies Readonly<Record<string, Usual>>;
export type UsualName = keyof typeof usual;

/** The limits of one of them, the ones left out where no number reaches them. */
export function usualRange(name: UsualName): Required<Usual> {
  const range: Usual = usual[name];
  return { below: Number.NEGATIVE_INFINITY, above: Number.POSITIVE_INFINITY, ...range };
}
