import { checkList, tableChecks } from '../checks.ts';
import { quantileType6 } from './quantileType6.ts';

/** Resistivities of twelve silicon wafers, ohm cm. */
const wafers = [95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.061, 95.1591, 95.1195, 95.1065, 95.0925, 95.199, 95.1682];

const ranked = tableChecks({
  columns: ['value'],
  text: `
    1   95.0610
    2   95.0925
    3   95.1065
    4   95.1195
    5   95.1442
    6   95.1567
    7   95.1591
    8   95.1682
    9   95.1772
    10  95.1937
    11  95.1959
    12  95.1990
  `,
  what: (rank) => `Share ${rank} / 13 of twelve wafers`,
  ours: (rank) => quantileType6(wafers, Number(rank) / 13),
  source: 'nist-percentiles',
  where: 'order statistics',
  seen: 'print',
});

export default checkList('quantileType6', [
  ...ranked,
  {
    what: '90th percentile of twelve wafers',
    ours: () => quantileType6(wafers, 0.9),
    printed: '95.1981',
    source: 'nist-percentiles',
    where: 'example',
    seen: 'memory',
  },
]);
