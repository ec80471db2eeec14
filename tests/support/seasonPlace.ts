import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvParse } from 'd3-dsv';
import { filledWeather } from '../../calculators/season/filledWeather.ts';
import { type Fit, type FitPlace, fittedMeadowRate, fittedRate } from '../../calculators/season/fit.ts';
import { type PaddockSoil, paddockOn } from '../../calculators/season/paddock.ts';
import { ceilingOverPeak, climateDefaults, grassDefaults, grazingDefaults } from '../../calculators/season/parameters.ts';
import type { Grass, Management, Paddock, Side, StockRow } from '../../calculators/season/side.ts';
import { type Climate, midwinter, type Sky, skyOf } from '../../calculators/season/sky.ts';
import { type DailyRecord, type FirstDay, type Weather, wholeYear } from '../../calculators/season/weather.ts';
import { root } from './files.ts';

const mmPerIn = 25.4;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const rowsOf = (path: string) => csvParse(readFileSync(join(root, path), 'utf8'));

/** Days of which none is missing. */
export function wholeWeather(first: FirstDay, days: Omit<DailyRecord, 'first'>): Weather {
  const filled = filledWeather({ first, ...days });
  if (filled.kind === 'refused') throw new RangeError(`wholeWeather needs days without a fault, got ${filled.why} at ${filled.at}`);
  return filled.weather;
}
/** The demo place's thirty years. */
export function demoWeather(): Weather {
  const rows = rowsOf('content/place/weather.csv');
  return wholeWeather(
    { year: 1996, month: 1, day: 1 },
    {
      rainMm: Float64Array.from(rows, (row) => mmPerIn * Number(row['rainIn'])),
      maxTempC: Float64Array.from(rows, (row) => celsius(Number(row['highF']))),
      minTempC: Float64Array.from(rows, (row) => celsius(Number(row['lowF']))),
    },
  );
}
/** Four years of open weather, 2012 to 2015. */
export function openSeasonWeather(location: 'Seattle' | 'New York'): Weather {
  const rows = rowsOf('node_modules/vega-datasets/data/weather.csv').filter((row) => row['location'] === location);
  return wholeWeather(
    { year: 2012, month: 1, day: 1 },
    {
      rainMm: Float64Array.from(rows, (row) => Number(row['precipitation'])),
      maxTempC: Float64Array.from(rows, (row) => Number(row['temp_max'])),
      minTempC: Float64Array.from(rows, (row) => Number(row['temp_min'])),
    },
  );
}

/** The days of some weather from one to before another, with what is changed in each. */
export function changedWeather(
  weather: Weather,
  {
    from = 0,
    to = weather.days,
    rain = (mm) => mm,
  }: { readonly from?: number; readonly to?: number; readonly rain?: (mm: number, monthDay: number) => number },
): Weather {
  const monthDay = weather.monthDay.slice(from, to);
  return {
    days: to - from,
    year: weather.year.slice(from, to),
    monthDay,
    rainMm: weather.rainMm.slice(from, to).map((mm, at) => rain(mm, Number(monthDay[at]))),
    maxTempC: weather.maxTempC.slice(from, to),
    minTempC: weather.minTempC.slice(from, to),
    madeUp: weather.madeUp.slice(from, to),
  };
}

export const demoClimate: Climate = { ...climateDefaults, latitudeDeg: 38 };
export const skyWith = (weather: Weather, climate: Partial<Climate> = {}): Sky => skyOf(weather, { ...demoClimate, ...climate });
export const usualGrass: Grass = { ...grassDefaults, abstractionRatio: 0.05 };
export const benchSoil: PaddockSoil = { sandPercent: 20, clayPercent: 15, organicMatterPercent: 2.6, rootsIn: 24, readilyEvaporableMm: 9.5 };
const pasture = { poor: 79, fair: 69, good: 61 };
const meadow = { poor: 69, fair: 61, good: 58 };
const classes = { poorBelowPercent: 50, goodAbovePercent: 75, bareLossTonPerAc: 160 * 0.37 * 1.21 };

export const usualRule: Management = {
  ...grazingDefaults,
  turnOut: 420,
  pull: 1101,
  mostDaysIn: 7,
  leastRestDays: 0,
  next: 'in-order',
  stubbleLbPerAc: 600,
  whenShort: 'pull',
  pullBelowDays: 0,
  cutOn: [610, 820],
  feedingLossShare: 0.13,
};

