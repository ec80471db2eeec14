import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Cell, Input, RowsInput } from '../../../calculators/kit/inputs.ts';
import type { Example, exampleOn } from '../../../calculators/kit/occurs.ts';
import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { defaultText } from '../../../calculators/kit/read.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import { changeSystem, type RowTexts, startTexts, type Text, type Texts } from '../../../calculators/kit/state.ts';
import { textAt } from '../../../calculators/kit/textAt.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { countsOn, fitOf, inUnit } from './fits.ts';
import type { OfferedRow, OfferMap, Offers } from './offered.ts';

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

/** Where what the place gave still stands as it gave it. */
export const placedIn = ({ marks }: Filled, texts: Texts): readonly string[] =>
  marks.filter(({ at, text }) => textAt(texts, at) === text).map(({ at }) => at);

/** What a row is about: without it there is no row, and this is said. */
const rowsAbout: Readonly<Partial<Record<OfferKey, string>>> = {
  'herd.kind': 'this form has no such kind; add them by hand.',
  'earlier.rate': 'more or less than this form can take.',
};

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
    const fit = fitOf(input, offered, this.system, this.todayDay);
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
      const refused = text === undefined && cell.offeredBy !== undefined ? rowsAbout[cell.offeredBy] : undefined;
      if (refused !== undefined) {
        this.marks.length = before[0];
        this.said.length = before[1];
        this.said.push(`${name}: ${refused}`);
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
  { inputs }: Pick<Calculator, 'inputs'>,
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
  // An earlier test of which no reading fits would stand there as the example's.
  if (taken.has('earlier.beside') && !taken.has('earlier.rate')) {
    const without = attempt({ inputs }, offers, { built, system, leftOut: new Set([...leftOut, 'earlier']), todayDay });
    without.said.push(...filling.said.filter((each) => !without.said.includes(each)));
    return without;
  }
  filling.said.push(...offers.besides.filter(({ key }) => key === undefined || taken.has(key)).map(({ say }) => say));
  return filling;
}

/** With the dates of a day. Where the form would refuse them, the example's own stay, and none of the place's. */
function onDay({ marks, said, fixed, moving, texts: filled }: Filling, moved: Example, built: Texts): Filled {
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
    texts: withDatesOf(built, filled, [...moving, ...fixed.map(({ key }) => key)]),
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

/** The form with dates that are told already: they neither move nor come from the place, and those that go by them do. */
const holding = (calculator: Calculator, given: Texts): Calculator => ({
  ...calculator,
  inputs: Object.fromEntries(
    Object.entries(calculator.inputs).map(([key, input]): [string, Input] => {
      if (input.kind !== 'date' || given[key] === undefined) return [key, input];
      const { offeredBy, ...held } = input;
      return [key, { ...held, occurs: 'fixed' }];
    }),
  ),
});

/** Fills one form. `given` are dates that stand in it already, such as those of the result that led here. */
export type FillTexts = (asked: Calculator, offers: Offers, todayDay: number, system?: UnitSystem, given?: Texts) => Filled;
/** Moves the dates of an example; where nothing goes with today there is none. */
type Mover = typeof exampleOn;

/**
 * A fresh form as a place and a day fill it. Where the place's figures and what the form holds of its example refuse each other, such as a price above
 * the example's highest, what the place says of that subject stays out and is told.
 */
export const filler =
  (move: Mover = (_, texts) => ({ texts, todayAt: [], isExampleDates: false })): FillTexts =>
  (asked, offers, todayDay, system = 'us', given = {}) => {
    const calculator = holding(asked, given);
    const { inputs } = calculator;
    const start = startTexts(inputs);
    const built = { ...(system === 'us' ? start : changeSystem(inputs, start, 'us', system)), ...given };
    const tried = (leftOut: readonly string[]) => {
      const filling = attempt(calculator, offers, { built, system, leftOut: new Set(leftOut), todayDay });
      const filled = onDay(filling, move(calculator, filling.texts, todayDay), built);
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
  };
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
  earlier: 'tests of earlier visits',
};
