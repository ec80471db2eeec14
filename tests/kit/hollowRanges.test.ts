import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import { defineCalculator } from '../../calculators/kit/define.ts';
import { withoutHollowRanges, withUnitOnce } from '../../calculators/kit/hollowRanges.ts';
import { number } from '../../calculators/kit/inputs.ts';
import { amount } from '../../calculators/kit/quantities.ts';

describe('a range whose ends read the same', () => {
  it.each([
    ['Forage kept: 26,700 lb (26,700 lb to 26,700 lb).', 'Forage kept: 26,700 lb.'],
    ['At the usual time $900 ($900 to $900 by the market).', 'At the usual time $900.'],
    ['It lasts 40 days to 40 days.', 'It lasts 40 days.'],
    ['Hay at $95 a ton to $95 a ton.', 'Hay at $95 a ton.'],
    ['a loss of −$20 (−$20 to −$20)', 'a loss of −$20'],
  ])('goes out of “%s”', (text, told) => expect(withoutHollowRanges(text)).toBe(told));
  it.each(['26,700 lb (26,600 lb to 26,800 lb)', '4 in to 40 in', '4 in to 4.5 in', '14 to 4 head', '$90 to −$90'])('is not “%s”', (text) =>
    expect(withoutHollowRanges(text)).toBe(text),
  );
});

describe('a range with one unit', () => {
  it.each([
    ['33 days to 51 days, 80 % of the time', '33 to 51 days, 80 % of the time'],
    ['1 day to 3 days', '1 to 3 days'],
    ['$209 a ton to $321 a ton, by the price', '$209 to $321 a ton, by the price'],
    ['nearer 0.97 in an hour to 2.3 in an hour', 'nearer 0.97 to 2.3 in an hour'],
    ['60 lb/ac a day to 75 lb/ac a day', '60 to 75 lb/ac a day'],
    ['about 40 days (38 days to 45 days).', 'about 40 days (38 to 45 days).'],
    ['1.41 g/cm³ to 1.48 g/cm³', '1.41 to 1.48 g/cm³'],
  ])('says it once in “%s”', (text, told) => expect(withUnitOnce(text)).toBe(told));
  it.each(['3 in to 4 cm', '5 lb of hay to 6 lb of grass', 'Jan 4 to Jan 6', '$5 to $6', '15 to 61', '2 in to 3 inches'])(
    'leaves “%s” alone',
    (text) => expect(withUnitOnce(text)).toBe(text),
  );
});

const spread = (same: string | undefined) =>
  defineCalculator({
    slug: 'spread',
    version: 1,
    title: 'A number either way',
    inputs: { offLb: number('Off by', 'o', 'lb', [0, 100], 0.2) },
    compute: ({ offLb }) => ({ likelyLb: 500, lowLb: 500 - offLb, highLb: 500 + offLb }),
  }).describe({
    question: 'How much?',
    lead: 'So much.',
    first: ['offLb'],
    quantities: { likelyLb: amount('Likely', 'y', 'lb'), lowLb: amount('Low', 'l', 'lb'), highLb: amount('High', 'h', 'lb') },
    results: [{ of: 'likelyLb', range: { low: 'lowLb', high: 'highLb', says: '{low} to {high}', ...(same === undefined ? {} : { same }) } }],
    steps: [],
    cautions: [],
    limits: [],
    note: (_, show) => `${show('likelyLb')} (${show('lowLb')} to ${show('highLb')}).`,
    sources: [],
    topic: 'rain',
    order: 10,
    guides: ['none-yet'],
  });

describe('the range under a result', () => {
  it('stands where its ends read differently', () => {
    const { ranges, note } = runQuery(spread(undefined), 'off=2lb');
    expect(ranges['likelyLb']).toBe('498 to 502 lb');
    expect(note).toBe('500 lb (498 to 502 lb).');
  });
  it('is left out where they read the same, though the numbers differ', () => {
    const { ranges, note } = runQuery(spread(undefined), '');
    expect(Object.keys(ranges)).toEqual([]);
    expect(note).toBe('500 lb.');
  });
  it('gives way to its own words', () => {
    expect(runQuery(spread('both agree'), '').ranges['likelyLb']).toBe('both agree');
  });
});
