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
  it('takes the step of the definition, else one in the last place', () => {
    expect(stepped(rain, '3', 1)).toBe('3.25');
    expect(stepped(rain, '3', -1)).toBe('2.75');
    expect(stepped(weight, '1250', 1)).toBe('1251');
    expect(Number(stepped(share, '1', 1))).toBeGreaterThan(1);
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
  it('steps in the metric unit when that is shown, inside the same limits', () => {
    // The example of 3 in is 76.2 mm: a tenth of a millimeter is its last place.
    expect(stepped(rain, '50 mm', 1, 'si')).toBe('50.1');
    expect(Number(stepped(rain, '762 mm', 1, 'si'))).toBeLessThanOrEqual(762);
  });
});
