import { capillaryLengths } from '../../tables/infiltrationRates.ts';
import { checkList } from '../checks.ts';
import { ringOverRead } from './ringOverRead.ts';

const ring = { boreIn: 6, insertedIn: 3, pondedIn: 0.5 };
const range = { source: 'reynolds-elrick-1990', where: 'equation worked out apart for the usual ring', seen: 'computed' } as const;

export default checkList('ringOverRead', [
  {
    what: '6-inch ring, 3 in deep, coarse sand',
    ours: () => ringOverRead({ ...ring, capillaryLengthIn: capillaryLengths.soilsIn['coarse-sand-or-open-cracks'] }),
    printed: '1.338',
    ...range,
  },
  {
    what: '6-inch ring, 3 in deep, structured soil',
    ours: () => ringOverRead({ ...ring, capillaryLengthIn: capillaryLengths.soilsIn['structured-soil'] }),
    printed: '1.802',
    ...range,
  },
  {
    what: '6-inch ring, 3 in deep, fine soil without structure',
    ours: () => ringOverRead({ ...ring, capillaryLengthIn: capillaryLengths.soilsIn['fine-unstructured'] }),
    printed: '3.195',
    ...range,
  },
]);
