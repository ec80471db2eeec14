import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atmosphericPressureKpa } from '../../calculators/math/weather/atmosphericPressureKpa.ts';
import { dayOfYear } from '../../calculators/math/weather/dayOfYear.ts';
import { clippedDegreeDays, degreeDays } from '../../calculators/math/weather/degreeDays.ts';
import { daylightHours, extraterrestrialRadiationMj } from '../../calculators/math/weather/extraterrestrialRadiationMj.ts';
import { gammaDeviate } from '../../calculators/math/weather/gammaDeviate.ts';
import { generatedRainMm } from '../../calculators/math/weather/generatedRainMm.ts';
import { hargreavesMm } from '../../calculators/math/weather/hargreavesMm.ts';
import { penmanMonteithFromTemperatureMm, penmanMonteithMm } from '../../calculators/math/weather/penmanMonteithMm.ts';
import { resampledYears } from '../../calculators/math/weather/resampledYears.ts';
import { saturationVaporPressureKpa, vaporPressureSlopeKpaPerC } from '../../calculators/math/weather/saturationVaporPressureKpa.ts';
import { seededRandom } from '../../calculators/math/weather/seededRandom.ts';
import { snowDay } from '../../calculators/math/weather/snowDay.ts';
import { temperatureDepartures } from '../../calculators/math/weather/temperatureDepartures.ts';
import { chainTotal, wetDayChain, wetDayShare } from '../../calculators/math/weather/wetDayChain.ts';
import { windAt2MetersMPerS } from '../../calculators/math/weather/windAt2MetersMPerS.ts';
import { between } from '../support/numbers.ts';

const day = fc.integer({ min: 1, max: 365 });
const seed = fc.integer({ min: 1, max: 4_000_000_000 });
const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

describe('the calendar', () => {
  it('numbers every day of both kinds of year in turn', () => {
    for (const isLeap of [false, true]) {
      const lengths = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
      const numbers = lengths.flatMap((length, month) => Array.from({ length }, (_, index) => dayOfYear(month + 1, index + 1, isLeap)));
      expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    }
  });
});

