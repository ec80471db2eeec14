import { defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

/** Counts of other things in five classes, whose means are printed: 0 to 4 stand here for a tenth to nine tenths, so a mean of m becomes 10 + 20 m. */
const asClasses = (...[ten = 0, thirty = 0, fifty = 0, seventy = 0, ninety = 0]: readonly number[]): string =>
  `none=0&ten=${ten}&thirty=${thirty}&fifty=${fifty}&seventy=${seventy}&ninety=${ninety}`;

export default defineCases(definition, [
  {
    name: '200 counts whose mean is 0.61',
    query: asClasses(109, 65, 22, 3, 1),
    expect: { takenPercent: '22.2', plantsCount: '200' },
    source: 'horse-kicks-200',
    where: 'mean of a year and a unit, 122/200',
    seen: 'computed',
  },
  {
    name: '280 counts whose mean is 0.7',
    query: asClasses(144, 91, 32, 11, 2),
    expect: { takenPercent: '24', plantsCount: '280' },
    source: 'horse-kicks-280',
    where: '196/280, deaths in a year and a corps',
    seen: 'computed',
  },
]);
