import { checkList } from '../checks.ts';
import { sampleInterval } from './sampleInterval.ts';

const interval = sampleInterval([1.2, 2.4, 1.3, 1.3, 0.0, 1.0, 1.8, 0.8, 4.6, 1.4], 95);

export default checkList('sampleInterval', [
  {
    what: 'Sleep gained with one drug over another: mean',
    ours: () => interval.mean,
    printed: '1.58',
    source: 'student-sleep',
    where: 'Paired comparison, 95 percent',
    seen: 'transcription',
  },
  {
    what: 'The same: low end',
    ours: () => interval.low,
    printed: '0.7001142',
    source: 'student-sleep',
    where: 'Paired comparison, 95 percent',
    seen: 'transcription',
  },
  {
    what: 'The same: high end',
    ours: () => interval.high,
    printed: '2.4598858',
    source: 'student-sleep',
    where: 'Paired comparison, 95 percent',
    seen: 'transcription',
  },
]);
