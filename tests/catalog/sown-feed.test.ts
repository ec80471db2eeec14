import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import definition from '../../calculators/catalog/sown-feed/definition.ts';
import { inputs } from '../../calculators/catalog/sown-feed/inputs.ts';
import { resultAt, runLink, runQuery } from '../../calculators/kit/cases.ts';
import { toLink } from '../../calculators/kit/link.ts';
import { printInput } from '../../calculators/kit/print.ts';
import { readCell } from '../../calculators/kit/read.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { keptText, shownText } from '../../calculators/ui/fieldText.ts';
import { dayMs } from '../../calculators/units/days.ts';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { between } from '../support/numbers.ts';

const run = (query: string) => runQuery(definition, query);
const numberAt = (query: string, path: string): number => Number(resultAt(run(query), path));
const stored = (inches: number) => `stored-from=known&known-stored=${inches.toFixed(6)}in`;
const inches = between(0, 20);

describe('sown-feed', () => {
  test('takes water for a metric ton on a hectare, and links before it as they were meant', () => {
    // An inch is 25.4 mm, a ton an acre 2000 x 0.45359237 kg on 4046.8564224 m² (NIST SP 811): 3 in for it are 33.99 mm for a metric ton a hectare.
    const tons = (water: string) =>
      numberAt(`crop=own&most=15ton/ac&${stored(12)}&likely-rain=0in&low-rain=0in&water-per-ton=${water}`, 'likelyTonPerAc');
    for (const water of ['3in', '76.2mm', '3in/ton/ac', `${(3 * 25.4) / (907.18474 / 404.68564224)}mm/tonne/ha`]) expectWithin(tons(water), 4, 1e-9);
    expectWithin(tons('34mm/tonne/ha'), 12 / 3.0007, 1e-3);
    expect(printInput(3, inputs.waterPerTonIn, 'si')).toBe('34.0 mm per tonne/ha');
    expect(keptText('34', 'in/ton/ac', 'si')).toBe('34\u00a0mm/tonne/ha');
  });
  test('takes water that is typed in millimeters for the ground that its field names, and keeps what was typed', () => {
    const read = (typed: string, system: 'us' | 'si') => {
      const reading = readCell(inputs.waterPerTonIn, keptText(typed, 'in/ton/ac', system), system);
      return 'value' in reading && typeof reading.value === 'number' ? reading.value : Number.NaN;
    };
    // An inch is 25.4 mm, a short ton an acre 2.2417 metric tons a hectare (NIST SP 811): 34 mm for a metric ton a hectare are 3.0007 in for a ton an acre.
    const tonAcre = 907.18474 / 404.68564224;
    for (const typed of ['34 mm', '34mm', '34 millimeters', '34 mm per tonne/ha']) expectWithin(read(typed, 'si'), (34 / 25.4) * tonAcre, 1e-9);
    // Beside inches for a ton an acre, and where the ground is named, millimeters are for a ton an acre. So are inches beside millimeters.
    expectWithin(read('76.2 mm', 'us'), 3, 1e-9);
    expectWithin(read('76.2 mm per ton/ac', 'si'), 3, 1e-9);
    expectWithin(read('3 in', 'si'), 3, 1e-9);
    const kept = keptText('34 mm', 'in/ton/ac', 'si');
    expect([shownText(kept, 'in/ton/ac', 'si'), shownText(kept, 'in/ton/ac', 'us')]).toEqual(['34 mm', '34 mm/tonne/ha']);
    const form = { this: { ...startTexts(inputs, 'si'), waterPerTonIn: kept }, that: null };
    expect(toLink(definition, form)).toContain('&water-per-ton=34mm/tonne/ha&');
  });
  test('takes the cost of a hectare, also where its dollars are typed with their sign', () => {
    const cost = (seed: string) => numberAt(`seed=${seed}&sowing=0usd&feed=0usd&other=0usd`, 'acreCostUsd');
    expectWithin(cost('35usd'), 35, 1e-9);
    // A hectare is 2.47105 acres (NIST SP 811).
    expectWithin(cost('100usd/ha'), 40.4686, 1e-4);
    for (const typed of ['$100', '100 dollars', '100 usd'])
      expectWithin(Number(Object.values(readCell(inputs.seedUsd, keptText(typed, 'usd/ac', 'si')))[0]), 100 / 2.4710538, 1e-6);
    expect(keptText('$100', 'usd/ac', 'si')).toBe('$100\u00a0usd/ha');
    expect(readCell(inputs.hayPriceUsdPerTon, keptText('$95', 'usd/ton', 'si'))).toEqual(readCell(inputs.hayPriceUsdPerTon, '95 usd/tonne'));
  });

  test('counts the first use from the sowing on', () => {
    // Sudangrass, 35 days from the first of May: 30 to the end of the month and 5 more.
    expect(numberAt('sow=2027-05-01', 'crops.0.fewDays')).toBe(35);
    expect(numberAt('sow=2027-05-01', 'crops.0.firstUseDay')).toBe(Date.UTC(2027, 5, 5) / dayMs);
  });

  test('calls a crop late, just in time or in time by the days left to frost', () => {
    const { crops } = run('sow=2027-05-01').values;
    const lines = Array.isArray(crops) ? crops : [];
    expect(lines.length).toBeGreaterThan(3);
    for (const [at, line] of lines.entries()) {
      const fits = (days: number): unknown =>
        resultAt(run(`sow=2027-05-01&frost=${isoDay(Date.UTC(2027, 4, 1) / dayMs + days)}`), `crops.${at}.fits`);
      const [few, many] = [Number(line['fewDays']), Number(line['manyDays'])];
      expect([fits(few - 1), fits(few), fits(many)], String(line['crop'])).toEqual(['late', few < many ? 'just' : 'yes', 'yes']);
      if (few < many) expect(fits(many - 1), String(line['crop'])).toBe('just');
    }
  });
  test('oats and turnips wait for late summer in the list, as the caution says, ninety days before the frost at most', () => {
    const fits = (days: number): Record<string, unknown> => {
      const { crops } = run(`sow=2027-05-01&frost=${isoDay(Date.UTC(2027, 4, 1) / dayMs + days)}`).values;
      return Object.fromEntries((Array.isArray(crops) ? crops : []).map((line) => [String(line['crop']), line['fits']]));
    };
    expect(fits(90)).toMatchObject({ 'oats-fall': 'yes', turnips: 'yes', sudangrass: 'yes' });
    expect(fits(91)).toMatchObject({ 'oats-fall': 'early', turnips: 'early', sudangrass: 'yes' });
  });

  test('keeps warm-season crops out of cold ground in the list, and the others in', () => {
    const { crops } = run('sow=2027-05-01&soil-warm=no').values;
    const fits = (Array.isArray(crops) ? crops : []).map((line) => [line['crop'], line['fits'] === 'cold']);
    expect(fits.filter(([, isCold]) => isCold).map(([crop]) => crop)).toContain('sudangrass');
    expect(fits.find(([crop]) => crop === 'turnips')?.[1]).toBe(false);
  });

  test('more water never means fewer tons, nor a dearer ton', () => {
    fc.assert(
      fc.property(inches, inches, (one, other) => {
        const [less, more] = [stored(Math.min(one, other)), stored(Math.max(one, other))];
        expect(numberAt(more, 'likelyTonPerAc')).toBeGreaterThanOrEqual(numberAt(less, 'likelyTonPerAc'));
        expect(numberAt(more, 'sownUsdPerTon')).toBeLessThanOrEqual(numberAt(less, 'sownUsdPerTon') + 1e-9);
      }),
    );
  });

  test('more failures never make a ton cheaper', () => {
    for (let fails = 1; fails <= 9; fails++)
      expect(numberAt(`fail=${fails}`, 'sownUsdPerTon')).toBeGreaterThan(numberAt(`fail=${fails - 1}`, 'sownUsdPerTon'));
  });

  test('at the stored water that it asks for, a ton costs what hay costs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 400 }), fc.integer({ min: 0, max: 7 }), fc.constantFrom('graze', 'bale'), (price, fails, use) => {
        const query = `hay-price=${price}usd/ton&fail=${fails}&use=${use}`;
        const need = numberAt(query, 'needStoredIn');
        if (resultAt(run(query), 'canPay') === 'no' || need === 0 || need > 20) return;
        const there = `${query}&stored-from=known&known-stored=${need.toFixed(9)}in`;
        expectWithin(numberAt(there, 'sownUsdPerTon'), numberAt(there, 'hayEatenUsdPerTon'), 5e-5);
      }),
    );
  });

  test('every crop warns of what it can do to stock, before the number', () => {
    const says = (crop: string) =>
      run(`crop=${crop}`)
        .cautions.map(({ say }) => say)
        .join(' ');
    for (const crop of ['sudangrass', 'sorghum-sudangrass']) expect(says(crop)).toContain('prussic acid');
    for (const crop of ['sudangrass', 'sorghum-sudangrass', 'pearl-millet', 'foxtail-millet', 'oats-fall', 'turnips'])
      expect(says(crop)).toContain('nitrate');
    expect(says('pearl-millet')).not.toContain('Sorghums can kill');
    expect(says('turnips')).toContain('bloat');
    expect(says('own')).toContain('ask what it can do to stock');
  });

  test('hay of sorghum is not cleared by drying, and millet hay is not for horses', () => {
    const says = (query: string) =>
      run(query)
        .cautions.map(({ say }) => say)
        .join(' ');
    expect(says('crop=sudangrass&use=bale')).toContain('Drying does not clear');
    expect(says('crop=sudangrass&use=graze')).not.toContain('Drying does not clear');
    expect(says('crop=pearl-millet&use=bale')).not.toContain('Drying does not clear');
    expect(says('crop=foxtail-millet')).toContain('horse’s main hay');
    expect(says('crop=pearl-millet')).not.toContain('horse’s main hay');
    expect(says('use=graze')).toContain('fog fever');
    expect(says('use=bale')).not.toContain('fog fever');
  });

  test('past the last day it tells no price of a crop that frost would take', () => {
    const outcome = run('sow=2027-10-01');
    expect(resultAt(outcome, 'verdict')).toBe('late');
    expect(outcome.shown).not.toContain('sownUsdPerTon');
    expect(outcome.note).toContain('frost comes first');
  });

  test.each([
    ['a frost that is long past', 'sow=2027-05-20&frost=2020-01-01', 'before the sowing'],
    ['a frost after the next one', 'sow=2026-09-20&frost=2027-10-01', 'more than a year after'],
  ])('refuses %s at its field, and says what would be right', (_, query, words) => {
    const refused = runLink(definition, query, {});
    if (!('refusals' in refused)) throw new Error('not refused');
    expect(refused.refusals.map(({ at }) => at)).toEqual(['frostDay']);
    expect(refused.refusals[0]?.say).toContain(words);
    expect(refused.refusals[0]?.say).toContain('Put in the first');
  });
  test('warns of the frosts between for a summer crop that is sown in late fall, and for no other', () => {
    const cautioned = (query: string): boolean => run(query).cautions.some(({ lead }) => lead.startsWith('Sown this soon after last fall’s frost'));
    expect(cautioned('sow=2026-11-20&frost=2027-10-01')).toBe(true);
    expect(cautioned('sow=2026-11-20&frost=2027-10-01&crop=oats-fall')).toBe(false);
    for (const sow of ['2027-03-15', '2027-05-20', '2027-08-01']) expect(cautioned(`sow=${sow}&frost=2027-10-15`), sow).toBe(false);
    // A long southern season.
    expect(cautioned('sow=2027-03-15&frost=2027-11-30')).toBe(false);
  });
});
