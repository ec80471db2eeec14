import { checkList } from '../checks.ts';
import { chainFromMonth } from './chainFromMonth.ts';
import { wetDayShare } from './wetDayChain.ts';

const june = () => chainFromMonth({ rainMm: 96, wetDays: 12, days: 30 });

export default checkList('chainFromMonth', [
  {
    what: '12 wet days of 30: wet after dry',
    ours: () => june().wetAfterDry,
    printed: '0.300',
    source: 'geng-1986',
    where: '0.75 of the share of wet days',
    seen: 'transcription',
  },
  {
    what: '12 wet days of 30: wet after wet',
    ours: () => june().wetAfterWet,
    printed: '0.550',
    source: 'geng-1986',
    where: '0.25 more',
    seen: 'transcription',
  },
  {
    what: 'the chain keeps the share of wet days',
    ours: () => wetDayShare(june().wetAfterWet, june().wetAfterDry),
    printed: '0.4000',
    source: 'geng-1986',
    where: 'follows from the two chances',
    seen: 'computed',
  },
  {
    what: 'a wet day brings the month’s rain over its wet days',
    ours: () => june().shape * june().scaleMm,
    printed: '8.000',
    source: 'geng-1986',
    where: '96 mm on 12 days',
    seen: 'computed',
  },
]);
