import { checkList } from '../checks.ts';
import { slakeClass } from './slakeClass.ts';

const sheet = { source: 'herrick-2001', where: 'criteria for stability classes, as in a methods sheet', seen: 'transcription' } as const;
const held = (leftPercent: number): number => slakeClass({ halfLostSeconds: Infinity, leftPercent });
const lost = (halfLostSeconds: number): number => slakeClass({ halfLostSeconds, leftPercent: 0 });

export default checkList('slakeClass', [
  { what: 'too unstable to sample, falls through the sieve', ours: () => lost(0), printed: '0', ...sheet },
  { what: 'half lost at 3 s', ours: () => lost(3), printed: '1', ...sheet },
  { what: 'half lost at 15 s', ours: () => lost(15), printed: '2', ...sheet },
  { what: 'half lost at 120 s', ours: () => lost(120), printed: '3', ...sheet },
  { what: 'held, 5 % left after five dips', ours: () => held(5), printed: '3', ...sheet },
  { what: 'held, 15 % left after five dips', ours: () => held(15), printed: '4', ...sheet },
  { what: 'held, 50 % left after five dips', ours: () => held(50), printed: '5', ...sheet },
  { what: 'held, 90 % left after five dips', ours: () => held(90), printed: '6', ...sheet },
]);