describe('air and sun', () => {
  it('pressure falls with height; the slope is that of the vapor pressure', () => {
    fc.assert(
      fc.property(between(0, 4000), between(1, 500), (elevation, more) => {
        expect(atmosphericPressureKpa(elevation + more)).toBeLessThan(atmosphericPressureKpa(elevation));
      }),
    );
    fc.assert(
      fc.property(between(-20, 45), (temp) => {
        const step = 1e-4;
        const slope = (saturationVaporPressureKpa(temp + step) - saturationVaporPressureKpa(temp - step)) / (2 * step);
        // The handbook rounds 17.27 × 237.3 = 4098.17 to 4098.
        expect(Math.abs(vaporPressureSlopeKpaPerC(temp) / slope - 1)).toBeLessThan(1e-4);
      }),
    );
  });
  it('day and night of opposite latitudes share 24 hours, and the poles have both extremes', () => {
    fc.assert(
      fc.property(between(-90, 90), day, (latitude, number) => {
        expect(Math.abs(daylightHours(latitude, number) + daylightHours(-latitude, number) - 24)).toBeLessThan(1e-9);
        expect(extraterrestrialRadiationMj(latitude, number)).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
    expect(daylightHours(80, 172)).toBe(24);
    expect(extraterrestrialRadiationMj(80, 355)).toBe(0);
  });
  it('wind at 2 m needs next to no conversion', () => {
    fc.assert(
      fc.property(between(0, 20), (wind) => {
        expect(Math.abs(windAt2MetersMPerS(wind, 2) - wind)).toBeLessThanOrEqual(1e-3 * wind);
      }),
    );
  });
});

describe('reference evapotranspiration', () => {
  const temps = fc.tuple(between(-5, 25), between(0, 18)).map(([minTempC, range]) => ({ minTempC, maxTempC: minTempC + range }));
  it('rises with radiation, falls with damp air', () => {
    fc.assert(
      fc.property(temps, between(0.3, 6), between(5, 15), between(0.1, 5), ({ minTempC, maxTempC }, windMPerS, netRadiationMj, more) => {
        const vaporPressureKpa = 0.5 * saturationVaporPressureKpa(minTempC);
        const air = { minTempC, maxTempC, windMPerS, soilHeatMj: 0, elevationM: 300 };
        const base = penmanMonteithMm({ ...air, vaporPressureKpa, netRadiationMj });
        expect(penmanMonteithMm({ ...air, vaporPressureKpa, netRadiationMj: netRadiationMj + more })).toBeGreaterThan(base);
        expect(penmanMonteithMm({ ...air, vaporPressureKpa: vaporPressureKpa * 1.5, netRadiationMj })).toBeLessThan(base);
      }),
    );
  });
  it('from temperature alone is never negative, and zero without a range by Hargreaves', () => {
    fc.assert(
      fc.property(temps, between(-60, 60), day, ({ minTempC, maxTempC }, latitudeDeg, dayNumber) => {
        const place = { latitudeDeg, dayOfYear: dayNumber, elevationM: 300, setting: 'interior' } as const;
        expect(penmanMonteithFromTemperatureMm({ minTempC, maxTempC, ...place })).toBeGreaterThanOrEqual(0);
        const extraterrestrialMj = Math.max(0, extraterrestrialRadiationMj(latitudeDeg, dayNumber));
        expect(hargreavesMm({ minTempC, maxTempC, extraterrestrialMj })).toBeGreaterThanOrEqual(0);
        expect(hargreavesMm({ minTempC, maxTempC: minTempC, extraterrestrialMj })).toBe(0);
      }),
    );
  });
});

describe('degree days', () => {
  it('are the same by both counts where nothing is drawn in, and never fewer when cold nights are', () => {
    fc.assert(
      fc.property(between(20, 100), between(0, 40), (minDegrees, range) => {
        const temps = { minDegrees, maxDegrees: minDegrees + range, baseDegrees: 50 };
        const clipped = clippedDegreeDays({ ...temps, upperDegrees: 200 });
        if (minDegrees >= 50) expect(Math.abs(clipped - degreeDays(temps))).toBeLessThan(1e-9);
        expect(clipped).toBeGreaterThanOrEqual(degreeDays(temps) - 1e-9);
      }),
    );
  });
});

describe('random numbers', () => {
  it('repeat from a seed, differ between seeds, and stay inside', () => {
    fc.assert(
      fc.property(seed, (number) => {
        const [one, same, other] = [seededRandom(number), seededRandom(number), seededRandom(number + 1)];
        const drawn = Array.from({ length: 20 }, one);
        expect(Array.from({ length: 20 }, same)).toEqual(drawn);
        expect(Array.from({ length: 20 }, other)).not.toEqual(drawn);
        expect(drawn.every((each) => each > 0 && each < 1)).toBe(true);
      }),
    );
  });
  it('from a gamma distribution have its mean and variance', () => {
    for (const [shape, scale] of [
      [0.6, 11],
      [1, 7],
      [3.8, 0.5],
    ] as const) {
      const random = seededRandom(20_240_601);
      const drawn = Array.from({ length: 40_000 }, () => gammaDeviate(shape, scale, random));
      const average = mean(drawn);
      const variance = mean(drawn.map((each) => (each - average) ** 2));
      // Four standard errors of the mean, and a twelfth for the variance of a skewed draw.
      expect(Math.abs(average - shape * scale)).toBeLessThan(4 * scale * Math.sqrt(shape / drawn.length));
      expect(Math.abs(variance / (shape * scale * scale) - 1)).toBeLessThan(1 / 12);
    }
  });
});

describe('generated rain', () => {
  const seattleJanuary = { wetAfterWet: 0.7344, wetAfterDry: 0.322, shape: 0.9862, scaleMm: 7.1591 };
  it('has the totals that the chain promises', () => {
    const random = seededRandom(7);
    const chains = Array.from({ length: 12 }, () => seattleJanuary);
    const months = Array.from({ length: 31 }, () => 1);
    const totals = Array.from({ length: 3000 }, (_, index) =>
      generatedRainMm({ months, chains, random, startsAfterWet: index % 2 === 0 }).reduce((sum, each) => sum + each, 0),
    );
    const { meanMm, varianceMm2 } = chainTotal(seattleJanuary, 31);
    expect(Math.abs(mean(totals) - meanMm)).toBeLessThan(4 * Math.sqrt(varianceMm2 / totals.length) + 0.01 * meanMm);
    const variance = mean(totals.map((each) => (each - meanMm) ** 2));
    // The formula for the variance holds for long months; 31 days come within a tenth.
    expect(Math.abs(variance / varianceMm2 - 1)).toBeLessThan(0.1);
  });
  it('gives back the chances that it was made with', () => {
    const random = seededRandom(11);
    const months = Array.from({ length: 60_000 }, () => 5);
    const fitted = wetDayChain(generatedRainMm({ months, chains: Array.from({ length: 12 }, () => seattleJanuary), random }), months)[4];
    expect(Math.abs((fitted?.wetAfterWet ?? 0) - 0.7344)).toBeLessThan(0.01);
    expect(Math.abs((fitted?.wetAfterDry ?? 0) - 0.322)).toBeLessThan(0.01);
    expect(Math.abs((fitted?.shape ?? 0) - 0.9862)).toBeLessThan(0.04);
  });
  it('long-run share is a fixed point of the chain', () => {
    fc.assert(
      fc.property(between(0, 1), between(0.001, 1), (wetAfterWet, wetAfterDry) => {
        const share = wetDayShare(wetAfterWet, wetAfterDry);
        expect(Math.abs(share * wetAfterWet + (1 - share) * wetAfterDry - share)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe('resampled years', () => {
  it('come from the record, in unbroken blocks', () => {
    fc.assert(
      fc.property(seed, fc.integer({ min: 4, max: 40 }), fc.integer({ min: 1, max: 4 }), (number, years, blockYears) => {
        const drawn = resampledYears({ years, blockYears, random: seededRandom(number) });
        expect(drawn).toHaveLength(years);
        for (const [position, year] of drawn.entries()) {
          expect(year >= 0 && year < years).toBe(true);
          if (position % blockYears > 0) expect(year).toBe((drawn[position - 1] ?? 0) + 1);
        }
      }),
    );
  });
  it('drawn singly, miss about a third: n [1 − (1 − 1/n)ⁿ] differ', () => {
    const random = seededRandom(5);
    // Counts from the formula, worked out apart.
    for (const [years, expected] of [
      [10, 6.5132],
      [30, 19.1502],
      [50, 31.7915],
    ] as const) {
      const distinct = Array.from({ length: 4000 }, () => new Set(resampledYears({ years, blockYears: 1, random })).size);
      expect(Math.abs(mean(distinct) - expected)).toBeLessThan(0.15);
    }
  });
});

describe('snow', () => {
  const rule = { snowAtC: 1, meltMmPerC: 3.5 };
  it('keeps the water: what fell is rain, melt, or still lies', () => {
    fc.assert(
      fc.property(between(0, 300), between(0, 80), between(-30, 30), (lyingMm, precipitationMm, meanTempC) => {
        const after = snowDay({ ...rule, lyingMm, precipitationMm, meanTempC });
        expect(Math.abs(lyingMm + precipitationMm - after.rainMm - after.meltMm - after.lyingMm)).toBeLessThan(1e-9);
        expect(Math.min(after.rainMm, after.meltMm, after.lyingMm)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
  it('falls at the threshold and rain above it, and melts only above freezing', () => {
    const day = { ...rule, lyingMm: 20, precipitationMm: 4 };
    expect(snowDay({ ...day, meanTempC: 1 }).rainMm).toBe(0);
    expect(snowDay({ ...day, meanTempC: 1.01 }).rainMm).toBe(4);
    expect(snowDay({ ...day, meanTempC: 0 }).meltMm).toBe(0);
    expect(snowDay({ ...day, meanTempC: 2 }).meltMm).toBe(7);
    expect(snowDay({ ...day, meanTempC: 20 })).toEqual({ rainMm: 4, meltMm: 20, lyingMm: 0 });
  });
});

describe('departures of temperature', () => {
  it('have spread one, and lean on yesterday and on each other as asked', () => {
    const next = temperatureDepartures({ dayToDayCorrelation: 0.65, highToLowCorrelation: 0.8, random: seededRandom(5) });
    const days = Array.from({ length: 40_000 }, next).slice(20);
    const [highs, lows] = [days.map(({ high }) => high), days.map(({ low }) => low)];
    const product = (one: readonly number[], other: readonly number[]): number => mean(one.map((each, at) => each * (other[at] ?? Number.NaN)));
    // Forty thousand days that lean on each other know a correlation to about two hundredths.
    for (const [found, wanted] of [
      [product(highs, highs), 1],
      [product(lows, lows), 1],
      [product(highs.slice(0, -1), highs.slice(1)), 0.65],
      [product(lows.slice(0, -1), lows.slice(1)), 0.65],
      [product(highs, lows), 0.8],
    ] as const) {
      expect(Math.abs(found - wanted)).toBeLessThan(0.04);
    }
    expect(Math.abs(mean(highs))).toBeLessThan(0.04);
  });
});
