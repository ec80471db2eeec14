import { describe, expect, it } from 'vitest';
import { type CurveAnswers, grownPercentBy, isCurveInOrder } from '../../calculators/asks/growthCurve.ts';
import { dayMs } from '../../calculators/units/days.ts';

const dayOn = (date: string): number => Date.parse(date) / dayMs;
const answers = { curve: 'answers', startMonth: 'apr', bestMonth: 'jun', quitMonth: 'sep', fallFlush: 'none' } as const satisfies CurveAnswers;

describe('growth by the month', () => {
  it('is read from the printed curve that is asked for', () => {
    const by = (curve: CurveAnswers['curve']) => grownPercentBy({ ...answers, curve }, dayOn('2026-06-30'));
    expect(by('nd0002')).toBeCloseTo(5 + 40 + 35, 9);
    expect(by('co6707')).toBeCloseTo(3 + 20 + 45, 9);
    expect(by('mlra69-fine-a')).toBeCloseTo(3 + 7 + 22 + 33, 9);
  });
  it('from answers rises and falls by squares: by hand 1/9, 4/9, 1, 9/16, 4/16, 1/16 from April to September', () => {
    const all = 1 / 9 + 4 / 9 + 1 + 14 / 16;
    expect(grownPercentBy(answers, dayOn('2026-06-30'))).toBeCloseTo((100 * (1 / 9 + 4 / 9 + 1)) / all, 9);
    expect(grownPercentBy(answers, dayOn('2026-04-30'))).toBeCloseTo(100 / 9 / all, 9);
    expect(grownPercentBy(answers, dayOn('2026-12-31'))).toBeCloseTo(100, 9);
  });
  it('knows which answers are in order', () => {
    expect(isCurveInOrder(answers)).toBe(true);
    expect(isCurveInOrder({ ...answers, startMonth: 'jun' })).toBe(true);
    expect(isCurveInOrder({ ...answers, startMonth: 'jul' })).toBe(false);
    expect(isCurveInOrder({ ...answers, quitMonth: 'jun' })).toBe(true);
    expect(isCurveInOrder({ ...answers, quitMonth: 'jun', fallFlush: 'some' })).toBe(false);
    expect(isCurveInOrder({ ...answers, quitMonth: 'jul', fallFlush: 'some' })).toBe(true);
    expect(isCurveInOrder({ ...answers, quitMonth: 'may' })).toBe(false);
    // A printed curve asks for no months.
    expect(isCurveInOrder({ ...answers, curve: 'nd0002', quitMonth: 'jan' })).toBe(true);
  });
});
