import { describe, expect, it } from 'vitest';
import { doubtAbout } from '../../calculators/kit/doubts.ts';
import { startTexts, type Texts } from '../../calculators/kit/state.ts';
import { textAt } from '../../calculators/kit/textAt.ts';
import fields from '../../content/local/fields.json' with { type: 'json' };
import { fieldsOf } from '../../src/local/fieldValues.ts';
import { filledTexts, fillsOf } from '../../src/local/fillsOf.ts';
import { officeSections } from '../../src/office/model/fields.ts';
import { usualCell } from '../../src/office/ui/usualCells.ts';
import { calculatorOf } from '../support/catalog.ts';
import { anOffice } from './anOffice.ts';

const local = fieldsOf(anOffice.head.name, anOffice.values, fields, (source) => source);
const startOf = (slug: string): Texts => startTexts(calculatorOf(slug).inputs);
const filled = (slug: string, now = startOf(slug)): Texts => ({ ...now, ...filledTexts(now, fillsOf(calculatorOf(slug), now, 'us', local)) });

describe('a number of an office that looks wrong', () => {
  const priced = officeSections.flatMap((section) => section.fields.map((field) => ({ at: `${section.at}.${field.at}`, field })));
  /** Each value that fills a number, with what its forms ask about. */
  const filled = Object.entries(fields).flatMap(([slug, of]) =>
    Object.entries(of).flatMap(([key, path]) => {
      const [first = '', column = ''] = key.split('.');
      const input = calculatorOf(slug).inputs[first];
      const cell = input?.kind === 'rows' ? input.columns[column] : input;
      const at = `values.${path.replace('.rows.0', '.rows')}`;
      const field = priced.find((each) => each.at === at)?.field;
      return cell?.kind === 'number' && cell.usual !== undefined && field !== undefined ? [{ slug, key, cell, field }] : [];
    }),
  );
  it.each(filled)('is asked about as $slug asks of $key', ({ cell, field }) => {
    expect(usualCell(field)).toMatchObject({ usual: cell.usual, unit: cell.unit });
  });
  it('is a hay price with its decimal point lost', () => {
    expect(filled.length).toBeGreaterThan(20);
    const hay = usualCell({ at: 'likelyUsdPerTon', label: 'Hay, likely' });
    if (!hay) throw new Error('nobody asks about hay');
    expect(doubtAbout(hay, 16500, 'us')).toMatch(/^Is \$16,500\sa\ston right\? Hay, likely: seldom above \$500/);
    expect(doubtAbout(hay, 165, 'us')).toBeUndefined();
  });
});

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
