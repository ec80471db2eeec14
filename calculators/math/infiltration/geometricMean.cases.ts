import { checkList } from '../checks.ts';
import { geometricMean } from './geometricMean.ts';

export default checkList('geometricMean', [
  {
    what: 'counts of 38, 95 and 52',
    ours: () => geometricMean([38, 95, 52]),
    printed: '57.258088901',
    source: 'kalamazoo-geometric-mean',
    where: 'examples 1 and 2, as far as both print the same digits',
    seen: 'print',
  },
  {
    what: 'counts of 12, 28, 37 and 25',
    ours: () => geometricMean([12, 28, 37, 25]),
    printed: '23.6',
    source: 'drinking-water-geometric-mean',
    where: 'example 6.4',
    seen: 'transcription',
  },
]);
