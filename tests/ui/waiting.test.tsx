import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../calculators/kit/state.ts';
import { Waiting } from '../../calculators/ui/Waiting.tsx';
import kitchenSink from '../kit/kitchenSink.ts';

const told = (problems: readonly Problem[], blank: readonly string[] = []) =>
  render(<Waiting id="sink" inputs={kitchenSink.inputs} problems={problems} isBlank={(at) => blank.includes(at)} />);
/** Each line: where it leads, and what it says. */
const lines = (html: string) =>
  [...html.matchAll(/<li>(?:<a href="([^"]*)">)?([^<]*)/g)].map(([, to, says]) => (to === undefined ? says : `${to} ${says}`));

const rain = { at: 'rainIn', say: 'Rain must be a number.' };
const weight = { at: 'herd.1.weightLb', say: 'Weight must be a number.' };
const july = { at: 'monthlyIn.6', say: 'July must be a number.' };
const field = { at: 'fieldAc', say: 'Field must be a number.' };
const mean = { at: 'meanF', say: 'Mean temperature must be a number.' };

describe('what an answer waits for', () => {
  it('says of a wrong answer what would be right, of a cell in which row, and leads to its field, in a table and in a year as well', () => {
    expect(lines(told([rain, weight, july]))).toEqual([
      `#sink-rainIn ${rain.say}`,
      `#sink-herd-1-weightLb Kind of stock 2, ${weight.say}`,
      `#sink-monthlyIn-6 ${july.say}`,
    ]);
  });
  it('only names what is still empty; of a cell its row and column', () => {
    expect(lines(told([rain, weight, july], ['rainIn', 'herd.1.weightLb', 'monthlyIn.6']))).toEqual([
      '#sink-rainIn Rain',
      '#sink-herd-1-weightLb Kind of stock 2, Weight',
      '#sink-monthlyIn-6 Rain by month',
    ]);
  });
  it('tells what is wrong before what is empty, and counts the rest', () => {
    expect(lines(told([rain, field, mean], ['rainIn', 'fieldAc']))).toEqual([`#sink-meanF ${mean.say}`, 'and 2 more']);
  });
  it('lists three, and counts the rest', () => {
    expect(lines(told([rain, field, mean]))).toHaveLength(3);
    expect(lines(told([rain, field, mean, weight])).at(-1)).toBe('and 1 more');
  });
  it('gives a fault of the page itself in its own words, which lead to no field', () => {
    expect(lines(told([{ at: '', say: 'The fault is in this page.' }]))).toEqual(['The fault is in this page.']);
  });
});
