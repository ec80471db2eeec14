import type { Calculator } from '../../../calculators/kit/define.ts';
import { crisisLine, dialed, type HelpLine } from '../../../calculators/kit/helpLines.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { isShown, rowsIn } from '../../../calculators/kit/state.ts';
import { monthName, monthNumber, monthsOnTo } from '../../../calculators/units/months.ts';
import { printDay, printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Place } from '../model/place.ts';
import type { Result } from '../model/result.ts';
import type { NoteOffice } from './blocks.ts';
import { dayWords } from './visitWords.ts';

/** The sheet “Drought plan on one page”, as far as a place and what was worked out there can fill it. What nobody told stays empty, for a pencil. */
export interface Plan {
  /** By the labels of the sheet's fields. */
  readonly fields: ReadonlyMap<string, string>;
  /** Lines of the table of dates, cells in the order of its columns. */
  readonly dates: readonly (readonly string[])[];
  /** By the first cell of their line: the cells after it. */
  readonly lines: ReadonlyMap<string, readonly string[]>;
  /** What could be there and is not, with the view or the form in which to tell it. */
  readonly missing: readonly Missing[];
}
interface Missing {
  readonly what: string;
  readonly how: string;
  /** A view of the page, or a form by its slug. */
  readonly view?: string;
  readonly form?: string;
}
export interface PlanFacts {
  readonly place: Place;
  /** Every result that was kept at the place. */
  readonly results: readonly Result[];
  readonly todayDay: number;
  readonly system: UnitSystem;
  /** The form that the dates come from, to read how many go on each. */
  readonly decisionDates: Calculator;
  readonly office?: Pick<NoteOffice, 'name' | 'lines'> | undefined;
}

const poundsPerTon = 2000;
/** The latest of a form; figures of an example are nobody's plan. */
const latest = ({ place, results }: PlanFacts, slug: string): Result | undefined =>
  results
    .filter((each) => each.slug === slug && (each.stamp === undefined || place.isDemo === true))
    .toSorted((one, other) => other.keptDay.localeCompare(one.keptDay) || other.changedAt.localeCompare(one.changedAt))[0];
/** A figure as it was kept, with its range where it has one. */
function shownIn(result: Result | undefined, label: string): string | undefined {
  const found = result?.shown.find((each) => each.label === label);
  return found && [found.text, found.range].filter((each) => each !== undefined).join('; ');
}

/** A tenth only where there is one. */
const digitsOf = (value: number): number => (Math.abs(value - Math.round(value)) < 0.05 ? 0 : 1);
/** `Apr to Oct: 24.5 in`, by the station; else the year's. */
function normalRain({ place, system }: PlanFacts): string | undefined {
  const { stationMonthsIn, growth, yearRainIn } = place;
  const told = (inches: number): string => printQuantity(inches, 'in', digitsOf(inches), system);
  const [start, quit] = [growth?.startMonth, growth?.quitMonth];
  if (stationMonthsIn !== undefined && start !== undefined && quit !== undefined) {
    const [from, to] = [monthNumber(start), monthNumber(quit)];
    const count = monthsOnTo(start, quit) + 1;
    const sum = Array.from({ length: count }, (_, index) => stationMonthsIn[(from - 1 + index) % 12] ?? Number.NaN).reduce(
      (all, each) => all + each,
      0,
    );
    return `${monthName(from - 1).slice(0, 3)} to ${monthName(to - 1).slice(0, 3)}: ${told(sum)}, medians of the station`;
  }
  return yearRainIn === undefined ? undefined : `a year’s rain: ${told(yearRainIn)}`;
}

/** How many go on each day of a kept plan, by day. */
function headsByDay(decisionDates: Calculator, { link }: Result): ReadonlyMap<string, string> {
  const input = decisionDates.inputs['steps'];
  const cell = input?.kind === 'rows' ? input.columns['leaveHead'] : undefined;
  const rows = rowsIn(fromLink(decisionDates, link).form.this['steps']);
  return new Map(
    rows.flatMap((row): [string, string][] => {
      const [day, head] = [row['day'], row['leaveHead']];
      return cell === undefined || day === undefined || head === undefined || !isShown(cell, row) ? [] : [[day, head]];
    }),
  );
}
/** The marks of a day, out of the words that were kept with it: the rain of a record is in no link. */
const markIn = (text: string, unit: 'in' | 'days'): string => new RegExp(`below ([\\d.]+) ${unit}\\b`).exec(text)?.[1] ?? '';
function datesOf({ decisionDates }: PlanFacts, result: Result | undefined): Plan['dates'] {
  if (result === undefined) return [];
  const heads = headsByDay(decisionDates, result);
  return result.days.map(({ day, title, text }) => {
    const then = title.replace(/^Decide: ./, (found) => found.slice(-1).toUpperCase());
    const head = heads.get(day);
    return [dayWords(day), markIn(text, 'in'), markIn(text, 'days'), head === undefined ? then : `${then}: ${head}`];
  });
}

