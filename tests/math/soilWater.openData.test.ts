import { describe, expect, it } from 'vitest';
import { failing } from '../../calculators/math/checks.ts';
import { depletionFraction } from '../../calculators/math/soilWater/depletionFraction.ts';
import { type DayOrder, rootZoneDay } from '../../calculators/math/soilWater/rootZoneDay.ts';
import { totalAvailableWaterMm } from '../../calculators/math/soilWater/totalAvailableWaterMm.ts';
import { extraterrestrialRadiationMj } from '../../calculators/math/weather/extraterrestrialRadiationMj.ts';
import { hargreavesMm } from '../../calculators/math/weather/hargreavesMm.ts';
import { openWeather } from '../support/openWeather.ts';

const places = [
  { place: 'Seattle', latitudeDeg: 47.45 },
  { place: 'New York', latitudeDeg: 40.78 },
] as const;

interface Totals {
  rain: number;
  reference: number;
  crop: number;
  use: number;
  drainage: number;
  stressedDays: number;
  start: number;
  end: number;
}

/** One unbroken run of four years under a crop coefficient of 0.85, roots 0.6 m deep, from a full soil, without runoff; totals by year. */
function run(place: 'Seattle' | 'New York', latitudeDeg: number, dayOrder: DayOrder): Map<number, Totals> {
  const totalAvailableMm = totalAvailableWaterMm({ fieldCapacityShare: 0.25, wiltingPointShare: 0.12, rootDepthM: 0.6 });
  const years = new Map<number, Totals>();
  let depletionMm = 0;
  for (const day of openWeather(place)) {
    const referenceMm = hargreavesMm({ ...day, extraterrestrialMj: extraterrestrialRadiationMj(latitudeDeg, day.dayOfYear) });
    const cropUseMm = 0.85 * referenceMm;
    const totals = years.get(day.year) ?? {
      rain: 0,
      reference: 0,
      crop: 0,
      use: 0,
      drainage: 0,
      stressedDays: 0,
      start: depletionMm,
      end: depletionMm,
    };
    const after = rootZoneDay({
      depletionMm,
      rainMm: day.rainMm,
      cropUseMm,
      totalAvailableMm,
      depletionFraction: depletionFraction(0.6, cropUseMm),
      dayOrder,
    });
    depletionMm = after.depletionMm;
    years.set(day.year, {
      rain: totals.rain + day.rainMm,
      reference: totals.reference + referenceMm,
      crop: totals.crop + cropUseMm,
      use: totals.use + after.useMm,
      drainage: totals.drainage + after.drainageMm,
      stressedDays: totals.stressedDays + (after.stress < 1 ? 1 : 0),
      start: totals.start,
      end: depletionMm,
    });
  }
  return years;
}

/** Worked out from the same open data by another program: the same equations, written apart. Depths in mm. */
const columns = ['rain', 'reference', 'crop', 'use', 'drainage', 'stressedDays', 'end'] as const;
const expected: Readonly<Record<DayOrder, string>> = {
  'start-of-day': `
    Seattle,2012   1226.0  799.087  679.224  398.159  828.443  116  0.601
    Seattle,2014   1232.8  866.227  736.293  422.086  809.689  115  0.999
    Seattle,2015   1139.2  898.845  764.018  381.669  757.713  125  1.182
    New-York,2015  973.6   932.757  792.844  615.775  355.586  97   0
  `,
  'after-rain': `
    Seattle,2012   1226.0  799.087  679.224  397.354  829.457  115  0.810
    Seattle,2014   1232.8  866.227  736.293  421.549  810.096  114  1.322
    Seattle,2015   1139.2  898.845  764.018  381.136  758.203  126  1.461
    New-York,2015  973.6   932.757  792.844  617.177  353.981  99   0.626
  `,
};

describe.each(['start-of-day', 'after-rain'] as const)('the root zone on four years of open weather, %s', (dayOrder) => {
  const runs = new Map(places.map(({ place, latitudeDeg }) => [place.replace(' ', '-'), run(place, latitudeDeg, dayOrder)]));

  it('gives the yearly totals of another program', () => {
    const problems = expected[dayOrder]
      .trim()
      .split('\n')
      .flatMap((line) => {
        const [head = '', ...cells] = line.trim().split(/\s+/);
        const [place = '', year = ''] = head.split(',');
        const totals = runs.get(place)?.get(Number(year));
        return columns.flatMap((column, index) => {
          const printed = cells[index] ?? '';
          const ours = () => totals?.[column] ?? Number.NaN;
          return failing({ what: `${head} ${column}`, ours, printed, source: 'vega-datasets', where: 'weather.csv', seen: 'computed' }) ?? [];
        });
      });
    expect(problems).toEqual([]);
  });

  it('loses no water in any year', () => {
    for (const [place, years] of runs) {
      for (const [year, { rain, use, drainage, start, end }] of years) {
        expect(Math.abs(rain - use - drainage + (end - start)), `${place} ${year}`).toBeLessThan(1e-9);
      }
    }
  });
});
