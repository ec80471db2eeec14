import { checkList, tableChecks } from '../checks.ts';
import { designStormShare } from './designStormShare.ts';

const hourOf = (clock: string) => {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return hours + minutes / 60;
};
const largest = { source: 'scs-1986-distributions', where: 'share of the day in the largest hour, in words', seen: 'transcription' } as const;

export default checkList('designStormShare', [
  // A table in steps of five minutes from another publication, for times that mostly lie between ours.
  ...tableChecks({
    columns: ['iii'],
    text: `
       1:00  .0100
       8:05  .1163
       9:00  .1458
       9:15  .1555
      16:10  .8903
      17:00  .9095
    `,
    what: (clock) => `type III, share of the rain by ${clock}`,
    ours: (clock) => designStormShare('iii', hourOf(clock)),
    source: 'austin-dcm-2-6',
    where: 'table 2-6',
    seen: 'print',
    differs: (clock) => ({
      by: clock === '17:00' ? '0.006' : '0.003',
      because: 'The coarse table is rounded to thousandths and runs straight between its own times, for four hours around 17:00.',
    }),
  }),
  {
    what: 'type II, percent of the day in the largest hour',
    ours: () => 100 * (designStormShare('ii', 12.5) - designStormShare('ii', 11.5)),
    printed: '45',
    ...largest,
  },
  {
    what: 'type III, percent of the day in the largest hour',
    ours: () => 100 * (designStormShare('iii', 12.5) - designStormShare('iii', 11.5)),
    printed: '40',
    ...largest,
  },
]);
