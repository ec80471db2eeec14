import { checkList } from '../checks.ts';
import { concentrationFromLagHours, lagHours } from './lagHours.ts';

const apart = { source: 'nrcs-neh630-15-2010', where: 'lag equation worked out apart', seen: 'computed' } as const;

export default checkList('lagHours', [
  {
    what: '5,000 ft, curve number 74, 4 %',
    ours: () => lagHours({ flowLengthFt: 5000, curveNumber: 74, slopePercent: 4 }),
    printed: '0.688',
    ...apart,
  },
  {
    what: '2,000 ft, curve number 80, 5 %',
    ours: () => lagHours({ flowLengthFt: 2000, curveNumber: 80, slopePercent: 5 }),
    printed: '0.247',
    ...apart,
  },
  {
    what: '2 miles, curve number 75, 1 %',
    ours: () => lagHours({ flowLengthFt: 10560, curveNumber: 75, slopePercent: 1 }),
    printed: '2.432',
    ...apart,
  },
  {
    what: 'time of concentration of the last',
    ours: () => concentrationFromLagHours(lagHours({ flowLengthFt: 10560, curveNumber: 75, slopePercent: 1 })),
    printed: '4.053',
    ...apart,
  },
]);
