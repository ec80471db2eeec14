import { months } from '../../calculators/units/months.ts';
import { printAsIs } from '../../calculators/units/printQuantity.ts';
import type { CountryValues, Note } from '../../content/local/schema.ts';

export interface Sourced {
  readonly source: string;
  readonly at?: string | undefined;
  readonly also?: readonly string[] | undefined;
}
/** A piece of a country's values as pages draw it. */
export type Part =
  | { readonly kind: 'table'; readonly head: readonly string[]; readonly rows: readonly (Sourced & { readonly cells: readonly string[] })[] }
  | (Sourced & { readonly kind: 'months'; readonly title: string; readonly values: readonly string[] })
  | (Sourced & { readonly kind: 'says'; readonly says: string })
  | { readonly kind: 'missing'; readonly says: string };

const number = (value: number): string => printAsIs(value);
const known = (value: number | null): string => (value === null ? 'fill yours' : number(value));
const end = (value: number | null): string => (value === null ? '–' : number(value));
const range = (ends: readonly [number, number] | undefined): string => {
  if (!ends) return '';
  const [low, high] = ends;
  return low === high ? number(low) : `${number(low)} to ${number(high)}`;
};
/** `06-30` as `30 June`: month and day are read in one way only. */
const day = (date: string): string =>
  new Date(`2000-${date}T00:00:00Z`).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' }).replace(' ', '\u00a0');
const says = (note: Note): Part => ({ kind: 'says', ...note });
const noteOf = (note: Note | undefined): readonly Part[] => (note ? [says(note)] : []);

function stubble({ rows, note }: CountryValues['stubble']): readonly Part[] {
  const heights = rows.filter(({ leaveLbPerAc }) => leaveLbPerAc === undefined);
  const weights = rows.filter(({ leaveLbPerAc }) => leaveLbPerAc !== undefined);
  const tables: readonly Part[] = [
    {
      kind: 'table',
      head: ['What grows there', 'Start, in', 'Stop, in'],
      rows: heights.map((row) => ({ ...row, cells: [row.forage, range(row.startIn), range(row.stopIn)] })),
    },
    {
      kind: 'table',
      head: ['What grows there', 'Leave, lb an acre'],
      rows: weights.map((row) => ({ ...row, cells: [row.forage, range(row.leaveLbPerAc)] })),
    },
  ];
  return [...tables.filter((part) => part.kind !== 'table' || part.rows.length > 0), ...noteOf(note)];
}

const yields = ({ of, poorLbPerAc, normalLbPerAc, goodLbPerAc, notes, ...from }: CountryValues['yields']): readonly Part[] => [
  {
    kind: 'table',
    head: ['What was measured', 'Poor year, lb an acre', 'Normal', 'Good'],
    rows: [{ ...from, cells: [of, known(poorLbPerAc), known(normalLbPerAc), known(goodLbPerAc)] }],
  },
  ...(notes ?? []).map(says),
];

const growthCurve = ({ curves, markers }: CountryValues['growthCurve']): readonly Part[] => [
  ...curves.map(
    ({ name, percentByMonth, ...from }): Part => ({
      kind: 'months',
      title: `${name}, percent of the year's growth`,
      values: percentByMonth.map(number),
      ...from,
    }),
  ),
  ...markers.map(says),
];

const decisionDates = (dates: CountryValues['decisionDates']): readonly Part[] => [
  { kind: 'table', head: ['By', 'What to decide'], rows: dates.map(({ date, says: text, ...from }) => ({ ...from, cells: [day(date), text] })) },
];

const sowingDates = (dates: CountryValues['sowingDates']): readonly Part[] => [
  {
    kind: 'table',
    head: ['Feed crop', 'Sow from', 'Until'],
    rows: dates.map(({ crop, from, by, says: text, ...rest }) => ({
      ...rest,
      cells: [text === undefined ? crop : `${crop}. ${text}`, day(from), day(by)],
    })),
  },
];

const hayName = (crop: string): string => `${crop.charAt(0).toUpperCase()}${crop.slice(1)} hay`;
const hayPrice = ({ crop, of, lowUsdPerTon, likelyUsdPerTon, highUsdPerTon, seen, ...from }: CountryValues['hayPrice']): readonly Part[] => [
  {
    kind: 'table',
    head: ['Hay, dollars a ton', 'Low', 'Likely', 'High'],
    rows: [{ ...from, cells: [`${hayName(crop)}, ${of} (seen ${seen})`, known(lowUsdPerTon), known(likelyUsdPerTon), known(highUsdPerTon)] }],
  },
  { kind: 'says', says: 'Old prices show the spread, not the price. Ask for two quotes today.', source: 'common practice' },
];

function rainMonths(rain: CountryValues['rainMonths']): readonly Part[] {
  if (!rain)
    return [{ kind: 'missing', says: 'Fill yours: copy the twelve monthly normals of the nearest weather station into this office’s file.' }];
  const { station, inches, are, ...from } = rain;
  const told = are === 'medians' ? 'median inches of rain and melted snow' : 'inches of rain and melted snow';
  return [{ kind: 'months', title: `${station}, ${told}`, values: inches.map(number), ...from }];
}

const waterUse = ({ of, inPerDay, ...from }: CountryValues['waterUse']): readonly Part[] => [
  { kind: 'months', title: `${of}, inches a day`, values: inPerDay.map((value) => (value === null ? '–' : value.toFixed(2))), ...from },
];

const erosivity = ({ low, likely, high, says: text, ...from }: CountryValues['erosivity']): readonly Part[] => [
  { kind: 'table', head: ['Rain factor R', 'Low', 'Likely', 'High'], rows: [{ ...from, cells: [text, end(low), number(likely), end(high)] }] },
];

