import { test } from 'vitest';
import { gammaFitLikelihood, gammaFitThom } from '../../calculators/math/drought/gammaFitThom.ts';
import { standardizedPrecipitationIndex } from '../../calculators/math/drought/standardizedPrecipitationIndex.ts';
import { greenAmptDepthCm } from '../../calculators/math/infiltration/greenAmptDepthCm.ts';
import { stormInfiltration } from '../../calculators/math/infiltration/stormInfiltration.ts';
import { retentionIn } from '../../calculators/math/runoff/retentionIn.ts';
import { runoffIn } from '../../calculators/math/runoff/runoffIn.ts';
import { depletionFraction } from '../../calculators/math/soilWater/depletionFraction.ts';
import { dualCoefficientDay } from '../../calculators/math/soilWater/dualCoefficientDay.ts';
import { rootZoneDay } from '../../calculators/math/soilWater/rootZoneDay.ts';
import { extraterrestrialRadiationMj } from '../../calculators/math/weather/extraterrestrialRadiationMj.ts';
import { generatedRainMm } from '../../calculators/math/weather/generatedRainMm.ts';
import { hargreavesMm } from '../../calculators/math/weather/hargreavesMm.ts';
import { seededRandom } from '../../calculators/math/weather/seededRandom.ts';
import { wetDayChain } from '../../calculators/math/weather/wetDayChain.ts';
import { openWeather } from '../support/openWeather.ts';

const days = openWeather('Seattle').map((day) => ({
  ...day,
  referenceMm: hargreavesMm({ ...day, extraterrestrialMj: extraterrestrialRadiationMj(47.45, day.dayOfYear) }),
}));
const months = days.map(({ month }) => month);
const rainMm = days.map((day) => day.rainMm);
const soil = { conductivityCmPerHr: 0.65, suctionCm: 16.7, moistureDeficit: 0.34 };

const brief = { time: 300, warmupTime: 50 };

test('a storm', async ({ bench }) => {
  const steps = Array.from({ length: 48 }, (_, index) => ({ hours: 0.5, rainCm: index === 24 ? 4 : 0.1 }));
  await bench.compare(
    bench('runoff by curve number', () => {
      runoffIn({ rainIn: 3, retentionIn: retentionIn(74), abstractionRatio: 0.2 });
    }),
    bench('Green-Ampt depth after an hour under water', () => {
      greenAmptDepthCm({ hours: 1, soil, startCm: 0 });
    }),
    bench('Green-Ampt storm of 48 steps', () => {
      stormInfiltration({ steps, soil });
    }),
    brief,
  );
});

test('four years of days', async ({ bench }) => {
  const ground = {
    basalCoefficient: 0.7,
    maximumCoefficient: 1.2,
    exposedShare: 0.3,
    readilyEvaporableMm: 9,
    evaporableMm: 20,
    totalAvailableMm: 78,
    depletionFraction: 0.6,
    dayOrder: 'after-rain',
  } as const;
  const chains = wetDayChain(rainMm, months);
  await bench.compare(
    bench('reference evapotranspiration from temperature', () => {
      for (const day of days) hargreavesMm({ ...day, extraterrestrialMj: extraterrestrialRadiationMj(47.45, day.dayOfYear) });
    }),
    bench('root zone with one coefficient', () => {
      let depletionMm = 0;
      for (const day of days) {
        const cropUseMm = 0.85 * day.referenceMm;
        const fraction = depletionFraction(0.6, cropUseMm);
        const inputs = { rainMm: day.rainMm, cropUseMm, totalAvailableMm: 78, depletionFraction: fraction, dayOrder: 'after-rain' } as const;
        ({ depletionMm } = rootZoneDay({ ...inputs, depletionMm }));
      }
    }),
    bench('root zone with plants and bare ground apart', () => {
      let depletionMm = 0;
      let surfaceDepletionMm = 0;
      for (const day of days) {
        ({ depletionMm, surfaceDepletionMm } = dualCoefficientDay({ ...ground, ...day, depletionMm, surfaceDepletionMm }));
      }
    }),
    bench('generated rain', () => {
      generatedRainMm({ months, chains, random: seededRandom(1) });
    }),
    brief,
  );
});

test('a record of 50 years', async ({ bench }) => {
  const amounts = rainMm.filter((rain) => rain > 0).slice(0, 50);
  await bench.compare(
    bench('gamma fit by Thom', () => {
      gammaFitThom(amounts);
    }),
    bench('gamma fit by likelihood', () => {
      gammaFitLikelihood(amounts);
    }),
    bench('standardized precipitation index', () => {
      standardizedPrecipitationIndex({ amount: 4, record: amounts, fit: 'likelihood' });
    }),
    brief,
  );
});
