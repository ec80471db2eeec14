import { checkList } from '../checks.ts';
import { actualVaporPressureKpa } from './actualVaporPressureKpa.ts';

export default checkList('actualVaporPressureKpa', [
  {
    what: 'Uccle, 12.3 to 21.5 °C, 63 to 84 % humidity',
    ours: () => actualVaporPressureKpa({ minTempC: 12.3, maxTempC: 21.5, minHumidityPercent: 63, maxHumidityPercent: 84 }),
    printed: '1.409',
    source: 'allen-1998',
    where: 'example 18',
    seen: 'print',
  },
  {
    what: '18 to 25 °C, 54 to 82 % humidity',
    ours: () => actualVaporPressureKpa({ minTempC: 18, maxTempC: 25, minHumidityPercent: 54, maxHumidityPercent: 82 }),
    printed: '1.70',
    source: 'allen-1998',
    where: 'example 5',
    seen: 'transcription',
  },
]);
