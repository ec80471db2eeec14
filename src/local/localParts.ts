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

const number = (value: number): string => value.toLocaleString('en-US');
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

function stubble({ stubble: { rows, note } }: CountryValues): readonly Part[] {
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

const yields = ({ yields: { of, poorLbPerAc, normalLbPerAc, goodLbPerAc, notes, ...from } }: CountryValues): readonly Part[] => [
  {
    kind: 'table',
    head: ['What was measured', 'Poor year, lb an acre', 'Normal', 'Good'],
    rows: [{ ...from, cells: [of, known(poorLbPerAc), known(normalLbPerAc), known(goodLbPerAc)] }],
  },
  ...(notes ?? []).map(says),
];

const growthCurve = ({ growthCurve: { curves, markers } }: CountryValues): readonly Part[] => [
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

const decisionDates = ({ decisionDates: dates }: CountryValues): readonly Part[] => [
  { kind: 'table', head: ['By', 'What to decide'], rows: dates.map(({ date, says: text, ...from }) => ({ ...from, cells: [day(date), text] })) },
];

const sowingDates = ({ sowingDates: dates }: CountryValues): readonly Part[] => [
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
const hayPrice = ({ hayPrice: { crop, of, lowUsdPerTon, likelyUsdPerTon, highUsdPerTon, seen, ...from } }: CountryValues): readonly Part[] => [
  {
    kind: 'table',
    head: ['Hay, dollars a ton', 'Low', 'Likely', 'High'],
    rows: [{ ...from, cells: [`${hayName(crop)}, ${of} (seen ${seen})`, known(lowUsdPerTon), known(likelyUsdPerTon), known(highUsdPerTon)] }],
  },
  { kind: 'says', says: 'Old prices show the spread, not the price. Ask for two quotes today.', source: 'common practice' },
];

function rainMonths({ rainMonths: rain }: CountryValues): readonly Part[] {
  if (!rain)
    return [{ kind: 'missing', says: 'Fill yours: copy the twelve monthly normals of the nearest weather station into this office’s file.' }];
  const { station, inches, ...from } = rain;
  return [{ kind: 'months', title: `${station}, inches of rain and melted snow`, values: inches.map(number), ...from }];
}

const waterUse = ({ waterUse: { of, inPerDay, ...from } }: CountryValues): readonly Part[] => [
  { kind: 'months', title: `${of}, inches a day`, values: inPerDay.map((value) => (value === null ? '–' : value.toFixed(2))), ...from },
];

const erosivity = ({ erosivity: { low, likely, high, says: text, ...from } }: CountryValues): readonly Part[] => [
  { kind: 'table', head: ['Rain factor R', 'Low', 'Likely', 'High'], rows: [{ ...from, cells: [text, end(low), number(likely), end(high)] }] },
];

const restDays = ({ restDays: { fastDays, slowDays, says: text, ...from } }: CountryValues): readonly Part[] =>
  fastDays === null && slowDays === null
    ? [{ kind: 'says', says: text, ...from }]
    : [{ kind: 'table', head: ['Rest, days', 'Fast growth', 'Slow growth'], rows: [{ ...from, cells: [text, known(fastDays), known(slowDays)] }] }];

/** What `<Local of="…" />` may name, beside `talk-to-someone`. */
export const localKeys = {
  stubble: { title: 'Heights to start and to stop', parts: stubble },
  yields: { title: 'What an acre grows in a year', parts: yields },
  'growth-curve': { title: 'When the year’s growth comes', parts: growthCurve },
  'rest-days': { title: 'Days of rest', parts: restDays },
  'decision-dates': { title: 'Days to decide by', parts: decisionDates },
  'sowing-dates': { title: 'What can be sown by when', parts: sowingDates },
  'hay-price': { title: 'Price of hay', parts: hayPrice },
  'rain-months': { title: 'Rain by month', parts: rainMonths },
  'water-use': { title: 'Water that pasture uses', parts: waterUse },
  erosivity: { title: 'How hard the rain hits', parts: erosivity },
} as const satisfies Readonly<Record<string, { readonly title: string; readonly parts: (values: CountryValues) => readonly Part[] }>>;
export type LocalKey = keyof typeof localKeys;
export const isLocalKey = (key: string): key is LocalKey => Object.hasOwn(localKeys, key);