/** Stock of the demo place by stage: 45 cows and their calves, 2 bulls, 9 heifers, 60 ewes with their lambs at grass. */
export const demoStock: readonly StockRow[] = [
  { head: 45, weightLb: 1250, intakePercent: 2.5, from: 310, to: 1015 },
  { head: 45, weightLb: 1250, intakePercent: 2.2, from: 1015, to: 310 },
  { head: 45, weightLb: 300, intakePercent: 1.5, from: 601, to: 1015 },
  { head: 2, weightLb: 1900, intakePercent: 2, ...wholeYear },
  { head: 9, weightLb: 950, intakePercent: 2.5, from: 225, to: 1015 },
  { head: 9, weightLb: 950, intakePercent: 2.2, from: 1015, to: 225 },
  { head: 60, weightLb: 160, intakePercent: 4, from: 325, to: 801 },
  { head: 60, weightLb: 160, intakePercent: 2, from: 801, to: 325 },
];

export interface PlaceOptions {
  readonly soil?: Partial<PaddockSoil>;
  readonly grass?: Partial<Grass>;
  readonly management?: Partial<Management>;
  readonly numbers?: { readonly poor: number; readonly fair: number; readonly good: number };
  readonly paddocks?: number;
  readonly grazedAc?: number;
  readonly meadowAc?: number;
  readonly usualLbPerAc?: number;
  readonly usualHayLbPerAc?: number;
  readonly stock?: readonly StockRow[];
  readonly stockFactor?: number;
}
export interface Rates {
  readonly grazed: number;
  readonly meadow: number;
}

const rateOf = (fit: Fit): number => {
  if (fit.kind !== 'fits') throw new RangeError('this yield does not go with this weather');
  return fit.ratePerDay;
};

/** Grazed acres in equal paddocks and a hay meadow, on one soil, at given growth rates. */
export function sideOf(rates: Rates, options: PlaceOptions = {}): Side {
  const { paddocks = 4, grazedAc = 430, meadowAc = 70, usualLbPerAc = 2400, usualHayLbPerAc = 3400, stock = demoStock, stockFactor = 1 } = options;
  const soil = { ...benchSoil, ...options.soil };
  const management = { ...usualRule, ...options.management };
  const grazed = paddockOn(soil, {
    ...classes,
    ...pasture,
    ...options.numbers,
    areaAc: grazedAc / paddocks,
    isMeadow: false,
    ceilingLbPerAc: ceilingOverPeak.value * usualLbPerAc,
    ratePerDay: rates.grazed,
  });
  const standsLbPerAc = usualHayLbPerAc / management.hayKeptShare + management.cutLeavesLbPerAc;
  const hay = paddockOn(soil, {
    ...classes,
    ...meadow,
    areaAc: Math.max(1, meadowAc),
    isMeadow: true,
    grazedFrom: 915,
    ceilingLbPerAc: ceilingOverPeak.value * standsLbPerAc,
    ratePerDay: rates.meadow,
  });
  return {
    paddocks: [...Array.from({ length: paddocks }, () => grazed), ...(meadowAc > 0 ? [hay] : [])],
    grass: { ...usualGrass, ...options.grass },
    stock: stock.map((row) => ({ ...row, head: row.head * stockFactor })),
    management,
  };
}

const firstOf = ({ paddocks: [first] }: Side): Paddock => {
  if (first === undefined) throw new RangeError('a side has a paddock');
  return first;
};
const lastOf = ({ paddocks }: Side): Paddock => paddocks.at(-1) ?? firstOf({ paddocks, grass: usualGrass, stock: [], management: usualRule });

/** Growth rates that give the usual yields on the bench soil. */
export function ratesFor(sky: Sky, options: PlaceOptions = {}, latitudeDeg = demoClimate.latitudeDeg): Rates {
  const side = sideOf({ grazed: 0, meadow: 0 }, options);
  const place = (paddock: Paddock): FitPlace => ({ sky, paddock, grass: side.grass, midwinter: midwinter(latitudeDeg) });
  return {
    grazed: rateOf(fittedRate(place(firstOf(side)), options.usualLbPerAc ?? 2400)),
    meadow: rateOf(fittedMeadowRate(place(lastOf(side)), side.management, options.usualHayLbPerAc ?? 3400)),
  };
}

/** The two managements of the published table: few paddocks grazed on, and many that rest. */
export const fewPaddocks = { paddocks: 4, management: { mostDaysIn: 30, stubbleLbPerAc: 500, whenShort: 'stay' } } as const satisfies PlaceOptions;
export const manyPaddocks = {
  paddocks: 12,
  management: { mostDaysIn: 4, leastRestDays: 25, next: 'most-grass', stubbleLbPerAc: 900, whenShort: 'pull' },
} as const satisfies PlaceOptions;
