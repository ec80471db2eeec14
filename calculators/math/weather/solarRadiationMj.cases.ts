import { checkList } from '../checks.ts';
import { daylightHours, extraterrestrialRadiationMj } from './extraterrestrialRadiationMj.ts';
import { solarRadiationFromRangeMj, solarRadiationMj } from './solarRadiationMj.ts';

const rio = -(22 + 54 / 60);
const lyon = 45 + 43 / 60;
const bangkok = 13 + 44 / 60;
const uccle = 50 + 48 / 60;
const fromSunshine = (latitudeDeg: number, day: number, hours: number): number =>
  solarRadiationMj(extraterrestrialRadiationMj(latitudeDeg, day), hours, daylightHours(latitudeDeg, day));

export default checkList('solarRadiationMj', [
  {
    what: 'Rio de Janeiro in May, 220 hours of sun in the month',
    ours: () => fromSunshine(rio, 135, 220 / 31),
    printed: '14.5',
    source: 'allen-1998',
    where: 'example 10',
    seen: 'print',
  },
  {
    what: 'Bangkok, April, 8.5 hours of sun',
    ours: () => fromSunshine(bangkok, 105, 8.5),
    printed: '22.65',
    source: 'allen-1998',
    where: 'example 17',
    seen: 'print',
  },
  {
    what: 'Uccle, 6 July, 9.25 hours of sun',
    ours: () => fromSunshine(uccle, 187, 9.25),
    printed: '22.07',
    source: 'allen-1998',
    where: 'example 18',
    seen: 'print',
  },
  {
    what: 'Lyon, July, 14.8 to 26.6 °C, interior',
    ours: () =>
      solarRadiationFromRangeMj({
        extraterrestrialMj: extraterrestrialRadiationMj(lyon, 196),
        minTempC: 14.8,
        maxTempC: 26.6,
        elevationM: 200,
        setting: 'interior',
      }),
    printed: '22.29',
    source: 'allen-1998',
    where: 'example 20 (22.3 in example 15)',
    seen: 'print',
  },
  {
    what: 'Bangkok, April, 25.6 to 34.8 °C, coastal',
    ours: () =>
      solarRadiationFromRangeMj({
        extraterrestrialMj: extraterrestrialRadiationMj(bangkok, 105),
        minTempC: 25.6,
        maxTempC: 34.8,
        elevationM: 0,
        setting: 'coastal',
      }),
    printed: '21.9',
    source: 'allen-1998',
    where: 'example 16',
    seen: 'print',
  },
]);
