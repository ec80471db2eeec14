import { describe, expect, it } from 'vitest';
import { startTexts, type Texts } from '../../calculators/kit/state.ts';
import { textAt } from '../../calculators/kit/textAt.ts';
import fields from '../../content/local/fields.json' with { type: 'json' };
import { fieldsOf } from '../../src/local/fieldValues.ts';
import { filledTexts, fillsOf } from '../../src/local/fillsOf.ts';
import { calculatorOf } from '../support/catalog.ts';
import { anOffice } from './anOffice.ts';

const local = fieldsOf(anOffice.head.name, anOffice.values, fields, (source) => source);
const startOf = (slug: string): Texts => startTexts(calculatorOf(slug).inputs);
const filled = (slug: string, now = startOf(slug)): Texts => ({ ...now, ...filledTexts(now, fillsOf(calculatorOf(slug), now, 'us', local)) });

describe('an office’s values in forms', () => {
  it.each<[string, Readonly<Record<string, string>>]>([
    ['hay-to-grass', { priceUsdPerTon: '165', freightUsdPerLoad: '450' }],
    ['feed-or-sell', { calfPriceUsdPerCwt: '270', saleUsd: '1900', likelyBuyBackUsd: '2800', interestPercent: '8.5', hayPriceUsdPerTon: '165' }],
    ['early-weaning', { earlyPriceUsdPerCwt: '310', usualPriceUsdPerCwt: '270', interestPercent: '8.5' }],
    ['rest-and-moves', { startHeightIn: '9', stopHeightIn: '4.5' }],
    ['days-of-grass', { stopHeightIn: '4.5' }],
    [
      'carrying-capacity',
      { 'pastures.0.normalLbPerAc': '4300', 'pastures.1.poorLbPerAc': '2100', startMonth: 'apr', quitMonth: 'nov', fallFlush: 'much' },
    ],
    ['decision-dates', { grassLbPerAc: '4300', bestMonth: 'jun' }],
    ['sown-feed', { frostDay: '2027-10-12' }],
  ])('go into %s', (slug, expected) => {
    const texts = filled(slug);
    for (const [at, text] of Object.entries(expected)) expect(textAt(texts, at)?.replace(/\u00a0.*$/, ''), at).toBe(text);
  });

  it('go into twelve months where these are asked for, and only medians', () => {
    const now = { ...startOf('decision-dates'), rainFrom: 'station' };
    expect(filled('decision-dates', now)['stationIn']).toEqual(anOffice.values.rainMonths?.inches.map((each) => `${each}\u00a0in`));
    const { rainMonths, ...others } = anOffice.values;
    if (!rainMonths) throw new Error('no months of rain');
    const normals = fieldsOf('a', { ...others, rainMonths: { ...rainMonths, are: 'normals' } }, fields, (source) => source);
    expect(fillsOf(calculatorOf('decision-dates'), now, 'us', normals).map(({ at }) => at)).not.toContain('stationIn');
    expect(local.calculators['soil-loss']?.map(({ key }) => key)).not.toContain('yearRainIn');
    expect(normals.calculators['soil-loss']?.map(({ key }) => key)).toContain('yearRainIn');
  });

  it('leave alone what somebody typed, and a whole group of which one was typed', () => {
    const start = startOf('carrying-capacity');
    expect(filled('carrying-capacity', { ...start, bestMonth: 'jul' })).toMatchObject({ startMonth: start['startMonth'], bestMonth: 'jul' });
    const hay = startOf('hay-to-grass');
    expect(filled('hay-to-grass', { ...hay, freightUsdPerLoad: '600' })['freightUsdPerLoad']).toBe('600');
  });

  it('that a form cannot take are not offered', () => {
    const dear = fieldsOf('a', { ...anOffice.values, freight: { of: 'a', seen: '2026', source: 'a', usdPerLoad: 1e6 } }, fields, (source) => source);
    const now = startOf('hay-to-grass');
    expect(fillsOf(calculatorOf('hay-to-grass'), now, 'us', dear).map(({ at }) => at)).not.toContain('freightUsdPerLoad');
  });
});
