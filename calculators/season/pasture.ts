import { type Fit, fittedMeadowRate, fittedRate } from './fit.ts';
import { bareLossOf, type Ground, runoffOf, soilOf } from './ground.ts';
import { paddockOn } from './paddock.ts';
import type { Grass, Management, Paddock, Side, StockRow } from './side.ts';
import { type Climate, midwinter, type Sky } from './sky.ts';
import type { MonthDay, Weather } from './weather.ts';

/** A place as both managements share it. Yields are dry pounds an acre. */
export interface Pasture {
  readonly weather: Weather;
  readonly climate: Climate;
  readonly ground: Ground;
  readonly grass: Grass;
  /** Ceiling of growth over the usual peak. */
  readonly ceilingOverPeak: number;
  readonly grazedAc: number;
  readonly usualLbPerAc: number;
  /** No acres: no meadow. */
  readonly meadowAc: number;
  readonly usualHayLbPerAc: number;
  readonly grazedFrom?: MonthDay;
  /** Cutting days and what a cut leaves are the meadow's, so that its fit serves both sides. */
  readonly haying: Pick<Management, 'cutOn' | 'cutLeavesLbPerAc' | 'cutWorthLbPerAc' | 'hayKeptShare'>;
}
export type Fits = { readonly kind: 'fits'; readonly sky: Sky; readonly grazedRate: number; readonly meadowRate: number };
export type Fitted = Fits | { readonly kind: 'yield-too-high' | 'hay-too-high' };

const paddock = ({ ground, ceilingOverPeak, usualLbPerAc }: Pasture, areaAc: number, ratePerDay: number, rootsIn: number): Paddock =>
  paddockOn(soilOf({ ...ground, rootsIn }), {
    ...runoffOf(ground, 'pasture'),
    areaAc,
    isMeadow: false,
    ceilingLbPerAc: ceilingOverPeak * usualLbPerAc,
    ratePerDay,
    bareLossTonPerAc: bareLossOf(ground),
  });
function meadow({ ground, ceilingOverPeak, meadowAc, usualHayLbPerAc, haying, grazedFrom }: Pasture, ratePerDay: number, rootsIn: number): Paddock {
  const standsLbPerAc = usualHayLbPerAc / haying.hayKeptShare + haying.cutLeavesLbPerAc;
  return paddockOn(soilOf({ ...ground, rootsIn }), {
    ...runoffOf(ground, 'meadow'),
    areaAc: meadowAc,
    isMeadow: true,
    ...(grazedFrom === undefined ? {} : { grazedFrom }),
    ceilingLbPerAc: ceilingOverPeak * standsLbPerAc,
    ratePerDay,
    bareLossTonPerAc: bareLossOf(ground),
  });
}

/** The growth that gives a place its usual yields under its sky. Fit once, for both sides. */
export function fitted(place: Pasture, sky: Sky): Fitted {
  const at = { sky, grass: place.grass, midwinter: midwinter(place.climate.latitudeDeg) };
  const rootsIn = place.ground.rootsIn;
  const grazed = fittedRate({ ...at, paddock: paddock(place, 1, 0, rootsIn) }, place.usualLbPerAc);
  if (grazed.kind !== 'fits') return { kind: 'yield-too-high' };
  if (place.meadowAc === 0) return { kind: 'fits', sky, grazedRate: grazed.ratePerDay, meadowRate: 0 };
  const hay: Fit = fittedMeadowRate({ ...at, paddock: meadow(place, 0, rootsIn) }, place.haying, place.usualHayLbPerAc);
  return hay.kind === 'fits' ? { kind: 'fits', sky, grazedRate: grazed.ratePerDay, meadowRate: hay.ratePerDay } : { kind: 'hay-too-high' };
}

/** One management there: the grazed acres in equal paddocks, and the meadow behind them. */
export function sideOn(
  place: Pasture,
  fits: Fits,
  {
    paddocks,
    rootsIn,
    stock,
    management,
  }: { readonly paddocks: number; readonly rootsIn: number; readonly stock: readonly StockRow[]; readonly management: Management },
): Side {
  const grazed = paddock(place, place.grazedAc / paddocks, fits.grazedRate, rootsIn);
  return {
    paddocks: [...Array.from({ length: paddocks }, () => grazed), ...(place.meadowAc > 0 ? [meadow(place, fits.meadowRate, rootsIn)] : [])],
    grass: place.grass,
    stock,
    management: { ...management, ...place.haying },
  };
}
