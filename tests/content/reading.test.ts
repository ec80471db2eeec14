import { median } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../support/expectWithin.ts';
import { guideTexts } from '../support/guideHeads.ts';
import { gradeOf, hardestSentences, proseOf } from '../support/readingGrade.ts';

const hardestGrade = 10;
const middleGrade = 8;
/** Below the lower one a guide is choppy, above the upper one it is heavy. */
const band = { from: 4, to: 7 } as const;
const graded = guideTexts.map(({ slug, body }) => {
  const prose = proseOf(body);
  return { slug, prose, grade: gradeOf(prose) };
});

describe('the measure', () => {
  it('puts plain talk low and heavy talk high', () => {
    expect(gradeOf('The cow eats the grass. Then she lies down. The rain goes into the ground.')).toBeLessThan(3);
    expect(
      gradeOf('Utilization of supplementary concentrates necessitates nutritional consultation, particularly regarding preconditioned individuals.'),
    ).toBeGreaterThan(hardestGrade);
  });

  it('works the printed formula: four words of one syllable in a sentence', () => {
    // Kincaid and others (1975): 0.39 x 4 + 11.8 x 1 - 15.59.
    expectWithin(gradeOf('Cows eat much grass. Rain comes down hard.'), -2.23, 1e-8);
  });

  it('reads figures aloud', () => {
    expectWithin(gradeOf('It takes 2.5 inches, or 27,154 gallons.'), gradeOf('It takes twenty inches, or twenty gallons.'), 1e-8);
  });

  it('reads the words only: no citation, address, table or drawing', () => {
    const body =
      'Look at [the grass](/guides/x/) <Cite key="a" at="b" /> (common practice).\n\n| a | b |\n| - | - |\n| 1 | 2 |\n\n<Drawing name="d" says="s" />';
    expect(proseOf(body)).toBe('Look at the grass.');
  });
});

describe('the guides', () => {
  it.each(graded)(`$slug reads at grade ${hardestGrade} or below`, ({ grade, prose }) => {
    expect(grade, `grade ${grade.toFixed(1)}. Hardest sentences:\n${hardestSentences(prose, 6).join('\n')}`).toBeLessThanOrEqual(hardestGrade);
  });

  it.each(graded)(`$slug reads at grade ${band.from} to ${band.to}`, ({ grade }) => {
    const shown = `grade ${grade.toFixed(2)}. Too low: join sentences that belong together. Too high: part the longest, use shorter words.`;
    expect(grade, shown).toBeGreaterThanOrEqual(band.from);
    expect(grade, shown).toBeLessThanOrEqual(band.to);
  });

  it(`read at grade ${middleGrade} or below in the middle of them`, () => {
    const list = graded.map(({ slug, grade }) => `${slug} ${grade.toFixed(1)}`).join(', ');
    expect(
      median(graded, ({ grade }) => grade),
      list,
    ).toBeLessThanOrEqual(middleGrade);
  });
});
