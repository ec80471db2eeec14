import { checkList } from '../checks.ts';
import { regrownLbPerAc } from './regrownLbPerAc.ts';

/** Sums done by hand on a pasture of the handbook: pounds a day times days, never more than what was there. */
const byHand = {
  source: 'umaine-pasture-lesson-1',
  where: 'Appendix D, good mixed pasture grazed from 8 in to 4 in, worked out apart',
  seen: 'computed',
} as const;

export default checkList('regrownLbPerAc', [
  {
    what: '15 lb a day for 32 days, of 1,000 lb',
    ours: () => regrownLbPerAc({ growthLbPerAcDay: 15, restDays: 32, fullLbPerAc: 1000 }),
    printed: '480',
    ...byHand,
  },
  {
    what: '40 lb a day for 32 days: back in full, and no more than that',
    ours: () => regrownLbPerAc({ growthLbPerAcDay: 40, restDays: 32, fullLbPerAc: 1000 }),
    printed: '1000',
    ...byHand,
  },
  { what: 'no growth', ours: () => regrownLbPerAc({ growthLbPerAcDay: 0, restDays: 32, fullLbPerAc: 1000 }), printed: '0', ...byHand },
]);
