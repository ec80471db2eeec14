import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Cell, Input, NumberInput, RowsInput } from '../../../calculators/kit/inputs.ts';
import { exampleOn } from '../../../calculators/kit/occurs.ts';
import { type OfferKey, offers as offerList } from '../../../calculators/kit/offers.ts';
import { defaultText, quantityText, readCell, roundedText } from '../../../calculators/kit/read.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import { changeSystem, type RowTexts, startTexts, type Text, type Texts } from '../../../calculators/kit/state.ts';
import { textAt } from '../../../calculators/kit/textAt.ts';
import { sameDayIn, yearOf } from '../../../calculators/units/days.ts';
import { dayOf, isoDay } from '../../../calculators/units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn, units } from '../../../calculators/units/units.ts';
import type { Offered, OfferedRow, OfferMap, Offers } from './offered.ts';

/** A field that holds what a place gave it, as long as its text is this one. */
export interface Mark {
  /** `areaAc`, `herd.0.countHead`, `stationIn.3`. */
  readonly at: string;
  readonly offer: OfferKey;
  readonly text: string;
  /** What must be told beside it: `slip of Jun 3, 2026`. */
  readonly says?: string;
}
export interface Filled {
  readonly texts: Texts;
  readonly marks: readonly Mark[];
  /** What of the place did not go in, and why, in whole sentences. */
  readonly said: readonly string[];
  /** As `exampleOn` has them. */
  readonly todayAt: readonly string[];
  readonly isExampleDates: boolean;
}

/** A text for one field, or a sentence why there is none, or neither where the place does not tell. */
type Fit = { readonly text: string } | { readonly say: string } | undefined;

const inUnit = (value: number, unit: UnitName, system: UnitSystem): string => {
  const shown = unitIn(system, unit);
  return shown === unit ? quantityText(value, unit) : roundedText(convert(value, unit, shown), shown);
};
function amountFit(
  input: NumberInput,
  { amount: given, typed }: { readonly amount: number; readonly typed?: string },
  from: UnitName,
  system: UnitSystem,
): Fit {
  const exact = convert(given, from, input.unit);
  const value = input.whole === true ? Math.round(exact) : exact;
  if (value >= input.min && value <= input.max) return { text: asTyped(input, typed, value) ?? inUnit(value, input.unit, system) };
  const told = `${Number(value.toPrecision(4))} ${units[input.unit].print}`.trim();
  return { say: `${input.label}: your place’s ${told} is more or less than this form can take.` };
}
/** What somebody wrote at the place, if this form reads the same in it: `16 ha`. */
function asTyped(input: NumberInput, typed: string | undefined, value: number): string | undefined {
  const read = typed === undefined ? undefined : readCell(input, typed);
  return read && 'value' in read && typeof read.value === 'number' && Math.abs(read.value - value) <= 1e-9 * Math.abs(value) ? typed : undefined;
}
/** `yearOf` any year: `exampleOn` moves it to the one that is meant. */
const anyYear = 2000;
/** A fresh form counts on from today there: a day that the place names is the next one to come. */
const countsOn = (input: Cell): boolean => input.kind === 'date' && typeof input.occurs === 'object' && 'daysAfterToday' in input.occurs;
function nextAfter(monthDay: string, todayDay: number): string {
  const day = dayOf(`${anyYear}-${monthDay}`);
  if (day === undefined) throw new RangeError(`no month and day: ${monthDay}`);
  const thisYear = sameDayIn(day, yearOf(todayDay));
  return isoDay(thisYear > todayDay ? thisYear : sameDayIn(day, yearOf(todayDay) + 1));
}

function fitOf(input: Cell, key: OfferKey, offered: Offered | undefined, system: UnitSystem, todayDay: number): Fit {
  if (offered === undefined) return undefined;
  const offer = offerList[key];
  if ('amount' in offered) return input.kind === 'number' && 'unit' in offer ? amountFit(input, offered, offer.unit, system) : undefined;
  if ('isYes' in offered) return input.kind === 'yesNo' ? { text: defaultText(input, offered.isYes) } : undefined;
  if ('monthDay' in offered) {
    if (input.kind !== 'date') return undefined;
    return { text: countsOn(input) ? nextAfter(offered.monthDay, todayDay) : `${anyYear}-${offered.monthDay}` };
  }
  if ('day' in offered) return input.kind === 'date' ? { text: offered.day } : undefined;
  if (!('words' in offered) || input.kind !== 'choice') return undefined;
  const [own] = offered.words;
  const taken = input.takesNot?.includes(own) === true ? undefined : offered.words.find((each) => Object.hasOwn(input.options, each));
  return taken === undefined ? { say: `${input.label}: this form has nothing for your place’s “${own.replaceAll('-', ' ')}”.` } : { text: taken };
}

