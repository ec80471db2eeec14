import { checkList, tableChecks } from '../checks.ts';
import { pouringRateInPerHr, ringDepthIn } from './ringTest.ts';

export default checkList('ringTest', [
  {
    what: '444 mL in a 6-inch ring, inches',
    ours: () => ringDepthIn(444, 6),
    printed: '1',
    source: 'symbiosis-ring-page',
    where: 'one inch of water',
    seen: 'print',
    differs: { by: '0.05', because: '444 mL is an inch only in a bore of 5.87 in; the page calls the ring 6 inches.' },
  },
  {
    what: '463.3 mL in a bore of 6.00 in, inches',
    ours: () => ringDepthIn(463.3, 6),
    printed: '1.000',
    source: 'symbiosis-ring-page',
    where: 'volume of a true inch, worked out apart',
    seen: 'computed',
  },
  ...tableChecks({
    columns: ['rate'],
    text: `
          3  20
         10  6
         30  2
        100  .6
        300  .2
       1000  .06
      40000  .0015
    `,
    what: (minutes) => `${minutes} minutes for an inch, inches per hour`,
    ours: (minutes) => pouringRateInPerHr(1, Number(minutes)),
    source: 'soil-quality-test-kit-2001',
    where: 'classes in minutes per inch (the rates alone also in usepa-1981-permeability)',
    seen: 'memory',
  }),
]);
