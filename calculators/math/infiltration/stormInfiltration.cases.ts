import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { stormInfiltration } from './stormInfiltration.ts';

const siltLoam = { conductivityCmPerHr: 0.65, suctionCm: 16.7, moistureDeficit: 0.7 * 0.486 };
const steady = (hours: number) => stormInfiltration({ steps: [{ hours, rainCm: 5 * hours }], soil: siltLoam });

/** A storm in steps of ten minutes, cm, on sandy loam that is 40 % full. */
const bursts = [0.18, 0.21, 0.26, 0.32, 0.37, 0.43, 0.64, 1.14, 3.18, 1.65, 0.81, 0.52, 0.42, 0.36, 0.28, 0.24, 0.19, 0.17];
const storm = () =>
  stormInfiltration({
    steps: bursts.map((rainCm) => ({ hours: 1 / 6, rainCm })),
    soil: { conductivityCmPerHr: 1.09, suctionCm: 11.01, moistureDeficit: 0.6 * 0.412 },
  });
const soakedBy = (minutes: number) =>
  storm()
    .rows.slice(0, minutes / 10)
    .reduce((sum, { infiltratedCm }) => sum + infiltratedCm, 0);

export default checkList('stormInfiltration', [
  {
    what: 'silt loam, one hour of rain at 5 cm an hour: depth soaked in',
    ours: () => steady(1).infiltratedCm,
    printed: '3.02',
    source: 'chow-1988',
    where: 'example 5.4.2',
    seen: 'memory',
  },
  {
    what: 'the same rain cut into 60 steps',
    ours: () => stormInfiltration({ steps: Array.from({ length: 60 }, () => ({ hours: 1 / 60, rainCm: 5 / 60 })), soil: siltLoam }).infiltratedCm,
    printed: '3.018',
    source: 'chow-1988',
    where: 'example 5.4.2, worked out apart',
    seen: 'computed',
  },
  {
    what: 'silt loam, rain of 5 cm an hour: time to ponding',
    ours: () => needThere('stormInfiltration', 'time to ponding', steady(1).firstPondedHours ?? undefined),
    printed: '0.17',
    source: 'chow-1988',
    where: 'example 4.4.1',
    seen: 'memory',
  },
  ...tableChecks({
    columns: ['depth'],
    text: `
       60  1.7700
       70  2.2011
       80  2.5894
       90  2.9497
      100  3.2900
      110  3.6149
      120  3.9277
      130  4.2306
      140  4.5253
      150  4.8053
      180  5.4053
    `,
    what: (minutes) => `uneven storm on sandy loam: depth soaked in by ${minutes} minutes`,
    ours: (minutes) => soakedBy(Number(minutes)),
    source: 'chow-1988',
    where: 'rate equation of section 5.4, integrated by a general solver (SciPy)',
    seen: 'computed',
  }),
  {
    what: 'the same storm: runoff',
    ours: () => storm().runoffCm,
    printed: '5.9647',
    source: 'chow-1988',
    where: 'rate equation of section 5.4, integrated by a general solver (SciPy)',
    seen: 'computed',
  },
]);
