import { checkList } from '../checks.ts';
import { quantileType6 } from './quantileType6.ts';

/** Resistivities of twelve silicon wafers, ohm cm. */
const wafers = [95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.061, 95.1591, 95.1195, 95.1065, 95.0925, 95.199, 95.1682];

export default checkList('quantileType6', [
  {
    what: '90th percentile of twelve wafers',
    ours: () => quantileType6(wafers, 0.9),
    printed: '95.1981',
    source: 'nist-percentiles',
    where: 'example',
    seen: 'memory',
  },
]);
