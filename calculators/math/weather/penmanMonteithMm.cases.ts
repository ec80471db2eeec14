import { checkList, tableChecks } from '../checks.ts';
import { actualVaporPressureKpa } from './actualVaporPressureKpa.ts';
import { clearSkyRadiationMj } from './clearSkyRadiationMj.ts';
import { daylightHours, extraterrestrialRadiationMj } from './extraterrestrialRadiationMj.ts';
import { netRadiationMj } from './netRadiationMj.ts';
import { penmanMonteithFromTemperatureMm, penmanMonteithMm } from './penmanMonteithMm.ts';
import { solarRadiationMj } from './solarRadiationMj.ts';
import { windAt2MetersMPerS } from './windAt2MetersMPerS.ts';

function bangkokApril(): number {
  const extraterrestrialMj = extraterrestrialRadiationMj(13 + 44 / 60, 105);
  const air = { minTempC: 25.6, maxTempC: 34.8, vaporPressureKpa: 2.85 };
  const solarMj = solarRadiationMj(extraterrestrialMj, 8.5, daylightHours(13 + 44 / 60, 105));
  const net = netRadiationMj({ ...air, solarMj, clearSkyMj: clearSkyRadiationMj(extraterrestrialMj, 2) });
  return penmanMonteithMm({ ...air, windMPerS: 2, netRadiationMj: net, soilHeatMj: 0.14 * (30.2 - 29.2), elevationM: 2 });
}

function uccleJuly(): number {
  const latitudeDeg = 50 + 48 / 60;
  const extraterrestrialMj = extraterrestrialRadiationMj(latitudeDeg, 187);
  const temps = { minTempC: 12.3, maxTempC: 21.5 };
  const vaporPressureKpa = actualVaporPressureKpa({ ...temps, minHumidityPercent: 63, maxHumidityPercent: 84 });
  const solarMj = solarRadiationMj(extraterrestrialMj, 9.25, daylightHours(latitudeDeg, 187));
  const net = netRadiationMj({ ...temps, vaporPressureKpa, solarMj, clearSkyMj: clearSkyRadiationMj(extraterrestrialMj, 100) });
  const windMPerS = windAt2MetersMPerS(10 / 3.6, 10);
  return penmanMonteithMm({ ...temps, vaporPressureKpa, windMPerS, netRadiationMj: net, soilHeatMj: 0, elevationM: 100 });
}

const lyonJuly = (windMPerS: number): number =>
  penmanMonteithFromTemperatureMm({
    minTempC: 14.8,
    maxTempC: 26.6,
    latitudeDeg: 45 + 43 / 60,
    dayOfYear: 196,
    elevationM: 200,
    setting: 'interior',
    windMPerS,
  });

export default checkList('penmanMonteithMm', [
  { what: 'Bangkok, April, from monthly means', ours: bangkokApril, printed: '5.72', source: 'allen-1998', where: 'example 17', seen: 'print' },
  {
    what: 'Bangkok, April, exact',
    ours: bangkokApril,
    printed: '5.716125',
    source: 'allen-1998',
    where: 'example 17, worked out apart with all digits',
    seen: 'computed',
  },
  { what: 'Uccle, 6 July, from daily values', ours: uccleJuly, printed: '3.88', source: 'allen-1998', where: 'example 18', seen: 'print' },
  {
    what: 'Uccle, 6 July, exact',
    ours: uccleJuly,
    printed: '3.880259',
    source: 'allen-1998',
    where: 'example 18, worked out apart with all digits',
    seen: 'computed',
  },
  ...tableChecks({
    columns: ['ETo'],
    text: `
      2  4.56
      1  4.2
      3  4.8
    `,
    what: (wind) => `Lyon, July, from highest and lowest temperature only, wind taken as ${wind} m/s`,
    ours: (wind) => lyonJuly(Number(wind)),
    source: 'allen-1998',
    where: 'example 20',
    seen: 'print',
  }),
  {
    what: 'Lyon, July, exact',
    ours: () => lyonJuly(2),
    printed: '4.560439',
    source: 'allen-1998',
    where: 'example 20, worked out apart with all digits',
    seen: 'computed',
  },
]);
