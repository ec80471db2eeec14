import { amount, table, word } from '../../kit/quantities.ts';
import { leastSharePercent } from '../../math/hazards/forageNitrateReadings.ts';
import {
  type BandList,
  forageNitrate,
  foragePrussicAcid,
  foragePrussicAcidAsIs,
  waterNitrate,
  waterSalts,
  waterSulfate,
} from '../../tables/feedHazards.ts';

export type FeedThing = 'feed' | 'other-feed' | 'ration' | 'ration-and-water';
export const isFeedNitrate = (thing: Thing): thing is FeedThing => ['feed', 'other-feed', 'ration', 'ration-and-water'].includes(thing);
export type Thing = FeedThing | 'prussic-acid' | 'prussic-as-is' | 'water-nitrate' | 'water-sulfate' | 'water-salts';
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

const tables = {
  'forage-nitrate': forageNitrate,
  'forage-prussic': foragePrussicAcid,
  'forage-prussic-as-is': foragePrussicAcidAsIs,
  'water-nitrate': waterNitrate,
  'water-sulfate': waterSulfate,
  'water-salts': waterSalts,
} as const satisfies Readonly<Record<string, readonly BandList[]>>;
export type Table = keyof typeof tables;
export const listsOf = (table: Table): readonly BandList[] => tables[table];

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
export const keyOf = (table: Table, list: string, from: number): string => `${table}-${list}-${from}`;
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
export type Most = keyof typeof mostWords;
const shareNames: ReadonlyMap<number | null, Most> = new Map([
  [null, 'not-read'],
  [0, 'not-at-all'],
  [25, 'a-quarter'],
  [35, 'about-a-third'],
  [50, 'half-or-less'],
]);
/** The share that a list allows, in words; any other share is none that it names. */
export const mostOf = (percent: number | null): Most => shareNames.get(percent) ?? 'no-share-named';

/** What leads: what the strictest list means for these animals, in words, without a laboratory's name or its grade. */
export const readingWords = {
  'feed-none': 'None of this feed for any of them',
  'feed-none-pregnant': 'None of this feed for pregnant stock',
  'feed-quarter-pregnant': 'No more than a quarter of the ration, pregnant stock. Fed alone it is four times that',
  'feed-quarter': 'Only mixed with low feed, and no more than a quarter of the ration. Fed alone it is four times that',
  'feed-third': 'Only mixed with low feed, and no more than about a third of the ration (35 %). Fed alone it is nearly three times that',
  'feed-half-pregnant': 'No more than half of the ration, pregnant stock. Fed alone it is twice that',
  'feed-half': 'No more than half of the ration. Fed alone it is twice that',
  'feed-warned': 'At least one list warns of the nitrate in this feed and names no share',
  'feed-under': 'The feed’s nitrate is under the limits in these lists. That clears nothing',
  'other-none': 'None of the other feed for any of them',
  'other-none-pregnant': 'None of the other feed for pregnant stock',
  'other-quarter-pregnant': 'The other feed: no more than a quarter of the ration, pregnant stock',
  'other-quarter': 'The other feed: only mixed with low feed, and no more than a quarter of the ration',
  'other-third': 'The other feed: only mixed with low feed, and no more than about a third of the ration (35 %)',
  'other-half-pregnant': 'The other feed: no more than half of the ration, pregnant stock',
  'other-half': 'The other feed: no more than half of the ration',
  'other-warned': 'At least one list warns of the nitrate in the other feed and names no share',
  'other-under': 'The other feed’s nitrate is under the limits in these lists. That clears nothing',
  'ration-warned': 'All they eat together passes a limit for nitrate',
  'ration-not': 'All they eat together holds more nitrate than may be fed',
  'together-warned': 'Feed and water together pass a limit for nitrate',
  'together-not': 'Feed and water together hold more nitrate than may be fed',
  'prussic-warned': 'Prussic acid was found. No figure clears it',
  'prussic-toxic': 'Prussic acid: potentially toxic. Never their only feed, and none before the veterinarian has been asked',
  'prussic-not': 'Prussic acid: do not feed it',
  'water-nitrate-warned': 'Nitrate in the water: at least one list warns or names harm',
  'water-nitrate-not': 'Nitrate in the water: do not use it',
  'water-sulfate-warned': 'Sulfate in the water: at least one list warns or names harm',
  'water-sulfate-not': 'Sulfate in the water: do not use it. It can bring on polio, the brain disease',
  'water-salts-warned': 'Salts in the water: at least one list warns or names harm',
  'water-salts-not': 'Salts in the water: do not use it',
  'under-every-limit': 'Under the limits in these lists. That clears nothing',
  'nothing-tested': 'Nothing was tested. That clears nothing: send in a sample',
  'not-tested': '',
} as const;
export type ReadingWord = keyof typeof readingWords;

