import { checkList } from '../checks.ts';
import { gallonsToInchAcres, inchAcresToCubicFeet, inchAcresToGallons, inchAcresToTons, waterVolume } from './waterVolume.ts';

const acreInch = { source: 'freedictionary-acre-inch', where: 'acre-inch', seen: 'print' } as const;
const acreFoot = { source: 'sizes-acre-foot', where: 'acre-foot', seen: 'print' } as const;

export default checkList('waterVolume', [
  { what: 'one inch on one acre, cubic feet', ours: () => inchAcresToCubicFeet(1), printed: '3,630', ...acreInch },
  { what: 'one inch on one acre, gallons', ours: () => inchAcresToGallons(1), printed: '27,154', ...acreInch },
  { what: 'one inch on one acre, cubic meters', ours: () => waterVolume(1, 1).cubicMeters, printed: '102.79', ...acreFoot },
  { what: 'one foot on one acre, cubic feet', ours: () => waterVolume(12, 1).cubicFeet, printed: '43,560', ...acreFoot },
  { what: 'one foot on one acre, gallons', ours: () => waterVolume(12, 1).gallons, printed: '325,851', ...acreFoot },
  { what: 'one foot on one acre, cubic meters', ours: () => waterVolume(12, 1).cubicMeters, printed: '1,233.48', ...acreFoot },
  { what: 'one foot on one acre, acre-feet', ours: () => waterVolume(12, 1).acreFeet, printed: '1', ...acreFoot },
  { what: '325,851 gallons, inches on one acre', ours: () => gallonsToInchAcres(325_851), printed: '12.0000', ...acreFoot, seen: 'computed' },
  {
    what: 'one inch on one acre, gallons to hundredths',
    ours: () => inchAcresToGallons(1),
    printed: '27154.29',
    source: 'math-forum-rainfall-1995',
    where: 'answer',
    seen: 'print',
  },
  {
    what: 'one inch on one acre, short tons',
    ours: () => inchAcresToTons(1),
    printed: '113',
    source: 'forrest-inch-of-rain',
    where: 'first paragraph',
    seen: 'print',
  },
  {
    what: '2.81 in on 250 ac, acre-feet',
    ours: () => waterVolume(2.81, 250).acreFeet,
    printed: '58.54',
    source: 'tr55-1986',
    where: 'runoff of example 2-1, volume worked out apart',
    seen: 'computed',
  },
]);
