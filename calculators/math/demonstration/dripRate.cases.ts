import { checkList } from '../checks.ts';
import { jarRateInPerHr, minutesOfRain } from './dripRate.ts';

const can = { source: 'irrigation-repair-rate', where: 'the measuring can method', seen: 'print' } as const;
/** A flow over ground of so many feet, as a jar of a gallon filled in a minute would have it. */
const sprinkled = (gallonsPerMin: number, lengthFt: number, widthFt: number) =>
  jarRateInPerHr(3785.411784 * gallonsPerMin, 60, { lengthIn: 12 * lengthFt, widthIn: 12 * widthFt });
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
  {
    what: '10 gallons a minute on 1,000 square feet, inches an hour',
    ours: () => sprinkled(10, 40, 25),
    printed: '.9625',
    source: 'klickitat-sprinkler-rate',
    where: 'example',
    seen: 'print',
  },
  {
    what: '8 gallons a minute on 60 by 15 ft, inches an hour',
    ours: () => sprinkled(8, 60, 15),
    printed: '.86',
    source: 'wil-sprinkler-rates',
    where: 'sample problem, slide 5',
    seen: 'print',
  },
  {
    what: '2.5 gallons a minute on 20 by 30 ft, minutes for an inch',
    ours: () => minutesOfRain(1, sprinkled(2.5, 20, 30)),
    printed: '149.61',
    source: 'jiskha-lawn-sprinkler-2012',
    where: 'answer, in minutes for 600 square feet',
    seen: 'print',
  },
  { what: 'one inch at a tenth in ten minutes, minutes', ours: () => minutesOfRain(1, rateInPerHr), printed: '100', ...can },
  { what: 'an inch and a half at that rate, minutes', ours: () => minutesOfRain(1.5, rateInPerHr), printed: '150', ...can },
]);
