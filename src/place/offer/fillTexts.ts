import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Input, RowsInput } from '../../../calculators/kit/inputs.ts';
import type { exampleOn } from '../../../calculators/kit/occurs.ts';
import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { defaultText } from '../../../calculators/kit/read.ts';
import { refusalsIn } from '../../../calculators/kit/runTexts.ts';
import { changeSystem, type RowTexts, startTexts, type Text, type Texts } from '../../../calculators/kit/state.ts';
import { textAt } from '../../../calculators/kit/textAt.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { countsOn, fitOf } from './fits.ts';
import type { Mark, Offered, OfferedRow, OfferMap, Offers } from './offered.ts';

export interface Filled {
  readonly texts: Texts;
  readonly marks: readonly Mark[];
  /** What of the place did not go in, and why, in whole sentences. */
  readonly said: readonly string[];
  /** As `exampleOn` has them. */
  readonly todayAt: readonly string[];
  readonly isExampleDates: boolean;
  /** Fields that were left empty, because only the reader can fill them. */
  readonly toBeTold: readonly string[];
}

/** Where what the place gave still stands as it gave it. */
export const placedIn = ({ marks }: Filled, texts: Texts): readonly string[] =>
  marks.filter(({ at, text }) => textAt(texts, at) === text).map(({ at }) => at);

/** What a row is about: without it there is no row, and this is said. */
const rowsAbout: Readonly<Partial<Record<OfferKey, string>>> = {
  'herd.kind': 'this form has no such kind; add them by hand.',
  'herd.seasonKind': 'this form has no such kind; add them by hand.',
  'herd.winterKind': 'this form has no such kind; add them by hand.',
  'earlier.rate': 'more or less than this form can take.',
};

/** What an attempt gathers. */
interface Filling extends Pick<Filled, 'texts' | 'marks' | 'said' | 'toBeTold'> {
  /** Days that do not move with today, by the name of their date. */
  readonly fixed: Readonly<Record<string, string>>;
}
interface Attempt {
  readonly built: Texts;
  readonly system: UnitSystem;
  readonly todayDay: number;
  readonly leftOut: readonly string[];
  /** Without days of the place: the example's stand. */
  readonly isUndated?: boolean;
}
/** What an offer is about, by which it is left out where it does not go with the rest of a form. */
const subjectOf = (key: OfferKey): string => key.slice(0, key.indexOf('.'));
const isDated = (offered: Offered): boolean => 'day' in offered || 'monthDay' in offered;

function attempt(calculator: Pick<Calculator, 'inputs'>, offers: Offers, asked: Attempt): Filling {
  const { built, system, todayDay, leftOut, isUndated = false } = asked;
  const texts: Record<string, Text> = { ...built };
  const marks: Mark[] = [];
  const said: string[] = [];
  const fixed: Record<string, string> = {};
  const toBeTold: string[] = [];
  /** A field's text, if the place has one that fits it. */
  const take = (input: Exclude<Input, RowsInput>, at: string, from: OfferMap): Text | undefined => {
    const key = input.offeredBy;
    const offered = key && from.get(key);
    if (key === undefined || offered === undefined || leftOut.includes(subjectOf(key)) || (isUndated && isDated(offered))) return undefined;
    if ('isToBeTold' in offered) {
      toBeTold.push(at);
      return undefined;
    }
    const fit = fitOf(input, offered, system, todayDay);
    if (fit === undefined) return undefined;
    if ('say' in fit) {
      said.push(fit.say);
      return undefined;
    }
    const { text } = fit;
    const { says } = offered;
    if (typeof text === 'string') marks.push({ at, offer: key, text, says });
    else for (const [index, each] of text.entries()) marks.push({ at: `${at}.${index}`, offer: key, text: each, says });
    if (typeof text === 'string' && isDated(offered) && (countsOn(input) || 'day' in offered)) fixed[at] = text;
    return text;
  };
  /** One row, or nothing where the form has no such kind: then it is told. */
  const rowOf = (input: RowsInput, at: string, { name, cells }: OfferedRow): RowTexts | undefined => {
    const before = [marks.length, said.length] as const;
    const row = Object.fromEntries(Object.entries(input.columns).map(([column, cell]) => [column, defaultText(cell)]));
    const own: Record<string, string> = {};
    for (const [column, cell] of Object.entries(input.columns)) {
      const text = take(cell, `${at}.${column}`, cells);
      const refused = text === undefined && cell.offeredBy !== undefined ? rowsAbout[cell.offeredBy] : undefined;
      if (refused !== undefined) {
        [marks.length, said.length] = before;
        said.push(`${name}: ${refused}`);
        return undefined;
      }
      if (typeof text !== 'string') continue;
      own[column] = text;
      for (const [beside, value] of Object.entries((cell.kind === 'choice' && cell.options[text]?.fills) || {})) {
        const target = input.columns[beside];
        if (target) row[beside] = defaultText(target, value);
      }
    }
    return { ...row, ...own };
  };
  const rowsOf = (input: RowsInput, key: string, offered: readonly OfferedRow[]): readonly RowTexts[] => {
    const fitting = offered.toSorted((one, other) => other.size - one.size).slice(0, input.maxRows);
    const rows: RowTexts[] = [];
    for (const each of offered) {
      const row = fitting.includes(each) ? rowOf(input, `${key}.${rows.length}`, each) : undefined;
      if (row) rows.push(row);
    }
    const most = input.offeredBy === 'herd' ? 'that eat most' : input.offeredBy === 'pastures' ? 'with the most acres' : 'from the top';
    if (offered.length > input.maxRows) said.push(`${input.label}: only ${input.maxRows} fit here, those ${most}.`);
    return rows;
  };
  for (const [key, input] of Object.entries(calculator.inputs)) {
    if (input.kind !== 'rows') {
      const text = take(input, key, offers.single);
      if (text !== undefined) texts[key] = text;
    } else if (input.offeredBy !== undefined && !leftOut.includes(input.offeredBy)) {
      const rows = rowsOf(input, key, offers.tables[input.offeredBy] ?? []);
      if (rows.length > 0) texts[key] = rows;
    }
  }
  const taken = new Set(marks.map(({ offer }) => offer));
  // An earlier test of which no reading fits would stand there as the example's.
  if (taken.has('earlier.beside') && !taken.has('earlier.rate')) {
    const without = attempt(calculator, offers, { ...asked, leftOut: [...leftOut, 'earlier'] });
    return { ...without, said: [...new Set([...without.said, ...said])] };
  }
  said.push(...offers.besides.filter(({ key }) => key === undefined || taken.has(key)).map(({ say }) => say));
  return { texts, marks, said, fixed, toBeTold };
}

