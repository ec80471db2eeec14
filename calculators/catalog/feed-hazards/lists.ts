import { bandOf, type Reading, readingsOf } from '../../math/hazards/bandOf.ts';
import { forageNitrateReadings } from '../../math/hazards/forageNitrateReadings.ts';
import {
  type BandList,
  forageNitrate,
  foragePrussicAcid,
  foragePrussicAcidAsIs,
  waterNitrate,
  waterSalts,
  waterSulfate,
} from '../../tables/feedHazards.ts';

const tables = {
  'forage-nitrate': forageNitrate,
  'forage-prussic': foragePrussicAcid,
  'forage-prussic-as-is': foragePrussicAcidAsIs,
  'water-nitrate': waterNitrate,
  'water-sulfate': waterSulfate,
  'water-salts': waterSalts,
} as const satisfies Readonly<Record<string, readonly BandList[]>>;
type Table = keyof typeof tables;
const listsOf = (table: Table): readonly BandList[] => tables[table];

const names: Readonly<Record<string, string>> = {
  clemson: 'Clemson University laboratory',
  dairyland: 'Dairyland Laboratories',
  servitech: 'ServiTech laboratory',
  'american-agricultural-laboratory': 'American Agricultural Laboratory',
  'south-dakota': 'South Dakota State University Extension',
  'south-dakota-extension': 'South Dakota State University Extension',
  'south-dakota-c274': 'South Dakota State University, C274',
  'national-research-council': 'National Research Council, 1974',
  montana: 'Montana State University Extension',
  'north-dakota': 'North Dakota State University Extension',
  'north-dakota-calves': 'North Dakota State University Extension, calves',
  'north-dakota-adults': 'North Dakota State University Extension, grown cattle',
  kansas: 'Kansas State University, dry',
  'kansas-as-is': 'Kansas State University, as is',
  purdue: 'Purdue University',
  'kansas-nebraska': 'Kansas State and Nebraska',
};
// Words of ours for what a list leaves unsaid: they must not stand in quotation marks.
const unsaid = new Set([
  'no effect named',
  'not over the basic rule',
  'not over 0.1 percent',
  'not over 500 ppm dry',
  'not over 200 ppm as is',
  'above the range of caution',
  'above the recommended concentration',
  'under the level for most classes',
  'above the level for most classes',
]);
const keyOf = (table: Table, list: string, from: number): string => `${table}-${list}-${from}`;
function nameOf(list: string): string {
  const name = names[list];
  if (name === undefined) throw new RangeError(`lists has no name for ${list}`);
  return name;
}
const eachList = Object.values(tables).flatMap((lists: readonly BandList[]) => lists);

/** A list by its name; what was not read again is marked. */
export const listWords: Readonly<Record<string, string>> = Object.fromEntries(
  eachList.map(({ list, seen }) => [`${list}-${seen}`, `${nameOf(list)}${seen === 'memory' ? ' (from memory)' : ''}`]),
);
/** Each class in its list's words, in quotation marks where they were read. */
export const classWords: Readonly<Record<string, string>> = Object.fromEntries(
  (['forage-nitrate', 'forage-prussic', 'forage-prussic-as-is', 'water-nitrate', 'water-sulfate', 'water-salts'] as const).flatMap((table) =>
    listsOf(table).flatMap(({ list, seen, bands }) =>
      bands.map(({ from, printed }) => [keyOf(table, list, from), seen === 'memory' || unsaid.has(printed) ? printed : `“${printed}”`]),
    ),
  ),
);
export const mostWords = {
  'no-share-named': 'none named',
  'half-or-less': '50 % of the ration',
  'about-a-third': '35 % of the ration',
  'a-quarter': '25 % of the ration',
  'not-at-all': 'none of it',
  'not-read': 'not in the copy read',
  'not-asked': '',
} as const;
type Most = keyof typeof mostWords;
const mostOf = (percent: number | null): Most => {
  switch (percent) {
    case null:
      return 'not-read';
    case 0:
      return 'not-at-all';
    case 25:
      return 'a-quarter';
    case 35:
      return 'about-a-third';
    case 50:
      return 'half-or-less';
    default:
      return 'no-share-named';
  }
};

export type Thing = 'feed' | 'feed-and-water' | 'prussic-acid' | 'prussic-as-is' | 'water-nitrate' | 'water-sulfate' | 'water-salts';
export interface Line {
  readonly thing: Thing;
  readonly list: string;
  readonly says: string;
  readonly most: Most;
  readonly valuePpm: number;
  readonly edgePpm: number;
  readonly severity: number;
  /** Whether the list was read, or is told from memory. */
  readonly isRead: boolean;
}
type Animals = 'calves' | 'adult-cattle';

function line(thing: Thing, table: Table, valuePpm: number, { list, severity }: Pick<Reading, 'list' | 'severity'>, most: Most): Line {
  const found = listsOf(table).find((each) => each.list === list);
  if (found === undefined) throw new RangeError(`lists needs a list of its tables, got ${list}`);
  const { from } = bandOf(found.bands, valuePpm);
  return {
    thing,
    list: `${list}-${found.seen}`,
    says: keyOf(table, list, from),
    most,
    valuePpm,
    edgePpm: from,
    severity,
    isRead: found.seen !== 'memory',
  };
}

/** What every list says of nitrate in feed, the strictest first. */
export const feedLines = (thing: 'feed' | 'feed-and-water', nitrogenPpm: number, isPregnant: boolean): Line[] =>
  forageNitrateReadings(nitrogenPpm, isPregnant).map((reading) =>
    line(thing, 'forage-nitrate', nitrogenPpm, reading, thing === 'feed' ? mostOf(reading.mostPercent) : 'not-asked'),
  );

const tableOf = {
  'prussic-acid': 'forage-prussic',
  'prussic-as-is': 'forage-prussic-as-is',
  'water-nitrate': 'water-nitrate',
  'water-sulfate': 'water-sulfate',
  'water-salts': 'water-salts',
} as const;
/** The same for anything else. */
export const otherLines = (thing: keyof typeof tableOf, value: number, animals: Animals): Line[] =>
  readingsOf(listsOf(tableOf[thing]), value, animals).map((reading) => line(thing, tableOf[thing], value, reading, 'not-asked'));

/** The lowest edge at which any list of nitrate in feed sets a limit or a caution, ppm of nitrate nitrogen. */
export const lowestLimitPpm: number = Math.min(
  ...listsOf('forage-nitrate').flatMap(({ bands }) => bands.filter(({ severity }) => severity > 0).map(({ from }) => from)),
);