/** Hay on hand as it is told, by stacks; nothing where one of them is not weighed. */
function hayTons({ hay }: Place): string | undefined {
  const stacks = hay?.stacks ?? [];
  const pounds = stacks.map(({ baleCount, baleLb }) => (baleCount === undefined || baleLb === undefined ? undefined : baleCount * baleLb));
  const known = pounds.filter((each) => each !== undefined);
  if (known.length === 0 || known.length < pounds.length) return undefined;
  return printNumber(known.reduce((sum, each) => sum + each, 0) / poundsPerTon, 1);
}
const call = (line: HelpLine): string => {
  const { before, number, after } = dialed(line);
  return `${before}${number}${after}`;
};
const listed = (names: readonly string[]): string => new Intl.ListFormat('en-US').format(names);

/** @returns What of the sheet is known, and what is not yet and how it would be */
export function planOf(facts: PlanFacts): Plan {
  const { place, todayDay, system, office } = facts;
  const [carries, dated, hayLasts, grassLasts] = (['carrying-capacity', 'decision-dates', 'hay-to-grass', 'days-of-grass'] as const).map((slug) =>
    latest(facts, slug),
  );
  // The poor year stands in its range.
  const heads = shownIn(carries, 'Head of the first kind that the place carries, normal year');
  const rain = normalRain(facts);
  const tons = hayTons(place);
  const water = place.water.flatMap(({ name }) => (name === undefined ? [] : [name]));
  // Yards and lanes are no grass.
  const spare = place.pastures.filter(({ isCounted, use }) => !isCounted && use !== 'yards');
  const spareWords = spare.map(({ name, areaAc }) =>
    areaAc === undefined ? name : `${name}, ${printQuantity(areaAc, 'ac', digitsOf(areaAc), system)}`,
  );
  const dates = datesOf(facts, dated);
  const asKept = (result: Result | undefined, words: string): string =>
    result === undefined ? '' : `${words} (worked out ${dayWords(result.keptDay)})`;
  const offDay = shownIn(grassLasts, 'Off this grass by');
  const fields = [
    ['Place', place.isDemo === true ? `${place.name} (invented example)` : place.name],
    ['Written on this date', printDay(todayDay)],
    ['Normal rain, and from which month to which', rain],
    ['Head to winter in a normal year, and in a poor one', heads === undefined ? undefined : asKept(carries, heads)],
  ] as const;
  const missing: readonly (Missing & { readonly isThere: boolean })[] = [
    { isThere: rain !== undefined, what: 'Normal rain', how: 'tell the station’s months and when your grass grows', view: 'season' },
    {
      isThere: heads !== undefined,
      what: 'Head in a normal year and in a poor one',
      how: 'work them out with your own figures, and tap “Keep this result”',
      form: 'carrying-capacity',
    },
    { isThere: dates.length > 0, what: 'Days, rain and grass that are too little', how: 'the same with your own dates', form: 'decision-dates' },
    { isThere: tons !== undefined, what: 'Tons of hay', how: 'tell how many bales there are and what one weighs', view: 'feed' },
    { isThere: water.length > 0, what: 'Stock water', how: 'name each place with water', view: 'water' },
    { isThere: grassLasts !== undefined, what: 'The day on which the grass is gone', how: 'work it out, and keep it', form: 'days-of-grass' },
  ];
  return {
    fields: new Map(fields.flatMap(([label, text]) => (text === undefined ? [] : [[label, text] as const]))),
    dates,
    lines: new Map<string, readonly string[]>([
      ['Hay, tons', [tons ?? '', asKept(hayLasts, hayLasts?.note.split('\n')[0] ?? '')]],
      ['Stock water', [listed(water)]],
      ['Grass to fall back on', [listed(spareWords), offDay === undefined ? '' : asKept(grassLasts, `what they graze now: ${offDay}`)]],
      ['Farm program office, insurance', [office?.name ?? '']],
      ['Someone to talk to', [[...(office?.lines ?? []), crisisLine].map(call).join(' ')]],
    ]),
    missing: missing.filter(({ isThere }) => !isThere).map(({ isThere: _, ...each }) => each),
  };
}
