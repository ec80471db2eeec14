import { checkList, tableChecks } from '../checks.ts';
import { likeYearsCaughtUp } from './likeYearsCaughtUp.ts';

/** Of so many years, all as dry by the date as this one, so many made it up. */
const ofYears = (caughtUp: number, years: number) =>
  likeYearsCaughtUp(
    4,
    Array.from({ length: years }, (_, index) => ({ beforeIn: 3, afterIn: index < caughtUp ? 6 : 2 })),
    9,
  );
const intervals = (source: string, where: string, text: string) =>
  tableChecks({
    columns: ['lower', 'upper'],
    text,
    what: (seen, end) => `${seen} years caught up, ${end} end of the exact 95 % interval, share`,
    ours: (seen, end) => {
      const [caughtUp = Number.NaN, years = Number.NaN] = seen.split('/').map(Number);
      const { lowerPercent, upperPercent } = ofYears(caughtUp, years);
      return (end === 'lower' ? lowerPercent : upperPercent) / 100;
    },
    source,
    where,
    seen: 'transcription',
  });

/** Thirty years as dry by the date as this one; six of them made it up. */
const record = Array.from({ length: 30 }, (_, index) => ({ beforeIn: 3, afterIn: index < 6 ? 6 : 2 }));

export default checkList('likeYearsCaughtUp', [
  ...intervals(
    'newcombe-1998',
    'table I, exact method',
    `
      81/263 0.2527 0.3676
      15/148 0.0578 0.1617
      0/20   -      0.1684
      1/29   0.0009 0.1776
    `,
  ),
  ...intervals('r-binom-test', 'output for 4 of 20', '4/20 0.057334 0.436614'),
  {
    what: '6 of 30 years caught up, upper end of the exact interval, percent',
    ours: () => likeYearsCaughtUp(4, record, 9).upperPercent,
    printed: '38.57',
    source: 'clopper-pearson-1934',
    where: 'the tail sum of 6 in 30 set to 0.025, solved with another program',
    seen: 'computed',
  },
]);
