import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type NumberInput, number } from '../../calculators/kit/inputs.ts';
import { shownText } from '../../calculators/ui/fieldText.ts';
import { steppedText } from '../../calculators/ui/step.ts';

const rain = number('Rain', 'P', 'in', [0.05, 30], 3, { step: 0.25 });
const weight = number('Weight', 'W', 'lb', [100, 2000], 1250, {});
const share = number('Share', 's', 'ratio', [0, 2], 2.35 / 2, {});
/** As the field shows it, without the mark of its unit. */
const stepped = (input: NumberInput, text: string, direction: 1 | -1, system: 'us' | 'si' = 'us'): string =>
  shownText(steppedText(input, text, direction, system), input.unit, system);

describe('one tap on plus or minus', () => {
  it('takes the step of the definition, else a round figure near a hundredth of the number', () => {
    expect(stepped(rain, '3', 1)).toBe('3.25');
    expect(stepped(rain, '3', -1)).toBe('2.75');
    expect(stepped(weight, '1250', 1)).toBe('1260');
    const yearly = number('Yield', 'Y', 'lb/ac', [50, 20_000], 2690, {});
    expect([stepped(yearly, '2690', 1), stepped(yearly, '2690', -1), stepped(yearly, '300', 1)]).toEqual(['2710', '2670', '302']);
    // 2,690 lb/ac are 3,015 kg/ha: a pound an acre is 1.12 kg a hectare.
    expect(stepped(yearly, '3015 kg/ha', 1, 'si')).toBe('3020');
    // Never finer than the example is written.
    expect([stepped(yearly, '60', 1), stepped(share, '1', 1)]).toEqual(['61', '1.01']);
  });
  it('is a hundredth of the number within a half, a 1, 2 or 5 with noughts, and comes back', () => {
    const any = number('Any', 'a', 'lb/ac', [0, 1e9], 1, {});
    fc.assert(
      fc.property(fc.integer({ min: 150, max: 1e7 }), (value) => {
        const step = Number(stepped(any, String(value), 1)) - value;
        expect(step / value).toBeGreaterThan(0.006);
        expect(step / value).toBeLessThan(0.016);
        expect(String(step)).toMatch(/^[125]0*$/);
      }),
    );
    expect(stepped(any, stepped(any, '2690', 1), -1)).toBe('2690');
  });
  it('counts one by one, whatever its size', () => {
    const one = (more: object, unit: 'head' | 'count' | 'd' | 'lb') => stepped(number('Count', 'n', unit, [0, 10_000], 450, more), '450', 1);
    expect([one({}, 'head'), one({}, 'count'), one({}, 'd'), one({ whole: true }, 'lb')]).toEqual(Array(4).fill('451'));
    expect(stepped(number('Days', 'n', 'd', [0, 10_000], 450, {}), '450', 1, 'si')).toBe('451');
  });
  it('stops at the limits', () => {
    expect(stepped(rain, '0.1', -1)).toBe('0.05');
    expect(stepped(rain, '30', 1)).toBe('30');
    expect(stepped(weight, '2000', 1)).toBe('2000');
  });
  it('leaves no tail of a binary fraction', () => {
    expect(stepped(number('Height', 'h', 'in', [0, 5], 0.5, { step: 0.1 }), '0.2', 1)).toBe('0.3');
  });
  it('starts from the least where there is no number yet', () => {
    expect(stepped(rain, '', 1)).toBe('0.05');
    expect(stepped(rain, 'a lot', 1)).toBe('0.05');
  });
  it('goes on from a text with a unit of its own, in the unit of the field', () => {
    // 50.8 mm are 2 in exactly.
    expect(stepped(rain, '50.8 mm', 1)).toBe('2.25');
  });
  it('goes on from a converted number to the next round one', () => {
    // 50 mm are 1.968504 in, by the definition of the inch.
    expect(stepped(rain, '50 mm', 1)).toBe('2');
    expect(stepped(rain, '50 mm', -1)).toBe('1.75');
  });
  it('steps by a round number of the metric unit when that is shown, onto its multiples', () => {
    // A quarter of an inch is 6.35 mm, so a tap is 5; five dollars a short ton are 5.51 a metric ton, a pound 0.45 kg.
    expect(stepped(rain, '50 mm', 1, 'si')).toBe('55');
    expect(stepped(rain, '76.2 mm', 1, 'si')).toBe('80');
    expect(stepped(rain, '76.2 mm', -1, 'si')).toBe('75');
    expect(stepped(number('Price', 'p', 'usd/ton', [10, 1000], 140, { step: 5 }), '154.3 usd/tonne', 1, 'si')).toBe('155');
    // A hundredth of 567 kg is nearest to 5.
    expect(stepped(weight, '567 kg', 1, 'si')).toBe('570');
    expect(stepped(number('Stubble', 's', 'in', [1, 14], 3.5, {}), '88.9 mm', 1, 'si')).toBe('90');
    // A degree Fahrenheit is 5/9 of one Celsius.
    expect(stepped(number('Air', 'T', 'f', [-40, 120], 90, {}), '-1 c', -1, 'si')).toBe('-1.5');
  });
  it('stays inside the same limits there, and never goes the other way', () => {
    // 762 mm and 1.27 mm are the limits; the multiples of 5 inside them are 760 and 5.
    expect(stepped(rain, '757 mm', 1, 'si')).toBe('760');
    expect(stepped(rain, '761\u00a0mm', 1, 'si')).toBe('761');
    expect(stepped(rain, '7 mm', -1, 'si')).toBe('5');
    expect(stepped(rain, '2\u00a0mm', -1, 'si')).toBe('2');
    expect(stepped(rain, '', 1, 'si')).toBe('5');
  });
});
