import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { meanSaturationVaporPressureKpa, saturationVaporPressureKpa, vaporPressureSlopeKpaPerC } from './saturationVaporPressureKpa.ts';

const annex = tableChecks({
  columns: ['e°', 'Δ'],
  text: `
    1   .657    .047
    5   .872    .061
    10  1.228   .082
    15  1.705   .110
    20  2.338   .145
    25  3.168   .189
    30  4.243   .243
    35  5.623   .311
    40  7.376   .393
    45  9.582   .493
    48  11.163  .562
  `,
  what: (temp, column) => `${column === 'Δ' ? 'Slope of saturation vapor pressure' : 'Saturation vapor pressure'} at ${temp} °C`,
  ours: (temp, column) => (column === 'Δ' ? vaporPressureSlopeKpaPerC(Number(temp)) : saturationVaporPressureKpa(Number(temp))),
  source: 'allen-1998',
  where: 'annex 2, tables 2.3 and 2.4',
  seen: 'print',
});

/** Row: place. Columns: e° of the highest and lowest temperature, their mean, slope at the mean temperature. */
const days: Readonly<Record<string, readonly [min: number, max: number]>> = { Bangkok: [25.6, 34.8], Uccle: [12.3, 21.5], Lyon: [14.8, 26.6] };
const examples = tableChecks({
  columns: ['e°(Tmax)', 'e°(Tmin)', 'es', 'Δ'],
  text: `
    Bangkok  5.56  3.28  4.42   .246
    Uccle    -     -     1.997  .122
    Lyon     -     1.68  2.58   .150
  `,
  what: (place, column) => `${column}, ${place}`,
  ours: (place, column) => {
    const [min, max] = needThere('saturationVaporPressureKpa', place, days[place]);
    if (column === 'es') return meanSaturationVaporPressureKpa(min, max);
    if (column === 'Δ') return vaporPressureSlopeKpaPerC((min + max) / 2);
    return saturationVaporPressureKpa(column === 'e°(Tmax)' ? max : min);
  },
  source: 'allen-1998',
  where: 'examples 17, 18, 20',
  seen: 'print',
});

const example3 = tableChecks({
  columns: ['e°(Tmax)', 'e°(Tmin)', 'es'],
  text: '15/24.5  3.075  1.705  2.39',
  what: (temps, column) => `${column} of a day with ${temps} °C`,
  ours: (_, column) => (column === 'es' ? meanSaturationVaporPressureKpa(15, 24.5) : saturationVaporPressureKpa(column === 'e°(Tmax)' ? 24.5 : 15)),
  source: 'allen-1998',
  where: 'example 3',
  seen: 'transcription',
});

export default checkList('saturationVaporPressureKpa', [...annex, ...examples, ...example3]);