/** What an attempt gathers: texts, where they come from, and days that must not move with today. */
class Filling {
  readonly texts: Record<string, Text> = {};
  readonly marks: Mark[] = [];
  readonly said: string[] = [];
  readonly fixed: { readonly key: string; readonly text: string }[] = [];
  readonly moving = new Set<string>();
  private readonly system: UnitSystem;
  private readonly leftOut: ReadonlySet<string>;
  private readonly todayDay: number;
  constructor(system: UnitSystem, leftOut: ReadonlySet<string>, todayDay: number) {
    this.system = system;
    this.todayDay = todayDay;
    this.leftOut = leftOut;
  }
  /** A field's text, if the place has one that fits it. */
  take(input: Cell, at: string, from: OfferMap): string | undefined {
    const key = input.offeredBy;
    if (key === undefined || this.leftOut.has(subjectOf(key))) return undefined;
    const offered = from.get(key);
    const fit = fitOf(input, key, offered, this.system, this.todayDay);
    if (fit === undefined) return undefined;
    if ('say' in fit) {
      this.said.push(fit.say);
      return undefined;
    }
    this.marks.push({ at, offer: key, text: fit.text, ...(offered?.says === undefined ? {} : { says: offered.says }) });
    if (offered && 'monthDay' in offered && !countsOn(input)) this.moving.add(at);
    else if (offered && ('day' in offered || 'monthDay' in offered)) this.fixed.push({ key: at, text: fit.text });
    return fit.text;
  }
  takeMonths(input: Extract<Input, { kind: 'months' }>, key: string, from: OfferMap): void {
    const offered = input.offeredBy && from.get(input.offeredBy);
    if (input.offeredBy === undefined || offered === undefined || !('months' in offered) || this.leftOut.has(subjectOf(input.offeredBy))) return;
    if (!offered.months.every((each) => each >= input.min && each <= input.max)) {
      this.said.push(`${input.label}: a month of your place is more or less than this form can take.`);
      return;
    }
    const texts = offered.months.map((each) => inUnit(each, input.unit, this.system));
    this.texts[key] = texts;
    for (const [index, text] of texts.entries()) this.marks.push({ at: `${key}.${index}`, offer: input.offeredBy, text });
  }
  takeRecord(input: Extract<Input, { kind: 'record' }>, key: string, from: OfferMap): void {
    const offered = input.offeredBy && from.get(input.offeredBy);
    if (input.offeredBy === undefined || offered === undefined || !('record' in offered) || this.leftOut.has(subjectOf(input.offeredBy))) return;
    const { lines, problem } = input.read(offered.record);
    if (problem !== undefined || lines.length === 0) {
      this.said.push(`${input.label}: this form cannot take the record of your place.`);
      return;
    }
    this.texts[key] = offered.record;
    this.marks.push({ at: key, offer: input.offeredBy, text: offered.record });
  }
  /** One row, or nothing where the form has no such kind: then it is told. */
  private row(input: RowsInput, at: string, { name, cells }: OfferedRow): RowTexts | undefined {
    const before = [this.marks.length, this.said.length] as const;
    const own: Record<string, string> = {};
    const started: Record<string, string> = {};
    for (const [column, cell] of Object.entries(input.columns)) {
      const text = this.take(cell, `${at}.${column}`, cells);
      if (text === undefined && cell.offeredBy === 'herd.kind') {
        this.marks.length = before[0];
        this.said.length = before[1];
        this.said.push(`${name}: this form has no such kind; add them by hand.`);
        return undefined;
      }
      if (text === undefined) continue;
      own[column] = text;
      if (cell.kind !== 'choice') continue;
      for (const [beside, value] of Object.entries(cell.options[text]?.fills ?? {})) {
        const target = input.columns[beside];
        if (target) started[beside] = defaultText(target, value);
      }
    }
    const start = Object.entries(input.columns).map(([column, cell]) => [column, defaultText(cell)]);
    return { ...Object.fromEntries(start), ...started, ...own };
  }
  takeRows(input: RowsInput, key: string, offered: readonly OfferedRow[]): void {
    if (input.offeredBy === undefined || offered.length === 0 || this.leftOut.has(input.offeredBy)) return;
    const bySize = offered.toSorted((one, other) => other.size - one.size);
    const fitting = new Set(bySize.slice(0, input.maxRows));
    const rows: RowTexts[] = [];
    for (const each of offered) {
      const row = fitting.has(each) ? this.row(input, `${key}.${rows.length}`, each) : undefined;
      if (row) rows.push(row);
    }
    if (rows.length > 0) this.texts[key] = rows;
    const most = input.offeredBy === 'herd' ? 'that eat most' : input.offeredBy === 'pastures' ? 'with the most acres' : 'from the top';
    if (offered.length > input.maxRows) this.said.push(`${input.label}: only ${input.maxRows} fit here, those ${most}.`);
  }
}
/** What an offer is about, by which it is left out where it does not go with the rest of a form. */
const subjectOf = (key: OfferKey): string => key.slice(0, key.indexOf('.'));