/** As the dates have moved; where today stands in for a day of the place, it is today's. */
const marksIn = (texts: Texts, marks: readonly Mark[], todayAt: readonly string[]): readonly Mark[] =>
  marks.filter(({ at }) => !todayAt.includes(at)).map((mark) => ({ ...mark, text: textAt(texts, mark.at) ?? mark.text }));

/** Fills one form. */
export type FillTexts = (calculator: Calculator, offers: Offers, todayDay: number, system?: UnitSystem) => Filled;
/** Moves the dates of an example; where nothing goes with today there is none. */
type Mover = typeof exampleOn;

/** What only some forms need. */
export interface Extras {
  /** A form of a grazing season can look ahead to the next one. */
  readonly ahead?: typeof import('./lookAhead.ts') | undefined;
  /** A form that counts hay on hand can count none. */
  readonly stack?: typeof import('./withoutStack.ts') | undefined;
}

/**
 * A fresh form as a place and a day fill it. Where the form would refuse the dates of that day, it looks ahead to the place's next grazing season if it
 * is of that, else the example's own stay, and none of the place's. Where
 * the place's figures and what the form holds of its example refuse each other, such as a price above the example's highest, what the place says of that
 * subject stays out and is told.
 */
export const filler =
  (move: Mover = (_, texts) => ({ texts, todayAt: [], isExampleDates: false }), { ahead, stack }: Extras = {}): FillTexts =>
  (calculator, offers, todayDay, system = 'us') => {
    const start = startTexts(calculator.inputs);
    const built = system === 'us' ? start : changeSystem(calculator.inputs, start, 'us', system);
    const movedTo = (day: number, leftOut: readonly string[], offered: Offers) => {
      const asked = { built, system, todayDay: day, leftOut };
      const first = attempt(calculator, offered, asked);
      return { asked, first, ...move(calculator, first.texts, day) };
    };
    const tried = (leftOut: readonly string[], offered = offers) => {
      const now = movedTo(todayDay, leftOut, offered);
      const aheadDay = now.isExampleDates ? ahead?.nextTurnIn(calculator, offered, todayDay) : undefined;
      const next = aheadDay === undefined ? now : movedTo(aheadDay, leftOut, offered);
      const isAhead = ahead !== undefined && next !== now && !next.isExampleDates;
      const { asked, first, texts: moved, todayAt: onToday, isExampleDates } = isAhead ? next : now;
      const { texts: undated, marks, said, fixed, toBeTold } = isExampleDates ? attempt(calculator, offered, { ...asked, isUndated: true }) : first;
      const texts = isExampleDates ? undated : { ...moved, ...fixed };
      // A day that the place names is no today of the device, though a form without one would have that.
      const todayAt = onToday.filter((at) => fixed[at] === undefined);
      // Tried with the example's, then emptied: what else the form would refuse is known that way.
      const left = { ...texts, ...Object.fromEntries(toBeTold.map((at) => [at, ''])) };
      const filled: Filled = isAhead
        ? {
            texts: left,
            marks: [...marksIn(texts, marks, []), ...ahead.turnInAt(texts, todayAt)],
            said: [...said, ahead.outOfSeason],
            todayAt: [],
            isExampleDates,
            toBeTold,
          }
        : { texts: left, marks: marksIn(texts, marks, todayAt), said, todayAt, isExampleDates, toBeTold };
      return { filled, refused: refusalsIn(calculator, texts, system)[0]?.say };
    };
    const all = tried([]);
    if (all.refused === undefined) return all.filled;
    const noneOnHand = stack && all.filled.marks.some(({ offer }) => stack.stackKeys.includes(offer)) ? tried([], stack.withoutStack(offers)) : all;
    if (noneOnHand.refused === undefined)
      return { ...noneOnHand.filled, said: [...noneOnHand.filled.said, `The hay that your place has on hand is not counted here. ${all.refused}`] };
    const subjects = [...new Set(all.filled.marks.map(({ offer }) => subjectOf(offer)))];
    for (const subject of subjects) {
      const { filled, refused } = tried([subject]);
      if (refused === undefined)
        return {
          ...filled,
          said: [...filled.said, `What your place has of ${subjectNames[subject] ?? subject} is left out of this form. ${all.refused}`],
        };
    }
    const none = tried(subjects);
    // What is refused without the place as well is none of its doing, such as a date that the reader gave.
    if (none.refused !== undefined) return all.filled;
    return { ...none.filled, said: [`What your place has is left out of this form. ${all.refused}`] };
  };
/** Where the word of an offer's key is not what a producer would call it. */
const subjectNames: Readonly<Record<string, string>> = {
  place: 'rain and heat',
  season: 'dates',
  herd: 'stock',
  layer: 'soil',
  record: 'its record',
  earlier: 'earlier tests',
};
