import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CurveAnswers, grownPercentBy, growthBegins, isCurveInOrder, isOneGrowth } from '../../calculators/asks/growthCurve.ts';
import { dayMs, firstOfMonth } from '../../calculators/units/days.ts';
import { monthKeys } from '../../calculators/units/months.ts';

const dayOn = (date: string): number => Date.parse(date) / dayMs;
const answers = { curve: 'answers', startMonth: 'apr', bestMonth: 'jun', quitMonth: 'sep', fallFlush: 'none' } as const satisfies CurveAnswers;
/** Annual range of California, and summer grass south of the equator. */
const annual = { ...answers, startMonth: 'nov', bestMonth: 'mar', quitMonth: 'may' } as const satisfies CurveAnswers;
const south = { ...answers, startMonth: 'oct', bestMonth: 'dec', quitMonth: 'mar' } as const satisfies CurveAnswers;
const month = (index: number) => {
  const found = monthKeys()[((index % 12) + 12) % 12];
  if (found === undefined) throw new RangeError(`no month ${index}`);
  return found;
};
/** The growth that is under way at the end of a day, or past by then. */
const grownBy = (curve: CurveAnswers, date: string, lastDate = date): number =>
  grownPercentBy(curve, growthBegins(curve, dayOn(lastDate)), dayOn(date));

/** Only the last bits may differ. */
const close = (one: number, other: number): void => expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-9);

