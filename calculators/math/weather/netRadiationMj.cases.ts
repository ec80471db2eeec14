import { checkList, tableChecks } from '../checks.ts';
import { clearSkyRadiationMj } from './clearSkyRadiationMj.ts';
import { blackBodyRadiationMj, netLongwaveMj, netRadiationMj, netShortwaveMj } from './netRadiationMj.ts';

const emitted = tableChecks({
  columns: ['σT⁴'],
  text: `
    1   27.70
    5   29.35
    10  31.52
    15  33.81
    20  36.21
    25  38.75
    30  41.41
    35  44.21
    40  47.15
    45  50.24
    48  52.16
  `,
  what: (temp) => `σT⁴ at ${temp} °C`,
  ours: (temp) => blackBodyRadiationMj(Number(temp)),
  source: 'allen-1998',
  where: 'annex 2, table 2.8',
  seen: 'print',
});

interface Day {
  readonly minTempC: number;
  readonly maxTempC: number;
  readonly vaporPressureKpa: number;
  readonly extraterrestrialMj: number;
  readonly solarMj: number;
  readonly elevationM: number;
}
/** Inputs as each example prints them; the last is exact where rounding would show. */
const days: Readonly<Record<string, Day>> = {
  'Rio,May': { minTempC: 19.1, maxTempC: 25.1, vaporPressureKpa: 2.1, extraterrestrialMj: 25.1, solarMj: 14.5, elevationM: 0 },
  'Bangkok,from-range': { minTempC: 25.6, maxTempC: 34.8, vaporPressureKpa: 2.85, extraterrestrialMj: 38.057686, solarMj: 21.9326, elevationM: 0 },
  'Bangkok,April': { minTempC: 25.6, maxTempC: 34.8, vaporPressureKpa: 2.85, extraterrestrialMj: 38.057686, solarMj: 22.651005, elevationM: 2 },
  'Uccle,6-July': { minTempC: 12.3, maxTempC: 21.5, vaporPressureKpa: 1.408624, extraterrestrialMj: 41.088376, solarMj: 22.072052, elevationM: 100 },
  'Lyon,July': { minTempC: 14.8, maxTempC: 26.6, vaporPressureKpa: 1.683, extraterrestrialMj: 40.554773, solarMj: 22.289635, elevationM: 200 },
};

const examples = tableChecks({
  columns: ['Rso', 'Rns', 'σT⁴max', 'σT⁴min', 'Rnl', 'Rn'],
  text: `
    Rio,May             18.8   -      -      -      3.5   -
    Bangkok,from-range  28.5   16.9   -      -      -     13.9
    Bangkok,April       28.54  17.44  44.10  39.06  3.11  14.33
    Uccle,6-July        30.90  17.00  -      -      3.71  13.28
    Lyon,July           30.58  -      -      -      3.68  13.48
  `,
  what: (day, column) => `${column}, ${day.replace(',', ', ')}`,
  ours: (name, column) => {
    const day = days[name];
    if (day === undefined) return Number.NaN;
    const clearSkyMj = clearSkyRadiationMj(day.extraterrestrialMj, day.elevationM);
    if (column === 'Rso') return clearSkyMj;
    if (column === 'Rns') return netShortwaveMj(day.solarMj);
    if (column === 'σT⁴max') return blackBodyRadiationMj(day.maxTempC);
    if (column === 'σT⁴min') return blackBodyRadiationMj(day.minTempC);
    return column === 'Rnl' ? netLongwaveMj({ ...day, clearSkyMj }) : netRadiationMj({ ...day, clearSkyMj });
  },
  source: 'allen-1998',
  where: 'examples 11, 12, 16, 17, 18, 20',
  seen: 'print',
});

export default checkList('netRadiationMj', [
  ...emitted,
  ...examples,
  {
    what: 'Rns, Rio de Janeiro in May',
    ours: () => netShortwaveMj(14.45),
    printed: '11.1',
    source: 'allen-1998',
    where: 'example 12',
    seen: 'print',
  },
]);
