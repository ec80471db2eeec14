import { describe, expect, it } from 'vitest';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import { day, fill, with_ } from './filled.ts';

const prices = { seenDay: '2026-11-01', hayLikelyUsdPerTon: 150, freightUsdPerLoad: 0, calfUsualUsdPerCwt: 300, interestPercent: 7 };
const on = (today: string, slug = 'feed-or-sell') => {
  const { texts, marks, todayAt } = fill(slug, { place: with_({ prices }), today });
  return { texts, todayAt, markAt: (at: string) => marks.find((mark) => mark.at === at) };
};

describe('the day when prices were seen', () => {
  it('is the place’s and no today of the device', () => {
    for (const today of ['2026-11-01', '2026-11-20', '2027-03-01']) {
      const { texts, todayAt, markAt } = on(today);
      expect(texts['pricesSeenDay'], today).toBe('2026-11-01');
      expect(todayAt, today).not.toContain('pricesSeenDay');
      expect(markAt('pricesSeenDay')?.offer, today).toBe('prices.seen');
    }
  });
  it('is today where the place has none', () => {
    const { seenDay, ...unseen } = prices;
    expect(seenDay).toBe('2026-11-01');
    const { texts, todayAt } = fill('feed-or-sell', { place: with_({ prices: unseen }), today: '2026-11-20' });
    expect([texts['pricesSeenDay'], todayAt]).toEqual(['2026-11-20', expect.arrayContaining(['pricesSeenDay'])]);
  });
  // Common practice.
  it('is told beside each price once it lies more than 60 days back', () => {
    const [last, first] = [60, 61].map((days) => isoDay(day(prices.seenDay) + days));
    const saidOn = (today = '') => ['pricesSeenDay', 'calfPriceUsdPerCwt', 'interestPercent'].map((at) => on(today).markAt(at)?.says);
    expect(saidOn(last)).toEqual([undefined, undefined, undefined]);
    expect(saidOn(first)).toEqual(['seen Nov 1, 2026: ask again', 'seen Nov 1, 2026: ask again', undefined]);
    expect(on(first ?? '').markAt('hayPriceUsdPerTon')?.says).toBe('with freight; seen Nov 1, 2026: ask again');
  });
});
