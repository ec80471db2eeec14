import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { dayOfYear } from './dayOfYear.ts';

const dates: Readonly<Record<string, readonly [month: number, day: number]>> = {
  '1-Mar': [3, 1],
  '15-Apr': [4, 15],
  '6-Jul': [7, 6],
  '15-Jul': [7, 15],
  '3-Sep': [9, 3],
  '1-Oct': [10, 1],
  '31-Dec': [12, 31],
};

export default checkList(
  'dayOfYear',
  tableChecks({
    columns: ['J'],
    text: `
      1-Mar   60
      15-Apr  105
      6-Jul   187
      15-Jul  196
      3-Sep   246
      1-Oct   274
      31-Dec  365
    `,
    what: (date) => `Day of the year of ${date.replace('-', ' ')}`,
    ours: (date) => dayOfYear(...needThere('dayOfYear', date, dates[date])),
    source: 'allen-1998',
    where: 'annex 2, table 2.5, and examples 8, 17 to 20',
    seen: 'print',
  }),
);
