import { checkList, tableChecks } from '../checks.ts';
import { normalProbability } from '../special/normalProbability.ts';
import { precipitationIndexClass } from './precipitationIndexClass.ts';

const classes = tableChecks({
  columns: ['class'],
  text: `
    2.0    extremely-wet
    1.99   very-wet
    1.5    very-wet
    1.49   moderately-wet
    1.0    moderately-wet
    .99    near-normal
    -.99   near-normal
    -1.0   moderately-dry
    -1.49  moderately-dry
    -1.5   severely-dry
    -1.99  severely-dry
    -2.0   extremely-dry
  `,
  what: (index) => `Class of index ${index}`,
  ours: (index) => precipitationIndexClass(Number(index)),
  source: 'wmo-1090-2012',
  where: 'table of classes',
  seen: 'transcription',
});

/** Time that a standard normal index spends between two values, percent. */
const timePercent = (from: number, to: number): number => 100 * (normalProbability(to) - normalProbability(from));
const spent = tableChecks({
  columns: ['time'],
  text: `
    -1,0       34.1
    -1.5,-1    9.2
    -2,-1.5    4.4
    -37,-2     2.3
  `,
  what: (range) => `Time with the index between ${range.replace(',', ' and ').replace('-37', 'any')}, %`,
  ours: (range) => {
    const [from = 0, to = 0] = range.split(',').map(Number);
    return timePercent(from, to);
  },
  source: 'ncdc-spi',
  where: 'table of classes',
  seen: 'print',
});
const tails = tableChecks({
  columns: ['time'],
  text: `
    -37,-2    2.3
    -37,-1.5  6.7
    -37,-1    16
    -1,1      68
  `,
  what: (range) => `Time with the index between ${range.replace(',', ' and ').replace('-37', 'any')}, %`,
  ours: (range) => {
    const [from = 0, to = 0] = range.split(',').map(Number);
    return timePercent(from, to);
  },
  source: 'mesonet-spi',
  where: 'help text',
  seen: 'print',
});

export default checkList('precipitationIndexClass', [...classes, ...spent, ...tails]);
