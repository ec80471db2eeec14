import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rainErosivity } from '../../calculators/math/erosion/rainErosivity.ts';
import { springFlush } from '../../calculators/math/growth/springFlush.ts';
import { temperatureResponse } from '../../calculators/math/growth/temperatureResponse.ts';
import { dayOfYear } from '../../calculators/math/weather/dayOfYear.ts';
import { degreeDays } from '../../calculators/math/weather/degreeDays.ts';
import { extraterrestrialRadiationMj } from '../../calculators/math/weather/extraterrestrialRadiationMj.ts';
import { hargreavesMm } from '../../calculators/math/weather/hargreavesMm.ts';
import { snowDay } from '../../calculators/math/weather/snowDay.ts';
import { numberAt, wholeAt } from '../../calculators/season/flat.ts';
import { type Climate, midwinter, type SkyDay, skyDay, skyOf } from '../../calculators/season/sky.ts';
import { dayOf, isLeapYear, monthOf, type Weather } from '../../calculators/season/weather.ts';
import { between } from '../support/numbers.ts';
import { anyWeather } from '../support/seasonDays.ts';
import { demoClimate, demoWeather } from '../support/seasonPlace.ts';

/** Days by the functions of `math`, of weather in which no date comes before a midwinter and again after it. */
function byTheLaws({ days, year, monthDay, rainMm, maxTempC, minTempC }: Weather, climate: Climate): readonly SkyDay[] {
  const { latitudeDeg, snowAtC, meltMmPerC, startF, bestFromF, bestToF, stopF, flushLow, flushHigh, flushFirstC, flushSecondC } = climate;
  const strongestMj = Math.max(...Array.from({ length: 366 }, (_, day) => extraterrestrialRadiationMj(latitudeDeg, day + 1)));
  const means: number[] = [];
  let [lyingMm, sinceMidwinter] = [0, Number.NaN];
  const all = Array.from({ length: days }, (_, at): SkyDay => {
    const [low, high, date] = [numberAt(minTempC, at), numberAt(maxTempC, at), wholeAt(monthDay, at)];
    const meanTempC = (high + low) / 2;
    means.push(meanTempC);
    const last = means.slice(-climate.meanOverDays);
    if (date === midwinter(latitudeDeg)) sinceMidwinter = 0;
    sinceMidwinter += degreeDays({ minDegrees: low, maxDegrees: high, baseDegrees: 0 });
    const snow = snowDay({ lyingMm, precipitationMm: numberAt(rainMm, at), meanTempC, snowAtC, meltMmPerC });
    const isUnderSnow = snow.lyingMm > 0 || lyingMm > 0;
    lyingMm = snow.lyingMm;
    const extraterrestrialMj = extraterrestrialRadiationMj(latitudeDeg, dayOfYear(monthOf(date), dayOf(date), isLeapYear(wholeAt(year, at))));
    const meanF = (last.reduce((sum, each) => sum + each, 0) / last.length) * 1.8 + 32;
    const warmth = temperatureResponse({ meanF, startF, bestFromF, bestToF, stopF });
    const flush = Number.isNaN(sinceMidwinter)
      ? 1
      : springFlush({ degreeDaysC: sinceMidwinter, low: flushLow, high: flushHigh, firstC: flushFirstC, secondC: flushSecondC });
    return {
      rainMm: snow.rainMm,
      meltMm: snow.meltMm,
      referenceMm: isUnderSnow ? 0 : climate.referenceFactor * hargreavesMm({ minTempC: low, maxTempC: high, extraterrestrialMj }),
      response: isUnderSnow ? 0 : warmth * (extraterrestrialMj / strongestMj) * flush,
      isHardFrost: low <= climate.frostC,
      rotShare: Math.max(0, climate.rotPerC * meanTempC),
      erosivityShare: snow.rainMm > 0 ? rainErosivity(snow.rainMm) : 0,
    };
  });
  const ofYear = (all.reduce((sum, { erosivityShare }) => sum + erosivityShare, 0) * 365.25) / days;
  return ofYear > 0 ? all.map((day) => ({ ...day, erosivityShare: day.erosivityShare / ofYear })) : all;
}

const daysOf = (weather: Weather, climate: Climate): readonly SkyDay[] => {
  const sky = skyOf(weather, climate);
  return Array.from({ length: sky.days }, (_, day) => skyDay(sky, day));
};
const anyClimate = fc
  .record({
    latitudeDeg: between(-60, 60),
    referenceFactor: between(0.8, 1.2),
    snowAtC: between(-2, 4),
    meltMmPerC: between(0, 6),
    flushLow: between(0.5, 1),
    flushHigh: between(1, 1.6),
    flushFirstC: between(410, 900),
    startF: between(30, 50),
    meanOverDays: fc.integer({ min: 1, max: 20 }),
  })
  .map((some): Climate => ({ ...demoClimate, ...some }));

describe('the sky', () => {
  it('is what the laws of a day say, to the last bit', () => {
    fc.assert(
      fc.property(anyWeather, anyClimate, (weather, climate) => {
        expect(daysOf(weather, climate)).toEqual(byTheLaws(weather, climate));
      }),
      { numRuns: 300 },
    );
  });
  it('is so in thirty years of the demo place', () => {
    expect(daysOf(demoWeather(), demoClimate)).toEqual(byTheLaws(demoWeather(), demoClimate));
  });
  it.each<readonly [what: string, Partial<Climate>]>([
    ['its flush over before it is at its best', { flushFirstC: 390 }],
    ['growth that stops before it is at its best', { stopF: 60 }],
    ['snow that melts by less than nothing', { meltMmPerC: -1 }],
    ['a place past the polar circle', { latitudeDeg: 70 }],
  ])('refuses %s', (_, climate) => {
    expect(() => skyOf(demoWeather(), { ...demoClimate, ...climate })).toThrow(RangeError);
  });
  it.each(['rainMm', 'maxTempC', 'minTempC'] as const)('refuses a day whose %s nobody read', (reading) => {
    const weather = demoWeather();
    const missing = weather[reading].slice();
    missing[400] = Number.NaN;
    expect(() => skyOf({ ...weather, [reading]: missing }, demoClimate)).toThrow(/day 400/);
  });
  it('refuses a night warmer than its day, and rain below nothing', () => {
    const weather = demoWeather();
    expect(() => skyOf({ ...weather, minTempC: weather.maxTempC.map((high) => high + 1) }, demoClimate)).toThrow(/low of day 0/);
    expect(() => skyOf({ ...weather, rainMm: weather.rainMm.map(() => -1) }, demoClimate)).toThrow(/rain of day 0/);
  });
});