const restDays = ({ fastDays, slowDays, says: text, ...from }: CountryValues['restDays']): readonly Part[] =>
  fastDays === null && slowDays === null
    ? [{ kind: 'says', says: text, ...from }]
    : [{ kind: 'table', head: ['Rest, days', 'Fast growth', 'Slow growth'], rows: [{ ...from, cells: [text, known(fastDays), known(slowDays)] }] }];

type Price<K extends 'stockPrices' | 'freight' | 'interest'> = NonNullable<CountryValues[K]>;
const dollars = (value: number | undefined): string => (value === undefined ? '–' : number(value));
function stockPrices({ of, seen, calfEarlyUsdPerCwt, calfUsualUsdPerCwt, cowSaleUsd, ...prices }: Price<'stockPrices'>): readonly Part[] {
  const { buyBackLowUsd, buyBackLikelyUsd, buyBackHighUsd, ...from } = prices;
  const told = `${of} (seen ${seen})`;
  const tables: readonly Part[] = [
    {
      kind: 'table',
      head: ['Calves, dollars a hundredweight', 'Weaned early', 'At the usual weight'],
      rows: [{ ...from, cells: [told, dollars(calfEarlyUsdPerCwt), dollars(calfUsualUsdPerCwt)] }],
    },
    {
      kind: 'table',
      head: ['Cows, dollars a head', 'Sold', 'Bought back, low', 'Likely', 'High'],
      rows: [{ ...from, cells: [told, dollars(cowSaleUsd), dollars(buyBackLowUsd), dollars(buyBackLikelyUsd), dollars(buyBackHighUsd)] }],
    },
  ];
  const isKnown = [calfEarlyUsdPerCwt ?? calfUsualUsdPerCwt, cowSaleUsd ?? buyBackLowUsd ?? buyBackLikelyUsd ?? buyBackHighUsd];
  return tables.filter((_, index) => isKnown[index] !== undefined);
}
const freight = ({ of, seen, usdPerLoad, ...from }: Price<'freight'>): readonly Part[] => [
  { kind: 'table', head: ['Freight', 'Dollars a load'], rows: [{ ...from, cells: [`${of} (seen ${seen})`, number(usdPerLoad)] }] },
];
const interest = ({ of, seen, percent, ...from }: Price<'interest'>): readonly Part[] => [
  { kind: 'table', head: ['Interest', 'Percent a year'], rows: [{ ...from, cells: [`${of} (seen ${seen})`, number(percent)] }] },
];
const flushes = { none: 'no growth in the fall', some: 'some growth in the fall', much: 'much growth in the fall' };
const growthMonths = ({ of, startMonth, bestMonth, quitMonth, fallFlush, ...from }: NonNullable<CountryValues['growthMonths']>): readonly Part[] => [
  {
    kind: 'says',
    says: `${of}: grows from ${months[startMonth]}, best in ${months[bestMonth]}, quits after ${months[quitMonth]}, ${flushes[fallFlush]}.`,
    ...from,
  },
];
const frost = ({ of, firstDay, ...from }: NonNullable<CountryValues['frost']>): readonly Part[] => [
  { kind: 'says', says: `First killing frost: ${day(firstDay)}, ${of}.`, ...from },
];

/** A country's values; of an office's, what it has given. */
export type SomeValues = { readonly [K in keyof CountryValues]?: CountryValues[K] | undefined };
const given = <S>(section: S | undefined, draw: (section: S) => readonly Part[]): readonly Part[] => (section === undefined ? [] : draw(section));

/** What `<Local of="…" />` may name, beside `talk-to-someone`. */
export const localKeys = {
  stubble: { title: 'Heights to start and to stop', parts: (of) => given(of.stubble, stubble) },
  yields: { title: 'What an acre grows in a year', parts: (of) => given(of.yields, yields) },
  'growth-curve': {
    title: 'When the year’s growth comes',
    parts: (of) => [...given(of.growthMonths, growthMonths), ...given(of.growthCurve, growthCurve)],
  },
  'rest-days': { title: 'Days of rest', parts: (of) => given(of.restDays, restDays) },
  'decision-dates': { title: 'Days to decide by', parts: (of) => given(of.decisionDates, decisionDates) },
  'sowing-dates': { title: 'What can be sown by when', parts: (of) => [...given(of.sowingDates, sowingDates), ...given(of.frost, frost)] },
  'hay-price': { title: 'Price of hay', parts: (of) => given(of.hayPrice, hayPrice) },
  'other-prices': {
    title: 'Prices of stock, freight and interest',
    parts: (of) => [...given(of.stockPrices, stockPrices), ...given(of.freight, freight), ...given(of.interest, interest)],
  },
  'rain-months': { title: 'Rain by month', parts: (of) => given(of.rainMonths, rainMonths) },
  'water-use': { title: 'Water that pasture uses', parts: (of) => given(of.waterUse, waterUse) },
  erosivity: { title: 'How hard the rain hits', parts: (of) => given(of.erosivity, erosivity) },
} as const satisfies Readonly<Record<string, { readonly title: string; readonly parts: (values: SomeValues) => readonly Part[] }>>;
export type LocalKey = keyof typeof localKeys;
export const isLocalKey = (key: string): key is LocalKey => Object.hasOwn(localKeys, key);
/** All that is known of a country, each piece under its title. */
export const allParts = (values: SomeValues): readonly { readonly key: string; readonly title: string; readonly parts: readonly Part[] }[] =>
  Object.entries(localKeys).flatMap(([key, { title, parts }]) => {
    const drawn = parts(values);
    return drawn.length === 0 ? [] : [{ key, title, parts: drawn }];
  });
