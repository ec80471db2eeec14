import { checkList } from '../checks.ts';
import { jarRateInPerHr, minutesOfRain } from './dripRate.ts';

const can = { source: 'irrigation-repair-rate', where: 'the measuring can method', seen: 'print' } as const;
/** A tenth of an inch in ten minutes. */
const rateInPerHr = (60 * 0.1) / 10;

export default checkList('dripRate', [
  {
    what: 'a gallon a minute on a square foot, inches an hour',
    ours: () => jarRateInPerHr(3785.411784, 60, { lengthIn: 12, widthIn: 12 }),
    printed: '96.25',
    source: 'irrigation-repair-rate',
    where: 'constant of the precipitation rate formula',
    seen: 'print',
    differs: {
      by: '0.011',
      because: 'The constant is built with 7.48 gallons in a cubic foot cut after two digits; exactly it is 96.2500 by 231 cubic inches.',
    },
  },
  { what: 'one inch at a tenth in ten minutes, minutes', ours: () => minutesOfRain(1, rateInPerHr), printed: '100', ...can },
  { what: 'an inch and a half at that rate, minutes', ours: () => minutesOfRain(1.5, rateInPerHr), printed: '150', ...can },
]);
