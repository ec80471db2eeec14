import { needThere } from '../../math/need.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { yearsIn } from '../../season/hayYears.ts';
import { monthlyWeather, type UsualMonth, usualByMonth } from '../../season/monthlyWeather.ts';
import { climateDefaults, grassDefaults, grazingDefaults } from '../../season/parameters.ts';
import { type Fitted, fitted, type Pasture } from '../../season/pasture.ts';
import { type Recorded, recordedWeather } from '../../season/recordedWeather.ts';
import { type Sky, skyOf } from '../../season/sky.ts';
import type { MonthDay, Weather } from '../../season/weather.ts';
import { growthTemperatures } from '../../tables/growthTemperatures.ts';
import { type Asked, weatherKeys } from './inputs.ts';

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
  ...weatherKeys,
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

/** A usual year in twelve lines. */
function usualMonths(asked: PlaceAsked): readonly UsualMonth[] {
  const { monthRainIn, monthWetDays } = asked;
  const isSouth = asked.latitude.startsWith('south');
  const high = usualByMonth({ coldest: asked.coldHighF, hottest: asked.hotHighF, isSouth });
  const low = usualByMonth({ coldest: asked.coldLowF, hottest: asked.hotLowF, isSouth });
  const at = (list: readonly number[], month: number): number => needThere('season', `month ${month + 1}`, list[month]);
  return monthRainIn.map((rainIn, month) => ({ rainIn, wetDays: at(monthWetDays, month), highF: at(high, month), lowF: at(low, month) }));
}
const recordOf = (asked: PlaceAsked): Recorded | undefined =>
  asked.weatherFrom === 'record'
    ? recordedWeather(
        asked.rainRecord.map(({ amount, ...line }) => ({ ...line, amountIn: amount })),
        usualMonths(asked),
        asked.throwCount,
      )
    : undefined;

function build(asked: PlaceAsked, weather: Weather): Pasture {
  const isSouth = asked.latitude.startsWith('south');
  return {
    weather,
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

// Two managements share a place, and a form is computed again at each key: the last few places are kept with what they were fitted to. A day of them takes
// about 100 bytes, so they are counted by days: four of the longest that the form makes up, one of a record of centuries.
const keptDays = 4 * 60 * 366;
interface Kept {
  readonly weatherKey: string;
  readonly recorded: Recorded | undefined;
  readonly place: Pasture;
  sky?: Sky;
  fits?: Fitted;
}
const kept = new Map<string, Kept>();
// A record of thousands of lines is known by itself, not by what is in it.
const records = new WeakMap<object, number>();
let recordsSeen = 0;
function recordNumber(lines: Asked['rainRecord']): number {
  if (lines.length === 0) return 0;
  const found = records.get(lines) ?? ++recordsSeen;
  records.set(lines, found);
  return found;
}
const keyOf = (asked: Asked, names: readonly (keyof Asked)[]): string =>
  JSON.stringify(names.map((name) => (name === 'rainRecord' ? recordNumber(asked.rainRecord) : asked[name])));
function keptOf(asked: Asked): Kept {
  const key = keyOf(asked, placeKeys);
  const found = kept.get(key) ?? built(asked);
  kept.delete(key);
  kept.set(key, found);
  let days = sumOf([...kept.values()], ({ place }) => place.weather.days);
  for (const [oldest, { place }] of kept) {
    if (days <= keptDays || oldest === key) break;
    kept.delete(oldest);
    days -= place.weather.days;
  }
  return found;
}

/** Another soil or another yield is under the same weather: to make the days takes as long as to run through them. */
function built(asked: Asked): Kept {
  const weatherKey = keyOf(asked, weatherKeys);
  const same = [...kept.values()].find((each) => each.weatherKey === weatherKey);
  const recorded = same ? same.recorded : recordOf(asked);
  const weather = same?.place.weather ?? recorded?.weather ?? monthlyWeather(usualMonths(asked), { years: asked.runYears, seed: asked.throwCount });
  return { weatherKey, recorded, place: build(asked, weather) };
}
/** What grass and soil feel of that weather, which hangs on the kind of grass too. */
function skyAt({ weather, climate }: Pasture): Sky {
  const climateKey = JSON.stringify(climate);
  const same = [...kept.values()].find(({ place, sky }) => sky && place.weather === weather && JSON.stringify(place.climate) === climateKey);
  return same?.sky ?? skyOf(weather, climate);
}

export const placeOf = (asked: Asked): Pasture => keptOf(asked).place;
/** How the record became days; nothing where the years are made up. */
export const recordedOf = (asked: Asked): Recorded | undefined => keptOf(asked).recorded;

/** Fewer hay years say next to nothing of a need of one year in ten. */
const fewestRecordedYears = 6;
/** Whether the record holds years enough; made-up ones always do. */
export const hasYears = (asked: Asked): boolean => {
  const recorded = recordedOf(asked);
  return recorded === undefined || yearsIn(recorded.weather, monthDayOf(asked.turnOutDay)).counted >= fewestRecordedYears;
};
/** Its sky, and the growth that gives its usual yields; or which of the two yields no growth can give. */
export function fitsOf(asked: Asked): Fitted {
  const found = keptOf(asked);
  found.sky ??= skyAt(found.place);
  found.fits ??= fitted(found.place, found.sky);
  return found.fits;
}
