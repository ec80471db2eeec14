import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvParse } from 'd3-dsv';
import { dayOfYear } from '../../calculators/math/weather/dayOfYear.ts';
import { root } from './files.ts';

export interface OpenDay {
  readonly year: number;
  readonly month: number;
  readonly dayOfYear: number;
  readonly rainMm: number;
  readonly minTempC: number;
  readonly maxTempC: number;
}

/** The open daily weather set: `vega-datasets`, data/weather.csv, Seattle and New York, 2012 to 2015. */
export function openWeather(location: 'Seattle' | 'New York'): OpenDay[] {
  const text = readFileSync(join(root, 'node_modules/vega-datasets/data/weather.csv'), 'utf8');
  return csvParse(text)
    .filter((row) => row['location'] === location)
    .map((row) => {
      const [year = 0, month = 0, day = 0] = (row['date'] ?? '').split('-').map(Number);
      return {
        year,
        month,
        dayOfYear: dayOfYear(month, day, year % 4 === 0),
        rainMm: Number(row['precipitation']),
        minTempC: Number(row['temp_min']),
        maxTempC: Number(row['temp_max']),
      };
    });
}
