import { describe, expect, it } from 'vitest';
import { type CurveAnswers, grownPercentBy, isCurveInOrder } from '../../calculators/asks/growthCurve.ts';
import { dayMs } from '../../calculators/units/days.ts';

const dayOn = (date: string): number => Date.parse(date) / dayMs;
const answers = { curve: 'answers', startMonth: 'apr', bestMonth: 'jun', quitMonth: 'sep', fallFlush: 'none' } as const satisfies CurveAnswers;

/** Only the last bits may differ. */
const close = (one: number, other: number): void => expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-9);

describe('growth by the month', () => {
  it('is read from the printed curve that is asked for', () => {
    const by = (curve: CurveAnswers['curve']) => grownPercentBy({ ...answers, curve }, dayOn('2026-06-30'));
    close(by('nd0002'), 5 + 40 + 35);
    close(by('co6707'), 3 + 20 + 45);
    close(by('mlra69-fine-a'), 3 + 7 + 22 + 33);
  });
  it('from answers rises and falls by squares: by hand 1/9, 4/9, 1, 9/16, 4/16, 1/16 from April to September', () => {
    const all = 1 / 9 + 4 / 9 + 1 + 14 / 16;
    close(grownPercentBy(answers, dayOn('2026-06-30')), (100 * (1 / 9 + 4 / 9 + 1)) / all);
    close(grownPercentBy(answers, dayOn('2026-04-30')), 100 / 9 / all);
    close(grownPercentBy(answers, dayOn('2026-12-31')), 100);
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
