import { checkList } from '../checks.ts';
import { eatenShare } from './eatenShare.ts';

const before = (
  amount: number,
  { storage = 0, feeding = 0 }: { readonly storage?: number; readonly feeding?: number },
  convention: 'divide' | 'multiply',
) => amount / eatenShare({ moisturePercent: 0, storageLossPercent: storage, feedingLossPercent: feeding, convention });

const undersander = { source: 'undersander-storage', where: 'Price after loss', seen: 'print' } as const;

export default checkList('eatenShare', [
  {
    what: '48.5 tons fed with 15 % lost in feeding: tons to start with',
    ours: () => before(48.5, { feeding: 15 }, 'divide'),
    printed: '57.1',
    source: 'wv-farm-bureau-2014',
    where: 'p. 15, feeding loss',
    seen: 'print',
  },
  {
    what: 'A storage loss of 50 %: times the hay',
    ours: () => before(1, { storage: 50 }, 'divide'),
    printed: '2',
    source: 'kentucky-hay-2012',
    where: 'Step 5, "double the amount"',
    seen: 'print',
  },
  {
    what: 'A $60 bale with 20 % lost, multiplied',
    ours: () => before(60, { feeding: 20 }, 'multiply'),
    printed: '72',
    source: 'schnakenberg-feeders',
    where: 'Cost of a 20 % loss',
    seen: 'print',
  },
  {
    what: '$95 a ton with 30 % lost, multiplied',
    ours: () => before(95, { storage: 30 }, 'multiply'),
    printed: '124',
    ...undersander,
    differs: { by: '0.6', because: 'the page rounds 123.50 up' },
  },
  { what: '$95 a ton with 70 % lost, multiplied', ours: () => before(95, { storage: 70 }, 'multiply'), printed: '161.50', ...undersander },
]);