function attempt(
  { inputs }: Calculator,
  offers: Offers,
  {
    built,
    system,
    leftOut,
    todayDay,
  }: { readonly built: Texts; readonly system: UnitSystem; readonly leftOut: ReadonlySet<string>; readonly todayDay: number },
): Filling {
  const filling = new Filling(system, leftOut, todayDay);
  Object.assign(filling.texts, built);
  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind === 'record') filling.takeRecord(input, key, offers.single);
    else if (input.kind === 'rows') filling.takeRows(input, key, (input.offeredBy && offers.tables[input.offeredBy]) ?? []);
    else if (input.kind === 'months') filling.takeMonths(input, key, offers.single);
    else {
      const text = filling.take(input, key, offers.single);
      if (text !== undefined) filling.texts[key] = text;
    }
  }
  const taken = new Set(filling.marks.map(({ offer }) => offer));
  filling.said.push(...offers.besides.filter(({ key }) => taken.has(key)).map(({ say }) => say));
  return filling;
}

/** With the dates of a day. Where the form would refuse them, the example's own stay, and none of the place's. */
function onDay(calculator: Calculator, filling: Filling, todayDay: number, built: Texts): Filled {
  const { marks, said, fixed, moving } = filling;
  const moved = exampleOn(calculator, filling.texts, todayDay);
  const withFixed = (texts: Texts): Texts => ({ ...texts, ...Object.fromEntries(fixed.map(({ key, text }) => [key, text])) });
  if (!moved.isExampleDates)
    return {
      texts: withFixed(moved.texts),
      marks: marks.map((mark) => (moving.has(mark.at) ? { ...mark, text: knownTextAt(moved.texts, mark.at) } : mark)),
      said,
      todayAt: moved.todayAt,
      isExampleDates: false,
    };
  const isDated = (at: string): boolean => moving.has(at) || fixed.some(({ key }) => key === at);
  return {
    texts: withDatesOf(built, filling.texts, [...moving, ...fixed.map(({ key }) => key)]),
    marks: marks.filter(({ at }) => !isDated(at)),
    said,
    todayAt: [],
    isExampleDates: true,
  };
}
function knownTextAt(texts: Texts, at: string): string {
  const text = textAt(texts, at);
  if (text === undefined) throw new RangeError(`no text at ${at}`);
  return text;
}
/** The example's dates back in the places where a place's stood. A row that the example has not takes the date of its last one. */
function withDatesOf(built: Texts, texts: Texts, places: readonly string[]): Texts {
  const out: Record<string, Text> = { ...texts };
  for (const at of places) {
    const [key = '', index, column] = at.split('.');
    const [now, before] = [out[key], built[key]];
    if (index === undefined || column === undefined || typeof now !== 'object' || typeof before !== 'object') {
      if (before !== undefined) out[key] = before;
      continue;
    }
    const rowsNow = now.filter((row) => typeof row === 'object');
    const start = before.filter((row) => typeof row === 'object');
    const date = (start[Number(index)] ?? start.at(-1))?.[column];
    if (date !== undefined) out[key] = rowsNow.map((row, each) => (each === Number(index) ? { ...row, [column]: date } : row));
  }
  return out;
}

/**
 * A fresh form as a place and a day fill it. Where the place's figures and what the form holds of its example refuse each other, such as a price above
 * the example's highest, what the place says of that subject stays out and is told.
 */
export function fillTexts(calculator: Calculator, offers: Offers, todayDay: number, system: UnitSystem = 'us'): Filled {
  const { inputs } = calculator;
  const start = startTexts(inputs);
  const built = system === 'us' ? start : changeSystem(inputs, start, 'us', system);
  const tried = (leftOut: readonly string[]) => {
    const filled = onDay(calculator, attempt(calculator, offers, { built, system, leftOut: new Set(leftOut), todayDay }), todayDay, built);
    const run = runTexts(calculator, filled.texts, system);
    return { filled, refused: 'refusals' in run ? run.refusals[0]?.say : undefined };
  };
  const all = tried([]);
  if (all.refused === undefined) return all.filled;
  const subjects = [...new Set(all.filled.marks.map(({ offer }) => subjectOf(offer)))];
  for (const subject of subjects) {
    const { filled, refused } = tried([subject]);
    if (refused === undefined)
      return { ...filled, said: [...filled.said, `Your place’s ${subjectNames[subject] ?? subject} are left out of this form. ${all.refused}`] };
  }
  return { ...tried(subjects).filled, said: [`Your place’s figures are left out of this form. ${all.refused}`] };
}
const subjectNames: Readonly<Record<string, string>> = {
  place: 'figures of rain and heat',
  season: 'dates',
  growth: 'months of growth',
  grazing: 'days in a paddock',
  pasture: 'figures of the pasture',
  pastures: 'pastures',
  herd: 'groups of stock',
  hay: 'stacks of hay',
  prices: 'prices',
  water: 'figures of the water',
  tools: 'tools',
  layer: 'layers of soil',
  rain: 'figures of rain',
  record: 'figures of the record',
};
