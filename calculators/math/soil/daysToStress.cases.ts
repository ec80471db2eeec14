import { checkList, tableChecks } from '../checks.ts';
import { daysToGrowthShare, daysToStress } from './daysToStress.ts';

/** Tomato on silt: 160 mm held, 55 mm missing on the first morning, 6 mm a day used, 0.40 of it easy to take. */
const example = { totalAvailableIn: 160 / 25.4, missingIn: 55 / 25.4, easyShare: 0.4, useInPerDay: 6 / 25.4 } as const;

export default checkList('daysToStress', [
  {
    what: 'first day that begins short of water',
    ours: () => Math.ceil(daysToStress(example)) + 1,
    printed: '3',
    source: 'allen-1998',
    where: 'example 37',
    seen: 'print',
  },
  ...tableChecks({
    columns: ['days before'],
    text: `
      0.97 2
      0.91 3
      0.85 4
      0.80 5
      0.75 6
      0.70 7
      0.66 8
      0.62 9`,
    what: (share) => `whole days until use is down to ${share} of full`,
    ours: (share) => daysToGrowthShare({ ...example, growthShare: Number(share) }),
    source: 'allen-1998',
    where: 'example 37, which steps by whole days',
    seen: 'print',
  }),
  {
    what: 'days from the start of shortage to a quarter of full growth, per day of full use in the slow part: ln 4',
    ours: () => {
      const started = { totalAvailableIn: 5, missingIn: 3, easyShare: 0.6, useInPerDay: 2 };
      return daysToGrowthShare({ ...started, growthShare: 0.25 });
    },
    printed: '1.38629',
    source: 'allen-1998',
    where: 'equation 84 integrated; ln 4 from a table of logarithms',
    seen: 'computed',
  },
]);
