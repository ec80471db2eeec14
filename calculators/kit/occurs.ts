import { monthIndexOf, sameDayIn, yearOf } from '../units/days.ts';
import { dayOf, isoDay } from '../units/printQuantity.ts';
import type { Calculator } from './define.ts';
import type { Cell, Inputs, Occurs } from './inputs.ts';
import { readForm, rowsIn, type Text, type Texts, textIn } from './state.ts';

/** The day on which a date of the example falls, seen from today. `dayAt` gives the day of another date by its name. */
export function occurrenceOf(occurs: Occurs, day: number, todayDay: number, dayAt: (key: string) => number): number {
  if (occurs === 'fixed') return day;
  if (occurs === 'today') return todayDay;
  if (occurs === 'thisYear') return sameDayIn(day, yearOf(todayDay));
  if ('daysAfterToday' in occurs) return todayDay + occurs.daysAfterToday;
  const anchor = 'lastBy' in occurs ? occurs.lastBy : occurs.nextFrom;
  const anchorDay = anchor === 'today' ? todayDay : dayAt(anchor);
  const inYear = (after: number): number => sameDayIn(day, yearOf(anchorDay) + after);
  if ('nextFrom' in occurs) return inYear(0) >= anchorDay ? inYear(0) : inYear(1);
  const last = inYear(0) <= anchorDay ? inYear(0) : inYear(-1);
  return occurs.notBefore === undefined ? last : Math.max(last, todayDay);
}

/** An example as it stands on a day. */
export interface Example {
  readonly texts: Texts;
  /** Where today stands in it, as a problem tells its place: `todayDay`, `steps.0.day`. Each is marked whose today that is. */
  readonly todayAt: readonly string[];
  /** Its dates would be refused on that day, such as a grazing season in winter: all of them are as they were built, under `exampleDates`. */
  readonly isExampleDates: boolean;
}
/** Dates moved to today, and where it stands itself; nothing where there is none to move. */
function movedTo(todayDay: number, inputs: Inputs, texts: Texts): Pick<Example, 'texts' | 'todayAt'> | undefined {
  const todayAt: string[] = [];
  let hasMoving = false;
  const dayAt = (key: string): number => {
    const [input, day] = [inputs[key], dayOf(textIn(texts[key]))];
    if (input?.kind !== 'date' || day === undefined) throw new RangeError(`occurs needs the name of a date, got ${key}`);
    return occurrenceOf(input.occurs, day, todayDay, dayAt);
  };
  const cell = (input: Cell, text: string, at: string): string => {
    if ((input.kind !== 'date' && input.kind !== 'choice') || input.occurs === undefined || input.occurs === 'fixed') return text;
    hasMoving = true;
    if (input.occurs === 'today') todayAt.push(at);
    if (input.kind === 'choice') return Object.keys(input.options)[monthIndexOf(todayDay)] ?? text;
    const day = dayOf(text);
    return day === undefined ? text : isoDay(occurrenceOf(input.occurs, day, todayDay, dayAt));
  };
  const moved = Object.entries(inputs).map(([key, input]): [string, Text] => {
    const text = texts[key] ?? '';
    if (input.kind === 'months' || input.kind === 'record') return [key, text];
    if (input.kind !== 'rows') return [key, cell(input, textIn(text), key)];
    const columns = Object.entries(input.columns);
    const row = (each: Readonly<Record<string, string>>, index: number) =>
      Object.fromEntries(columns.map(([name, column]) => [name, cell(column, each[name] ?? '', `${key}.${index}.${name}`)]));
    return [key, rowsIn(text).map(row)];
  });
  return hasMoving ? { texts: Object.fromEntries(moved), todayAt } : undefined;
}

/**
 * What a fresh form shows on a day: the texts that it starts with, with today where today is meant and the other dates moved to go with it. Texts of a
 * link, or that somebody typed, never come here. The very texts come back where nothing moves.
 */
export function exampleOn(calculator: Calculator, texts: Texts, todayDay: number): Example {
  const moved = movedTo(todayDay, calculator.inputs, texts);
  if (!moved) return { texts, todayAt: [], isExampleDates: false };
  const { values, problems } = readForm(calculator.inputs, moved.texts);
  // One that runs long would hold up its page for a second: that it takes the moved dates of every day is left to the laws.
  const isRefused = (): boolean => calculator.runs !== 'long' && 'refusals' in calculator.run(values);
  if (problems.length > 0 || isRefused()) return { texts, todayAt: [], isExampleDates: true };
  return { ...moved, isExampleDates: false };
}
