import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { ClockQuestion, problemOfToday } from '../../calculators/ui/ClockQuestion.tsx';
import { dayOf } from '../../calculators/units/printQuantity.ts';

const day = (iso: string): number => {
  const found = dayOf(iso);
  if (found === undefined) throw new RangeError(iso);
  return found;
};
const days = { deviceDay: day('2019-01-03'), builtDay: day('2026-11-28') };
const draw = (answeredDay?: number) =>
  render(<ClockQuestion id="sink-today" {...days} {...(answeredDay === undefined ? {} : { answeredDay })} onAnswer={() => {}} />);

describe('a clock that is doubted', () => {
  it('is asked about, with a labeled date field that begins at what it says', () => {
    const html = draw();
    expect(html).toContain('This device says Jan 3, 2019. Is that today?');
    expect(html).toContain('<label for="sink-today">Today is</label>');
    expect(html).toMatch(/<input id="sink-today" type="date"[^>]*value="2019-01-03"/);
  });
  it('is not asked again once answered; the day in use stands there and can be changed', () => {
    const html = draw(day('2026-11-30'));
    expect(html).not.toContain('Is that today?');
    expect(html).toContain('Today is Nov 30, 2026, as you said.');
    expect(html).toContain('Change it');
  });
  it('takes no day before these pages were made, but for the day before: it may still be that farther west', () => {
    const problem = (text: string) => problemOfToday(text, days.builtDay);
    expect(problem('2026-11-26')).toBe('These pages were made on Nov 28, 2026, so today cannot be Nov 26, 2026. Put in today’s date.');
    expect([problem('2026-11-27'), problem('2026-11-28'), problem('2031-02-28')]).toEqual([undefined, undefined, undefined]);
  });
  it('takes no half of a date', () => {
    for (const text of ['', '2026', '2027-02-29', '12027-01-01'])
      expect(problemOfToday(text, days.builtDay)).toBe('Put in the whole date of today: month, day and year.');
  });
});
