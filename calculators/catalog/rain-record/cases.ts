import { type Case, type CaseList, defineCases, resultAt, runQuery } from '../../kit/cases.ts';
import definition from './definition.ts';

/** A list of yearly amounts as somebody would paste it: each stands in a January, so that one month looks back over one year's figure. */
const yearly = (unit: string, firstYear: number, amounts: readonly string[]): string =>
  [`year,month,rain (${unit})`, ...amounts.map((amount, index) => `${firstYear + index},1,${amount}`)].join('\n');
/** The publications count each year among its own judges. */
const upTo = (year: number): string => `window=1mo&own-year=counted-in&until=${year}-01-31`;
const number = (query: string, records: Readonly<Record<string, string>>, path: string): number =>
  Number(resultAt(runQuery(definition, query, records), path));

/** Annual rain at a station, 1960 to 1981, cm. */
const annualCm = '130.0 84.0 76.0 89.0 112.0 96.0 80.0 125.0 143.0 89.0 78.0 90.0 102.0 108.0 60.0 75.0 120.0 160.0 85.0 106.0 83.0 95.0'.split(' ');
const station = { rainRecord: yearly('cm', 1960, annualCm) };
/** Rank from the wet end as the table prints it; of two equal years it counts the larger. */
const ranks: readonly (readonly [number, string])[] = [
  [1977, '1'],
  [1968, '2'],
  [1960, '3'],
  [1967, '4'],
  [1976, '5'],
  [1964, '6'],
  [1973, '7'],
  [1979, '8'],
  [1972, '9'],
  [1965, '10'],
  [1981, '11'],
  [1971, '12'],
  [1963, '14'],
  [1969, '14'],
  [1978, '15'],
  [1961, '16'],
  [1980, '17'],
  [1966, '18'],
  [1970, '19'],
  [1962, '20'],
  [1975, '21'],
  [1974, '22'],
];
const stationChecks: CaseList['checks'] = [
  ...ranks.map(([year, printed]) => ({
    what: `Rank of ${year} among 22 years, from the wet end`,
    printed,
    ours: () => number(upTo(year), station, 'yearsCount') + 1 - number(upTo(year), station, 'rankCount'),
    source: 'subramanya-hydrology',
    where: 'example 2.8, table 2.5',
    seen: 'print' as const,
  })),
  {
    what: 'Rain that three years in four reach, 22 years, cm',
    printed: '82.3',
    ours: () => 2.54 * number(upTo(1981), station, 'quarterIn'),
    source: 'subramanya-hydrology',
    where: 'example 2.8, last part',
    seen: 'memory',
    differs: { by: '0.051', because: 'ours is 82.25, half a digit off to the last decimal; the book rounds it up' },
  },
];

/** Annual rain of 26 years with its plotting position, 100 k / 27; of equal years the first. */
const positions: readonly (readonly [string, string])[] = [
  ['38.9', '3.7'],
  ['40.2', '7.4'],
  ['40.6', '11.1'],
  ['41.3', '14.8'],
  ['41.8', '18.5'],
  ['41.8', ''],
  ['42.5', '25.9'],
  ['43.3', '29.6'],
  ['43.6', '33.3'],
  ['45.3', '37.0'],
  ['45.5', '40.7'],
  ['45.7', '44.5'],
  ['46.1', '48.2'],
  ['46.6', '51.9'],
  ['46.6', ''],
  ['47.0', '59.3'],
  ['47.1', '63.0'],
  ['48.0', '66.7'],
  ['48.0', ''],
  ['48.7', '74.1'],
  ['48.9', '77.8'],
  ['49.4', '81.5'],
  ['51.0', '85.2'],
  ['53.8', '88.9'],
  ['59.8', '92.6'],
  ['66.3', '96.3'],
];
const works = {
  rainRecord: yearly(
    'in',
    1901,
    positions.map(([amount]) => amount),
  ),
};
const worksFrom = { source: 'fair-geyer-okun', where: 'example 11.3, table 11.5', seen: 'print' } as const;
const worksChecks: CaseList['checks'] = positions.flatMap(([amount, printed], index) =>
  printed === ''
    ? []
    : [
        {
          what: `Plotting position of ${amount} in among 26 years, %`,
          printed,
          ours: () => (100 * number(upTo(1901 + index), works, 'rankCount')) / (number(upTo(1901 + index), works, 'yearsCount') + 1),
          ...worksFrom,
          ...(printed === '44.5' || printed === '48.2' || printed === '55.5'
            ? { differs: { by: '0.06', because: 'the table rounds 44.44 and 48.15 up' } }
            : {}),
        },
      ],
);

/** January rain at Ithaca, New York, 1933 to 1982, inches. */
const ithaca = {
  rainRecord: yearly(
    'in',
    1933,
    `.44 1.18 2.69 2.08 3.66 1.72 2.82 .72 1.46 1.30 1.35 .54 2.74 1.13 2.50 1.72 2.27 2.82 1.98 2.44 2.53 2.00 1.12 2.13 1.36
     4.90 2.94 1.75 1.69 1.88 1.31 1.76 2.17 2.38 1.16 1.39 1.36 1.03 1.11 1.35 1.44 1.84 1.69 3.00 1.36 6.37 4.55 .52 .87 1.51`
      .trim()
      .split(/\s+/),
  ),
};
const computed = { source: 'mpmath', where: "Thom's formula, gammainc and erfinv on the table's 50 values", seen: 'computed' } as const;
const januaries: readonly Case[] = [
  {
    name: 'Ithaca, January 1933',
    query: upTo(1933),
    records: ithaca,
    expect: { index: '-2.1389434', indexError: '0.256419', verdict: 'extremely-dry' },
    ...computed,
  },
  {
    name: 'Ithaca, January 1980',
    query: upTo(1980),
    records: ithaca,
    expect: { index: '-1.9258015', indexError: '0.238929', drierCount: '1' },
    ...computed,
  },
  { name: 'Ithaca, January 1982', query: upTo(1982), records: ithaca, expect: { index: '-0.30941174', belowRatio: '0.378504171' }, ...computed },
  {
    name: 'Ithaca, January 1937',
    query: upTo(1937),
    records: ithaca,
    expect: { index: '1.5144904', drierCount: '46', verdict: 'very-wet' },
    ...computed,
  },
];

const { cases, checks, slug } = defineCases(definition, [
  {
    name: '26 years of rain',
    query: upTo(1901),
    records: works,
    expect: { medianIn: '46.3', meanIn: '46.8' },
    ...worksFrom,
    differs: { by: '0.08', because: 'the book cuts the mean, 1218.8 / 26 = 46.877, after one digit' },
  },
  {
    name: 'Ithaca, fifty Januaries',
    query: upTo(1982),
    records: ithaca,
    expect: { shape: '3.76', scaleIn: '0.52', meanIn: '1.96' },
    source: 'wilks-2006',
    where: 'section 4.6 and table A.2',
    seen: 'memory',
  },
  ...januaries,
]);
const all: CaseList = { slug, cases, checks: [...checks, ...stationChecks, ...worksChecks] };

export default all;
