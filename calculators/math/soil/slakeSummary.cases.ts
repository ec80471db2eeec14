import { checkList } from '../checks.ts';
import { needThere } from '../need.ts';
import { slakeSummary } from './slakeSummary.ts';

const fragments = [6, 6, 5, 5, 4, 6, 5, 3, 4, 5, 6, 5, 4, 5, 6, 5];
const byHand = { source: 'soil-quality-test-kit-2001', where: 'chapter 9, sixteen made-up fragments worked by hand', seen: 'computed' } as const;

export default checkList('slakeSummary', [
  { what: 'sixteen fragments, mean class', ours: () => slakeSummary(fragments).meanClass, printed: '5.00', ...byHand },
  { what: 'sixteen fragments, percent in class 6', ours: () => slakeSummary(fragments).topClassPercent, printed: '31.25', ...byHand },
  {
    what: 'sixteen fragments, spread: the square root of 12/15',
    ours: () => needThere('slakeSummary', 'spread', slakeSummary(fragments).spread),
    printed: '0.894',
    ...byHand,
  },
]);
