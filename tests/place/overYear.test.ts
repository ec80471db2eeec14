import { describe, expect, it } from 'vitest';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { isoDay, printDay } from '../../calculators/units/printQuantity.ts';
import type { Place } from '../../src/place/model/place.ts';
import { recordOffers } from '../../src/place/offer/recordOffers.ts';
import { calculatorOf } from '../support/catalog.ts';
import { aRain } from './aRow.ts';
import { day, demo, fill, textAt } from './filled.ts';

/** Places whose grass grows over New Year: annual range of California, and summer grass south of the equator. */
const places: readonly (readonly [string, Pick<Place, 'growth' | 'season'>])[] = [
  [
    'annual range',
    { growth: { startMonth: 'nov', bestMonth: 'mar', quitMonth: 'may', fallFlush: 'none' }, season: { turnInDay: '11-15', endDay: '06-30' } },
  ],
  [
    'southern summer',
    { growth: { startMonth: 'oct', bestMonth: 'dec', quitMonth: 'mar', fallFlush: 'some' }, season: { turnInDay: '10-01', endDay: '04-30' } },
  ],
];
const keys = ['startMonth', 'bestMonth', 'quitMonth', 'fallFlush'] as const;
const days = Array.from({ length: 24 }, (_, index) => `20${27 + Math.floor(index / 12)}-${String((index % 12) + 1).padStart(2, '0')}-20`);

/** A reading on every day. */
const rainSince = (fromDay: number, toDay: number) =>
  Array.from({ length: Math.max(0, toDay - fromDay + 1) }, (_, index) => aRain({ id: `r${index}`, day: isoDay(fromDay + index), amountIn: 0.1 }));

describe.each(places)('a place with %s', (_, { growth, season }) => {
  it.each(['carrying-capacity', 'decision-dates'])('hands its growth and its days on to %s on every day', (slug) => {
    for (const today of days) {
      const filled = fill(slug, { today, place: { ...demo, growth, season } });
      const run = runTexts(calculatorOf(slug), filled.texts);
      expect('refusals' in run ? run.refusals : [], today).toEqual([]);
      for (const key of keys) expect(textAt(filled.texts, key), today).toBe(growth?.[key]);
      const end = textAt(filled.texts, slug === 'decision-dates' ? 'endDay' : 'toDay');
      expect([today, end.slice(5)]).toEqual([today, season?.endDay]);
    }
  });
});
describe.each([...places, ['summer grass of the north', { growth: demo.growth, season: demo.season }], ['no season told', {}]] as const)(
  'rain so far of a place with %s',
  (_, of) => {
    it('is counted from the day from which the form counts that it fills', () => {
      const { growth, season, ...bare } = demo;
      const place = { ...bare, ...of };
      for (const today of days) {
        const run = runTexts(calculatorOf('decision-dates'), fill('decision-dates', { today, place }).texts);
        if (!('outcome' in run)) throw new Error(today);
        const offered = recordOffers(place, [aRain({ id: 'r', day: today, amountIn: 1 })], day(today)).single.get('rain.soFar');
        const since = Number(run.outcome.values['sinceDay']);
        // Of one reading alone only a day still ahead is offered.
        if (since > day(today)) expect(offered, today).toEqual({ amount: 0, says: `counted from ${printDay(since)}` });
        else expect(offered, today).toBeUndefined();
        const until = recordOffers(place, rainSince(since, day(today)), day(today)).single.get('rain.soFar');
        if (since <= day(today)) expect(until, today).toMatchObject({ says: `since ${printDay(since)}` });
      }
    });
  },
);