/** The reading of nitrate in one feed for these animals, by the smallest share of the ration that a list allows them. */
export function shareWordOf(nitrogenPpm: number, isPregnant: boolean, severity: number) {
  switch (leastSharePercent(nitrogenPpm, isPregnant)) {
    case 0:
      return leastSharePercent(nitrogenPpm, false) === 0 ? 'none' : 'none-pregnant';
    case 25:
      return isPregnant ? 'quarter-pregnant' : 'quarter';
    case 35:
      return 'third';
    case 50:
      return isPregnant ? 'half-pregnant' : 'half';
    default:
      return severity === 0 ? 'under' : 'warned';
  }
}

/** The line that leads: the strictest of the lists that were read; one from memory only where none that was read sets a limit. */
export function leadOf(lines: readonly Line[]): Line | undefined {
  const strictest = (some: readonly Line[]): Line | undefined =>
    some
      .filter(({ severity }) => severity > 0)
      .reduce<Line | undefined>((most, each) => (most !== undefined && most.severity >= each.severity ? most : each), undefined);
  return strictest(lines.filter(({ isRead }) => isRead)) ?? strictest(lines);
}

const otherReadings: Readonly<Record<Exclude<Thing, 'feed' | 'other-feed'>, readonly [ReadingWord, ReadingWord, ReadingWord]>> = {
  ration: ['ration-warned', 'ration-warned', 'ration-not'],
  'ration-and-water': ['together-warned', 'together-warned', 'together-not'],
  'prussic-acid': ['prussic-warned', 'prussic-toxic', 'prussic-not'],
  'prussic-as-is': ['prussic-warned', 'prussic-toxic', 'prussic-not'],
  'water-nitrate': ['water-nitrate-warned', 'water-nitrate-warned', 'water-nitrate-not'],
  'water-sulfate': ['water-sulfate-warned', 'water-sulfate-warned', 'water-sulfate-not'],
  'water-salts': ['water-salts-warned', 'water-salts-warned', 'water-salts-not'],
};
/** What leads for these animals, whatever was tested. */
export function readingOf(lines: readonly Line[], feedReading: ReadingWord, otherReading: ReadingWord): ReadingWord {
  const lead = leadOf(lines);
  if (lead === undefined) return lines.length > 0 ? 'under-every-limit' : 'nothing-tested';
  if (lead.thing === 'feed') return feedReading;
  if (lead.thing === 'other-feed') return otherReading;
  const [warned, harm, not] = otherReadings[lead.thing];
  return lead.severity === 1 ? warned : lead.severity === 2 ? harm : not;
}

const things = {
  feed: 'Nitrate in the feed',
  'other-feed': 'Nitrate in the other feed',
  ration: 'Nitrate in all they eat',
  'ration-and-water': 'Nitrate in all they eat, with the water’s',
  'prussic-acid': 'Prussic acid in the feed',
  'prussic-as-is': 'Prussic acid in the feed as it came',
  'water-nitrate': 'Nitrate in the water',
  'water-sulfate': 'Sulfate in the water',
  'water-salts': 'Salts in the water',
} as const;

