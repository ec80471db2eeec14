import { lookup } from '../../kit/steps.ts';
import type { RangeFrom } from './inputs.ts';

/** Where the published range was looked up: each kind of range names its own source. */
const sourceOf = {
  forage: { low: 'uga-wait-to-graze, table 1', high: 'uga-wait-to-graze, table 1' },
  memory: { low: 'from memory', high: 'from memory' },
  guides: { low: 'hamilton-2014, fast growth', high: 'shelton-rest, slow growth; schriefer-rest has the same' },
} as const;
const ends = { low: { shows: 'lowRestDays', word: 'shortest' }, high: { shows: 'highRestDays', word: 'longest' } } as const;

const step = (from: RangeFrom, end: 'low' | 'high') =>
  lookup<{ readonly rangeFrom: RangeFrom }, (typeof ends)[typeof end]['shows']>(ends[end].shows, {
    says: `The ${ends[end].word} rest {rangeFrom}.`,
    onlyWhen: ({ rangeFrom }) => rangeFrom === from,
    source: sourceOf[from][end],
  });

export const publishedSteps = (['forage', 'memory', 'guides'] as const).flatMap((from) => [step(from, 'low'), step(from, 'high')]);