describe('growth by the month', () => {
  it('is read from the printed curve that is asked for', () => {
    const by = (curve: CurveAnswers['curve']) => grownBy({ ...answers, curve }, '2026-06-30');
    close(by('nd0002'), 5 + 40 + 35);
    close(by('co6707'), 3 + 20 + 45);
    close(by('mlra69-fine-a'), 3 + 7 + 22 + 33);
  });
  it('from answers rises and falls by squares: by hand 1/9, 4/9, 1, 9/16, 4/16, 1/16 from April to September', () => {
    const all = 1 / 9 + 4 / 9 + 1 + 14 / 16;
    close(grownBy(answers, '2026-06-30'), (100 * (1 / 9 + 4 / 9 + 1)) / all);
    close(grownBy(answers, '2026-04-30'), 100 / 9 / all);
    close(grownBy(answers, '2026-12-31'), 100);
  });
  it('knows which answers are in order', () => {
    expect(isCurveInOrder(answers)).toBe(true);
    expect(isCurveInOrder({ ...answers, startMonth: 'jun' })).toBe(true);
    expect(isCurveInOrder({ ...answers, startMonth: 'jul' })).toBe(false);
    expect(isCurveInOrder({ ...answers, quitMonth: 'jun' })).toBe(true);
    expect(isCurveInOrder({ ...answers, quitMonth: 'jun', fallFlush: 'some' })).toBe(false);
    expect(isCurveInOrder({ ...answers, quitMonth: 'jul', fallFlush: 'some' })).toBe(true);
    expect(isCurveInOrder({ ...answers, quitMonth: 'may' })).toBe(false);
    // Over New Year, and twelve months at most.
    expect([annual, south].every(isCurveInOrder)).toBe(true);
    expect(isCurveInOrder({ ...answers, quitMonth: 'mar' })).toBe(true);
    expect(isCurveInOrder({ ...answers, quitMonth: 'apr' })).toBe(false);
    expect(isCurveInOrder({ ...annual, bestMonth: 'jun' })).toBe(false);
    // A printed curve asks for no months.
    expect(isCurveInOrder({ ...answers, curve: 'nd0002', quitMonth: 'jan' })).toBe(true);
  });
  it('goes on over New Year: by hand 1, 4, 9, 16, 25 of 25 from November to March, 4/9 in April, 1/9 in May', () => {
    // 55/25 + 5/9 = 620/225 in all; by January 31 14/25 = 126/225 of it, by March 31 495/225.
    close(grownBy(annual, '2027-01-31'), (100 * 126) / 620);
    close(grownBy(annual, '2027-03-31'), (100 * 495) / 620);
    // The whole of December is 4/25 = 36/225: its first 15 days are 15/31 of that.
    close(grownBy(annual, '2026-12-15'), (100 * (9 + (36 * 15) / 31)) / 620);
    for (const date of ['2027-05-31', '2027-10-31']) close(grownBy(annual, date), 100);
    close(grownBy(annual, '2026-11-30'), (100 * 9) / 620);
    // October to December 1, 4, 9 of 9, then 9/16, 4/16, 1/16 to March: 352/144 in all, 224/144 of it by December 31.
    close(grownBy(south, '2026-12-31'), (100 * 224) / (224 + 126));
  });
  it('has none of a growth before it begins, and all of it a year on', () => {
    for (const each of [answers, annual, south]) {
      const beginDay = growthBegins(each, dayOn('2027-02-15'));
      expect(grownPercentBy(each, beginDay, beginDay - 1)).toBe(0);
      expect(grownPercentBy(each, beginDay, beginDay)).toBeGreaterThan(0);
      close(grownPercentBy(each, beginDay, beginDay + 400), 100);
    }
    // 29 February is read as 1 March, in the midst of growth and at its end.
    close(grownBy(annual, '2028-02-29'), grownBy(annual, '2028-03-01'));
    const toFebruary = { ...answers, startMonth: 'mar', bestMonth: 'may', quitMonth: 'feb' } as const;
    close(grownBy(toFebruary, '2028-02-29'), 100);
  });
  it('knows when a season lives on one growth', () => {
    const one = (curve: CurveAnswers, from: string, to: string) => isOneGrowth(curve, dayOn(from), dayOn(to));
    // April to September: the winter before belongs to it, and so does the one after.
    expect(one(answers, '2026-10-01', '2027-09-30')).toBe(true);
    expect(one(answers, '2026-09-30', '2027-09-30')).toBe(false);
    expect(one(answers, '2026-09-30', '2027-03-31')).toBe(true);
    expect(one(answers, '2026-04-01', '2027-04-01')).toBe(false);
    expect(one(annual, '2026-11-01', '2027-10-31')).toBe(true);
    expect(one(annual, '2027-05-31', '2027-11-01')).toBe(false);
    expect(one(annual, '2027-06-01', '2027-11-01')).toBe(true);
    // Where grass grows all year, a season begins with the growth.
    const all = { ...answers, startMonth: 'aug', bestMonth: 'nov', quitMonth: 'jul' } as const;
    expect(one(all, '2026-08-01', '2027-07-31')).toBe(true);
    expect(one(all, '2026-07-31', '2026-08-15')).toBe(false);
  });
  it('turned by some months says the same by days turned by as many', () => {
    const at = fc.integer({ min: 0, max: 11 });
    fc.assert(
      fc.property(
        at,
        at,
        at,
        fc.constantFrom('none' as const, 'some' as const, 'much' as const),
        fc.integer({ min: 1, max: 12 }),
        fc.array(at, { minLength: 1 }),
        (start, one, other, fallFlush, turn, ends) => {
          const [best, quit] = [Math.min(one, other), Math.max(one, other)];
          fc.pre(fallFlush === 'none' || best < quit);
          const shape = (turned: number): CurveAnswers => ({
            curve: 'answers',
            startMonth: month(start + turned),
            bestMonth: month(start + best + turned),
            quitMonth: month(start + quit + turned),
            fallFlush,
          });
          // Ends of months: days within one are shared out by its own length, and none of them is a leap day.
          const lastOf = (index: number) => firstOfMonth(start + index + 1, 2025) - 1;
          expect(isCurveInOrder(shape(turn))).toBe(true);
          expect(growthBegins(shape(turn), lastOf(turn))).toBe(firstOfMonth(start + turn, 2025));
          for (const index of ends)
            close(
              grownPercentBy(shape(turn), firstOfMonth(start + turn, 2025), lastOf(index + turn)),
              grownPercentBy(shape(0), firstOfMonth(start, 2025), lastOf(index)),
            );
          const isOne = (turned: number): boolean => isOneGrowth(shape(turned), lastOf(one - 12 + turned), lastOf(other + turned));
          expect(isOne(turn)).toBe(isOne(0));
        },
      ),
    );
  });
});
