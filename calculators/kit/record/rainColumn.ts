import type { Answers } from './answers.ts';
import type { Layout } from './columns.ts';
import { nothingSaid, type RecordLimits, type Said } from './said.ts';

const mostOffered = 12;
const nameOf = ({ head }: Layout, column: number): string => {
  const name = head[column] ?? '';
  return name === '' ? `column ${column + 1}` : `“${name.slice(0, 30)}”`;
};

/** Which column the rain is in. Where several may be and no name tells, people must say. */
export function rainColumn({ label }: RecordLimits, layout: Layout, answers: Answers): Said & { readonly rain: number } {
  const wanted = Number(answers['rain'] ?? Number.NaN) - 1;
  const isSaid = layout.rain.includes(wanted);
  const rain = isSaid ? wanted : (layout.rain[0] ?? 1);
  if (layout.rain.length <= 1 || layout.dates.is === 'months') return { ...nothingSaid, rain };
  const isSettled = layout.isNamed || isSaid;
  const options = layout.rain
    .slice(0, mostOffered)
    .map((column) => ({ value: String(column + 1), label: nameOf(layout, column).replace(/^c/, 'C') }));
  return {
    rain,
    questions: [{ name: 'rain', ask: 'Which column is the rain?', options, answer: isSettled ? String(rain + 1) : '' }],
    told: [],
    problem: isSettled ? undefined : `${label} has several columns of numbers. Say below which one is the rain.`,
  };
}

const dateWords = (layout: Layout): string => {
  if (layout.dates.is === 'one') return nameOf(layout, layout.dates.column);
  if (layout.dates.is === 'months') return 'a year a line, twelve months across';
  return layout.dates.day === undefined ? 'year and month' : 'year, month and day';
};
/** Where days and rain stand, in words. */
export const columnWords = (layout: Layout, rain: number): { readonly dateColumn: string; readonly rainColumn: string } => ({
  dateColumn: dateWords(layout),
  rainColumn: layout.dates.is === 'months' ? 'the twelve months' : nameOf(layout, rain),
});
