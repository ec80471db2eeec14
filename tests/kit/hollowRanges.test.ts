import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import { defineCalculator } from '../../calculators/kit/define.ts';
import { withoutHollowRanges } from '../../calculators/kit/hollowRanges.ts';
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
    expect(ranges['likelyLb']).toBe('498 lb to 502 lb');
    expect(note).toBe('500 lb (498 lb to 502 lb).');
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
