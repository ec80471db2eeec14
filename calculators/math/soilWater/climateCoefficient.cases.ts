import { checkList } from '../checks.ts';
import { climateCoefficient, maximumCoefficient } from './climateCoefficient.ts';

const maize = (windMPerS: number, minHumidityPercent: number): number =>
  climateCoefficient({ tableCoefficient: 1.2, windMPerS, minHumidityPercent, heightM: 2 });

export default checkList('climateCoefficient', [
  { what: 'Maize, 1.3 m/s, 75 %', ours: () => maize(1.3, 75), printed: '1.07', source: 'allen-1998', where: 'example 27', seen: 'print' },
  { what: 'Maize, 4.6 m/s, 44 %', ours: () => maize(4.6, 44), printed: '1.30', source: 'allen-1998', where: 'example 27', seen: 'print' },
  {
    what: 'Largest coefficient, 1.6 m/s, 35 %, 0.3 m',
    ours: () => maximumCoefficient({ basalCoefficient: 0.3, windMPerS: 1.6, minHumidityPercent: 35, heightM: 0.3 }),
    printed: '1.21',
    source: 'allen-1998',
    where: 'example 35',
    seen: 'print',
  },
]);
