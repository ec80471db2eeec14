import { checkList } from '../checks.ts';
import { readyDay } from './readyDay.ts';

/** Common practice, worked out by hand: inches a day between two readings, carried on. */
const byHand = { source: 'umaine-pasture-lesson-5', where: 'Heights of a pasture, carried on by hand', seen: 'computed' } as const;
const toldDay = (day: number | undefined): string => (day === undefined ? 'not before rain' : String(day));

export default checkList('readyDay', [
  {
    what: '3 in on day 100, 5 in on day 110, wanted 8 in: 15 more days at a fifth of an inch',
    ours: () => toldDay(readyDay({ first: { day: 100, heightIn: 3 }, last: { day: 110, heightIn: 5 }, startHeightIn: 8 })),
    printed: '125',
    ...byHand,
  },
  {
    what: '3 in, then 4 in after 7 days, wanted 6 in: two sevens',
    ours: () => toldDay(readyDay({ first: { day: 200, heightIn: 3 }, last: { day: 207, heightIn: 4 }, startHeightIn: 6 })),
    printed: '221',
    ...byHand,
  },
  {
    what: 'no growth',
    ours: () => toldDay(readyDay({ first: { day: 200, heightIn: 4 }, last: { day: 210, heightIn: 4 }, startHeightIn: 8 })),
    printed: 'not before rain',
    ...byHand,
  },
]);
