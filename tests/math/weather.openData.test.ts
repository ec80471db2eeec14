import { describe, expect, it } from 'vitest';
import { failing, tableChecks } from '../../calculators/math/checks.ts';
import { degreeDays } from '../../calculators/math/weather/degreeDays.ts';
import { wetDayChain, wetDayCounts } from '../../calculators/math/weather/wetDayChain.ts';
import { openWeather } from '../support/openWeather.ts';

const named = (place: string): 'Seattle' | 'New York' => (place === 'Seattle' ? 'Seattle' : 'New York');
const source = { source: 'vega-datasets', where: 'weather.csv, worked out by another program', seen: 'computed' } as const;

describe('the open daily weather', () => {
  it('has the monthly rain of another count', () => {
    const months = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11', '12'];
    const checks = tableChecks({
      columns: [...months, 'year'],
      text: `
        Seattle,2012   173.3  92.3  183.0  68.1   52.2  75.1  26.3  0.0   0.9    170.3  210.5  174.0  1226.0
        Seattle,2013   105.7  40.3  69.7   149.6  60.5  33.1  0.0   34.4  156.8  39.2   96.3   42.4   828.0
        New-York,2012  -      -     -      -      -     -     -     -     -      -      -      -      1012.5
        New-York,2013  -      -     -      -      -     -     -     -     -      -      -      -      902.7
        New-York,2014  -      -     -      -      -     -     -     -     -      -      -      -      1289.8
      `,
      what: (row, column) => `${row} ${column}`,
      ours: (row, column) => {
        const [place = '', year = ''] = row.split(',');
        return openWeather(named(place))
          .filter((day) => day.year === Number(year) && (column === 'year' || day.month === Number(column)))
          .reduce((sum, { rainMm }) => sum + rainMm, 0);
      },
      ...source,
    });
    expect(checks.map(failing).filter((problem) => problem !== undefined)).toEqual([]);
  });

  it('has the degree days of another count', () => {
    const bases: Readonly<Record<string, number>> = { '0C': 0, '40F': 40 / 9, '10C': 10 };
    const checks = tableChecks({
      columns: ['0C', '40F', '10C'],
      text: `
        Seattle,2012   4134.65  2574.878  1133.40
        Seattle,2015   4793.30  3205.000  1541.05
        New-York,2012  5120.50  3609.122  2140.55
        New-York,2015  5103.65  3752.694  2290.35
      `,
      what: (row, column) => `${row} above ${column}`,
      ours: (row, column) => {
        const [place = '', year = ''] = row.split(',');
        return openWeather(named(place))
          .filter((day) => day.year === Number(year))
          .reduce(
            (sum, { minTempC, maxTempC }) =>
              sum + degreeDays({ minDegrees: minTempC, maxDegrees: maxTempC, baseDegrees: bases[column] ?? Number.NaN }),
            0,
          );
      },
      ...source,
    });
    expect(checks.map(failing).filter((problem) => problem !== undefined)).toEqual([]);
  });

  it('fits the chain of wet days that another program fits', () => {
    const checks = tableChecks({
      columns: ['dryToDry', 'dryToWet', 'wetToDry', 'wetToWet', 'wetAfterDry', 'wetAfterWet', 'shape', 'scaleMm'],
      text: `
        Seattle,1    40   19  17  47  .3220  .7344  .9862   7.1591
        Seattle,4    34   26  27  33  .4333  .5500  1.0660  5.9690
        Seattle,7    103  9   10  2   .0804  .1667  .6168   7.1040
        Seattle,8    91   12  11  10  .1165  .4762  .6659   11.1743
        Seattle,10   48   18  15  43  .2727  .7414  .8514   9.6934
        Seattle,12   25   16  18  65  .3902  .7831  .9731   7.9000
        New-York,1   56   25  25  17  .3086  .4048  .8814   8.6516
        New-York,4   67   18  21  14  .2118  .4000  .5810   18.2325
        New-York,7   58   25  26  15  .3012  .3659  .7073   9.8366
        New-York,10  67   23  22  12  .2556  .3529  .5838   12.9990
      `,
      what: (row, column) => `${row} ${column}`,
      ours: (row, column) => {
        const [place = '', month = ''] = row.split(',');
        const days = openWeather(named(place));
        const rainMm = days.map((day) => day.rainMm);
        const months = days.map((day) => day.month);
        const fitted = { ...wetDayCounts(rainMm, months)[Number(month) - 1], ...wetDayChain(rainMm, months)[Number(month) - 1] };
        return new Map<string, number>(Object.entries(fitted)).get(column) ?? Number.NaN;
      },
      ...source,
    });
    expect(checks.map(failing).filter((problem) => problem !== undefined)).toEqual([]);
  });
});
