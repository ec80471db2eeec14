import { monthIndexOf, sameDayIn, yearOf } from '../units/days.ts';
import { dayOf, isoDay } from '../units/printQuantity.ts';
import type { Calculator } from './define.ts';
import type { Cell, Inputs, Occurs } from './inputs.ts';
import { readForm, rowsIn, type Text, type Texts, textIn } from './state.ts';

/** Days of other dates by their names: as they fall, and for one that ends a time as it stands, or comes next after today. */
interface Anchors {
  readonly dayAt: (key: string) => number;
  readonly endAt: (key: string) => number;
}

/** The day on which a date of the example falls, seen from today. */
export function occurrenceOf(occurs: Occurs, day: number, todayDay: number, { dayAt, endAt }: Anchors): number {
  if (occurs === 'fixed') return day;
  if (occurs === 'today') return todayDay;
  if (occurs === 'thisYear') return sameDayIn(day, yearOf(todayDay));
  if ('daysAfterToday' in occurs) return todayDay + occurs.daysAfterToday;
  if ('before' in occurs) return dayAt(occurs.before) - builtDays(occurs.built, day);
  if ('nearest' in occurs) return nearestOf(day, dayAt(occurs.nearest[0]), dayAt(occurs.nearest[1]));
  if ('lastBy' in occurs) {
    const last = lastBy(day, occurs.lastBy === 'today' ? todayDay : dayAt(occurs.lastBy));
    return occurs.notBefore === undefined ? last : Math.max(last, todayDay);
  }
  if (occurs.until !== undefined) return Math.max(lastBy(day, endAt(occurs.until)), todayDay);
  return nextFrom(day, occurs.nextFrom === 'today' ? todayDay : dayAt(occurs.nextFrom));
}
function builtDays(built: string, day: number): number {
  const until = dayOf(built);
  if (until === undefined) throw new RangeError(`occurs needs a day, got ${built}`);
  return until - day;
}
function nextFrom(day: number, anchorDay: number): number {
  const inYear = sameDayIn(day, yearOf(anchorDay));
  return inYear >= anchorDay ? inYear : sameDayIn(day, yearOf(anchorDay) + 1);
}
function lastBy(day: number, anchorDay: number): number {
  const inYear = sameDayIn(day, yearOf(anchorDay));
  return inYear <= anchorDay ? inYear : sameDayIn(day, yearOf(anchorDay) - 1);
}
/** Between the two, or else before them where that is nearer than after them: a cow that calved a month before is nursing. */
function nearestOf(day: number, fromDay: number, toDay: number): number {
  const [before, after] = [lastBy(day, fromDay), nextFrom(day, fromDay)];
  return after > toDay && fromDay - before < after - toDay ? before : after;
}

/** An example as it stands on a day. */
export interface Example {
  readonly texts: Texts;
  /** Where today stands in it, as a problem tells its place: `todayDay`, `steps.0.day`. Each is marked whose today that is. */
  readonly todayAt: readonly string[];
  /** Its dates would be refused on that day, such as a grazing season in winter: all of them are as they were built, under `exampleDates`. */
  readonly isExampleDates: boolean;
}
/** Does it stand on today because its time has begun, and not because its day is today? */
const isUnderWay = (occurs: Occurs, day: number, falls: number, todayDay: number): boolean =>
  typeof occurs === 'object' && 'until' in occurs && falls === todayDay && falls !== sameDayIn(day, yearOf(todayDay));
/** Dates moved to today, and where it stands itself; nothing where there is none to move. */
function movedTo(todayDay: number, inputs: Inputs, texts: Texts): Pick<Example, 'texts' | 'todayAt'> | undefined {
  const todayAt: string[] = [];
  let hasMoving = false;
  const dateAt = (key: string) => {
    const [input, day] = [inputs[key], dayOf(textIn(texts[key]))];
    if (input?.kind !== 'date' || day === undefined) throw new RangeError(`occurs needs the name of a date, got ${key}`);
    return { occurs: input.occurs, day };
  };
  const anchors: Anchors = {
    dayAt: (key) => fallsOn(dateAt(key)),
    endAt: (key) => {
      const { occurs, day } = dateAt(key);
      return occurs === 'fixed' ? day : nextFrom(day, todayDay + 1);
    },
  };
  const fallsOn = ({ occurs, day }: { readonly occurs: Occurs; readonly day: number }): number => occurrenceOf(occurs, day, todayDay, anchors);
  const cell = (input: Cell, text: string, at: string): string => {
    if ((input.kind !== 'date' && input.kind !== 'choice') || input.occurs === undefined || input.occurs === 'fixed') return text;
    hasMoving = true;
    if (input.occurs === 'today') todayAt.push(at);
    if (input.kind === 'choice') return Object.keys(input.options)[monthIndexOf(todayDay)] ?? text;
    const { occurs } = input;
    const day = dayOf(text);
    if (day === undefined) return text;
    const falls = fallsOn({ occurs, day });
    if (isUnderWay(occurs, day, falls, todayDay)) todayAt.push(at);
    return isoDay(falls);
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
  // What works out one that runs long has not come by then: that it takes the moved dates of every day is left to the laws.
  const isRefused = (): boolean => calculator.runs !== 'long' && calculator.refuses(values).length > 0;
  if (problems.length > 0 || isRefused()) return { texts, todayAt: [], isExampleDates: true };
  return { ...moved, isExampleDates: false };
}
