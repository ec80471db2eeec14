import { needThere } from '../../math/need.ts';
import { monthlyWeather, usualByMonth } from '../../season/monthlyWeather.ts';
import { climateDefaults, grassDefaults, grazingDefaults } from '../../season/parameters.ts';
import { type Fitted, fitted, type Pasture } from '../../season/pasture.ts';
import type { MonthDay } from '../../season/weather.ts';
import { growthTemperatures } from '../../tables/growthTemperatures.ts';
import type { Asked } from './inputs.ts';

const hundred = 100;
const lbPerTon = 2000;
const dayMs = 86_400_000;
/** A meadow is opened for grazing in the middle of September, half a year apart in the south. */
const meadowFrom = { north: 915, south: 315 } as const;
const daysInMonth = 365 / 12;

/** A date of any year as a day of the calendar; February 29 is the day before it. */
export function monthDayOf(day: number): MonthDay {
  const date = new Date(day * dayMs);
  const found = (date.getUTCMonth() + 1) * 100 + date.getUTCDate();
  return found === 229 ? 228 : found;
}
const latitudeOf = (latitude: Asked['latitude']): number => {
  const [side, degrees] = latitude.split('-');
  return Number(degrees) * (side === 'south' ? -1 : 1);
};
/** Warm-season grass starts later, thrives in heat, and has no flush of spring. */
function climateOf({ grass, referenceRatio, latitude }: Pick<Asked, 'grass' | 'referenceRatio' | 'latitude'>): Pasture['climate'] {
  const place = { ...climateDefaults, referenceFactor: referenceRatio, latitudeDeg: latitudeOf(latitude) };
  if (grass === 'cool') return place;
  const { startF, bestFromF, bestToF, stopF } = growthTemperatures['warm-season'];
  return { ...place, startF: startF.value, bestFromF: bestFromF.value, bestToF: bestToF.value, stopF: stopF.value, flushLow: 1, flushHigh: 1 };
}

/** All that the place is built of, and nothing that one side may have alone. */
const placeKeys = [
  'monthRainIn',
  'monthWetDays',
  'coldHighF',
  'coldLowF',
  'hotHighF',
  'hotLowF',
  'latitude',
  'runYears',
  'throwCount',
  'grass',
  'referenceRatio',
  'texture',
  'organicPercent',
  'rootsIn',
  'rainFactorRatio',
  'slopePercent',
  'slopeLengthFt',
  'crownLbPerAc',
  'weatheredPercent',
  'abstraction',
  'ceilingRatio',
  'grazedAc',
  'usualForageLbPerAc',
  'meadowAc',
  'usualHayTonPerAc',
  'moisturePercent',
  'grazesMeadow',
  'firstCutDay',
  'secondCutDay',
] as const satisfies readonly (keyof Asked)[];
type PlaceAsked = Pick<Asked, (typeof placeKeys)[number]>;

function build(asked: PlaceAsked): Pasture {
  const { monthRainIn, monthWetDays, latitude } = asked;
  const isSouth = latitude.startsWith('south');
  const high = usualByMonth({ coldest: asked.coldHighF, hottest: asked.hotHighF, isSouth });
  const low = usualByMonth({ coldest: asked.coldLowF, hottest: asked.hotLowF, isSouth });
  const at = (list: readonly number[], month: number): number => needThere('season', `month ${month + 1}`, list[month]);
  const months = monthRainIn.map((rainIn, month) => ({ rainIn, wetDays: at(monthWetDays, month), highF: at(high, month), lowF: at(low, month) }));
  return {
    weather: monthlyWeather(months, { years: asked.runYears, seed: asked.throwCount }),
    climate: climateOf(asked),
    ground: {
      texture: asked.texture,
      organicMatterPercent: asked.organicPercent,
      rootsIn: asked.rootsIn,
      rainFactor: asked.rainFactorRatio,
      slopePercent: asked.slopePercent,
      slopeFt: asked.slopeLengthFt,
    },
    grass: {
      ...grassDefaults,
      crownLbPerAc: asked.crownLbPerAc,
      fallingShare: asked.weatheredPercent / hundred / daysInMonth,
      abstractionRatio: asked.abstraction === 'late' ? 0.05 : 0.2,
    },
    ceilingOverPeak: asked.ceilingRatio,
    grazedAc: asked.grazedAc,
    usualLbPerAc: asked.usualForageLbPerAc,
    meadowAc: asked.meadowAc,
    usualHayLbPerAc: asked.usualHayTonPerAc * lbPerTon * (1 - asked.moisturePercent / hundred),
    ...(asked.grazesMeadow ? { grazedFrom: isSouth ? meadowFrom.south : meadowFrom.north } : {}),
    haying: {
      cutOn: [monthDayOf(asked.firstCutDay), monthDayOf(asked.secondCutDay)],
      cutLeavesLbPerAc: grazingDefaults.cutLeavesLbPerAc,
      cutWorthLbPerAc: grazingDefaults.cutWorthLbPerAc,
      hayKeptShare: grazingDefaults.hayKeptShare,
    },
  };
}

// Two managements share a place, and a form is computed again at each key: the last few places are kept with what they were fitted to.
const keptPlaces = 4;
interface Kept {
  readonly place: Pasture;
  fits?: Fitted;
}
const kept = new Map<string, Kept>();
function keptOf(asked: Asked): Kept {
  const key = JSON.stringify(placeKeys.map((name) => asked[name]));
  const found = kept.get(key) ?? { place: build(asked) };
  kept.delete(key);
  kept.set(key, found);
  for (const [oldest] of kept) {
    if (kept.size <= keptPlaces) break;
    kept.delete(oldest);
  }
  return found;
}

export const placeOf = (asked: Asked): Pasture => keptOf(asked).place;
/** Its sky, and the growth that gives its usual yields; or which of the two yields no growth can give. */
export function fitsOf(asked: Asked): Fitted {
  const found = keptOf(asked);
  found.fits ??= fitted(found.place);
  return found.fits;
}