export const quantities = {
  reading: word('For these animals', readingWords),
  feedReading: word('Nitrate in the feed, for these animals', readingWords),
  otherReading: word('Nitrate in the other feed, for these animals', readingWords),
  verdict: word('What the lists say, in short', {
    'under-every-limit': 'Under the limits in these lists. That clears nothing',
    limited: 'At least one list sets a limit or warns',
    'harm-named': 'At least one list names harm, or keeps it from some animals',
    'only-mixed': 'At least one list says do not feed it unless properly mixed',
    'do-not-feed': 'At least one list says do not feed or use it',
    'nothing-tested': 'Nothing was tested',
  }),
  slipPpm: amount('Nitrate on the slip, ppm', 'x_p', 'count'),
  slipNitrogenPpm: amount('Counted as nitrogen (NO3-N), ppm', 'x_N', 'count'),
  nitrogenPpm: amount('Nitrate nitrogen (NO3-N) in the feed’s dry matter, ppm', 'N', 'count'),
  otherPpm: amount('Nitrate nitrogen (NO3-N) in the other feed’s dry matter, ppm', 'O', 'count'),
  ionPpm: amount('The same reported as nitrate (NO3), ppm', 'N_{NO3}', 'count'),
  potassiumNitratePpm: amount('The same reported as potassium nitrate (KNO3), ppm', 'N_{KNO3}', 'count'),
  prussicPpm: amount('Prussic acid in the feed’s dry matter, ppm', 'P', 'count'),
  waterNitrogenMgPerL: amount('Nitrate nitrogen (NO3-N) in the water', 'w', 'mg/l'),
  sulfateMgPerL: amount('Sulfate (SO4) in the water', 's', 'mg/l'),
  saltsMgPerL: amount('Dissolved solids in the water', 't', 'mg/l'),
  drunkGal: amount('Water one animal drinks in a day', 'G', 'gal', 1),
  rationPpm: amount('Nitrate nitrogen in all they eat, ppm', 'c', 'count'),
  feedG: amount('Nitrate nitrogen from feed in a day', 'a_F', 'g', 1),
  waterG: amount('Nitrate nitrogen from water in a day', 'a_w', 'g', 1),
  totalG: amount('Nitrate nitrogen one animal takes in a day', 'a', 'g', 1),
  gPerCwt: amount('The same for 100 lb of its weight', 'b', 'g', 2),
  asFeedPpm: amount('As if it were all in what they eat, ppm', 'c_a', 'count'),
  waterAsFeedPpm: amount('The water’s part of that, ppm', 'c_w', 'count'),
  limitPpm: amount('Level to stay under, ppm', 'L', 'count'),
  roomPpm: amount('Room that the water leaves for feed, ppm', 'L_F', 'count'),
  higherFeed: word('The higher of the two feeds', { this: 'This feed', other: 'The other feed' }),
  mixSharePercent: amount('Share of the higher feed that comes to the level', 'm', 'pct', 1),
  listSharePercent: amount('Smallest share that a list names for this feed', 'm_l', 'pct'),
  otherListSharePercent: amount('Smallest share that a list names for the other feed', 'm_o', 'pct'),
  leadSharePercent: amount('Most of the higher feed in the mix, by the strictest of these', 'M', 'pct'),
  restSharePercent: amount('The lower feed in that mix, at least', 'M_r', 'pct'),
  mixing: word('Mixing it down', {
    'ask-first': 'Not before the laboratory and the veterinarian say how',
    'no-room': 'No mix of these two feeds keeps to the level and the lists',
    'under-one': 'Not one percent of the higher feed keeps the mix under the level',
    'no-share-named': 'Neither the lists nor this level name a share',
    share: 'There is a share to talk over with them',
    'not-asked': 'Needs a second feed that was tested',
  }),
  readings: table('What each list says, the strictest first', {
    thing: word('Of', things),
    list: word('List', listWords),
    says: word('Its words', classWords),
    most: word('Most of it that the list allows', mostWords),
    valuePpm: amount('Yours, ppm or mg/L', 'v', 'count'),
    edgePpm: amount('That class begins at', 'e', 'count'),
  }),
  leastHeightIn: amount('Let it reach this height first', 'h', 'in'),
  killingFrostDays: amount('Wait after a killing frost', 't_k', 'd'),
  lightFrostDays: amount('Wait after each lighter frost, or on new shoots after one', 't_f', 'd'),
  afterDroughtDays: amount('Wait after the rain that ends a drought', 't_r', 'd'),
  ensiledDays: amount('Wait after it is put up as silage', 't_s', 'd'),
} as const;
