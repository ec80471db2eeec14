import { expect, it } from 'vitest';
import { understandRecord } from '../../calculators/kit/record/understandRecord.ts';
import { near } from '../support/near.ts';

const gauge = { label: 'Rain record', unit: 'in', min: 0, max: 60, maxRows: 60_000 } as const;
const read = (text: string) => understandRecord({ ...gauge, takesTemperatures: true }, text);
const lines = (...rows: readonly string[]): string => rows.join('\n');
const warmth = (text: string) => read(text).lines.map(({ highF, lowF }) => [highF, lowF]);

it('takes highs and lows from the columns that a line names, however it names them', () => {
  for (const [high, low] of [
    ['highF', 'lowF'],
    ['TMAX (F)', 'TMIN (F)'],
    ['Max temp °F', 'Min temp °F'],
    ['temp_max_F', 'temp_min_F'],
    ['Maximum air temperature (F)', 'Minimum air temperature (F)'],
    ['High (Fahrenheit)', 'Low (Fahrenheit)'],
  ]) {
    expect(warmth(lines(`date,${high},rain (in),${low}`, '2026-03-01,51,0.1,30', '2026-03-02,-4.5,0,-20')), `${high}`).toEqual([
      [51, 30],
      [-4.5, -20],
    ]);
  }
});
it('reads Celsius as its head says, and by how large the numbers are where nothing says', () => {
  expect(warmth(lines('date,rain (in),tmax (C),tmin (C)', '2026-03-01,0.1,100,0'))).toEqual([[undefined, 32]]);
  const days = (high: string, low: string) => lines('date,rain (in),tmax,tmin', ...[1, 2, 3].map((day) => `2026-07-0${day},0,${high},${low}`));
  expect(warmth(days('30', '10'))[0]).toEqual([86, 50]);
  expect(warmth(days('86', '50'))[0]).toEqual([86, 50]);
  expect(warmth(days('300', '100'))[0]).toEqual([86, 50]);
  expect(read(days('300', '100')).told).toContain('Highs and lows come from “tmax” and “tmin”, taken as Tenths of °C, by how large they are.');
  // People may say otherwise.
  expect(warmth(`#= warmth=f\n${days('30', '10')}`)[0]).toEqual([30, 10]);
  expect(read(days('30', '10')).questions.find(({ name }) => name === 'warmth')).toMatchObject({ answer: 'c' });
});
it('takes one slip of the pen, and a code for what is lacking, for no sign of another scale', () => {
  const days = (highs: readonly string[]) =>
    lines('date,rain (in),tmax,tmin', ...highs.map((high, at) => `${new Date(Date.UTC(2026, 0, 1 + at)).toISOString().slice(0, 10)},0,${high},10`));
  const usual = Array.from({ length: 200 }, () => '30');
  const scaleOf = (...slips: readonly string[]) => read(days([...usual, ...slips])).questions.find(({ name }) => name === 'warmth')?.answer;
  expect([scaleOf('300'), scaleOf('300', '301', '302', '303')]).toEqual(['c', 'tenths-c']);
  expect([scaleOf('86'), scaleOf('86', '87', '88', '89')]).toEqual(['c', 'f']);
  expect(scaleOf('999', '9999', '9999', '9999', '9999')).toBe('c');
});
it('tells what is lacking, and believes neither a high below its low nor a code', () => {
  const text = lines('date,rain (in),high F,low F', '2026-07-01,0,90,60', '2026-07-02,0,,60', '2026-07-03,0,-9999,999', '2026-07-04,0,50,70');
  expect(warmth(text)).toEqual([
    [90, 60],
    [undefined, 60],
    [undefined, undefined],
    [undefined, undefined],
  ]);
  expect(read(text).told).toEqual(
    expect.arrayContaining(['Without a high or a low: 2 days.', 'The high lies below the low, so neither is used: 1 day.']),
  );
});
it('reads decimal commas where they are meant', () => {
  const [first] = read(lines('date;rain (mm);tmax (C);tmin (C)', '2026-07-01;2,5;20,5;10,5')).lines;
  near(Number(first?.highF), 68.9, 1e-9);
});
it('leaves totals over several days without, and a form that takes none as it was', () => {
  const text = lines('date,rain (in),high F,low F', '2026-07-01,0.2,90,60');
  expect(understandRecord(gauge, text).lines).toEqual([{ day: Date.UTC(2026, 6, 1) / 86_400_000, amount: 0.2 }]);
  expect(read(lines('month,rain (in),high F,low F', '2026-06,3,90,60', '2026-07,2,90,60')).lines.every((line) => !('highF' in line))).toBe(true);
});
