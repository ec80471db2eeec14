import { describe, expect, it } from 'vitest';
import { number } from '../../calculators/kit/inputs.ts';
import { isHairApart } from '../support/edgeParts.ts';

const inches = number('Height', 'H', 'in', [0, 1000], 10);
const whole = number('Head', 'n', 'count', [0, 1000], 10, { whole: true });

describe('two sides of a limit', () => {
  it.each([
    ['within 1 %', '2.73in', '2.74in'],
    ['one in the last digit typed', '49', '50'],
    ['the same in another unit', '9.9cm', '10cm'],
  ])('stand a hair apart: %s', (_, one, other) => {
    expect(isHairApart(inches, [one, other])).toBe(true);
  });
  it.each([
    ['several in the last digit', '45', '50'],
    ['one in the last digit of a small number', '1', '2'],
    ['from nothing', '0', '0.01'],
    ['a long number beside a short one', '2.734', '3'],
  ])('stand too far apart: %s', (_, one, other) => {
    expect(isHairApart(inches, [one, other])).toBe(false);
  });
  it('may be declared farther apart, and stand one apart where a number is whole', () => {
    expect(isHairApart(inches, ['0', '0.01'], 0.01)).toBe(true);
    expect(isHairApart(whole, ['2', '3'])).toBe(true);
    expect(isHairApart(whole, ['2', '4'])).toBe(false);
  });
});
