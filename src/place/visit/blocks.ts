import { dialed, type HelpLine, nationalLines } from '../../../calculators/kit/helpLines.ts';
import { printAsIs, roundedTo, withUnit } from '../../../calculators/units/printQuantity.ts';
import { convert, type UnitSystem } from '../../../calculators/units/units.ts';
import type { Note } from '../model/note.ts';
import type { Place } from '../model/place.ts';
import type { Result } from '../model/result.ts';
import type { Step, Visit } from '../model/visit.ts';
import { firstFigures } from './firstFigures.ts';
import { byGround } from './sections.ts';
import { dayWords, pastureNames } from './visitWords.ts';

/** What every output of a note is made from. */
export interface Facts {
  readonly place: Place;
  readonly visit: Visit;
  /** In the order of the visit. */
  readonly results: readonly Result[];
  readonly note: Note | undefined;
  /** Of whoever writes it. */
  readonly system: UnitSystem;
  /** Pictures of the visit by their ids, as addresses that hold them. */
  readonly photos?: ReadonlyMap<string, string>;
  /** Address of the copy of these pages that links begin with, with its last stroke; nothing where nobody has told one. */
  readonly base: string | undefined;
  /** What was put into results, by their ids, a line each: where no link opens them. */
  readonly putIn?: ReadonlyMap<string, readonly string[]>;
  readonly edition: string;
  /** The office whose copy it is. */
  readonly office?: NoteOffice | undefined;
}
/** What a note says of the office whose copy made it. */
export interface NoteOffice {
  /** With its phone. */
  readonly name: string;
  /** Month and year of its values. */
  readonly valuesOf: string;
  readonly lines: readonly HelpLine[];
  readonly near: string;
}
/** A piece of a line: a link where it has an address. */
export interface Run {
  readonly text: string;
  readonly href?: string;
  readonly isStrong?: boolean;
}
export type Line = readonly Run[];
export type Kind = 'head' | 'seen' | 'photos' | 'result' | 'said' | 'agreed' | 'next' | 'cautions' | 'talk' | 'planning' | 'sources' | 'copies';
/** A part of the note. Its words can be changed where it has `text`; its lines come from what was kept and stay joined to it. */
export interface Block {
  readonly id: string;
  readonly kind: Kind;
  readonly title: string;
  /** Cannot be taken out. */
  readonly isFixed: boolean;
  readonly text?: string;
  /** The words that it came with, where somebody has changed them. */
  readonly cameWith?: string;
  /** Lines of the visit that the changed words do not hold: left out, or written in the visit since. */
  readonly onlyInVisit?: readonly string[];
  readonly lines: readonly Line[];
  readonly isList: boolean;
  readonly isLeftOut: boolean;
  /** Pictures, each with its words: for paper. */
  readonly images?: readonly { readonly src: string; readonly words: string }[];
  /** Of a result: the ground it is of, and its title without that. */
  readonly ground?: string;
  readonly shortTitle?: string;
  /** Of a result: the address that opens it. */
  readonly address?: string;
  readonly slug?: string;
}

const plain = (text: string): Line => [{ text }];
const told = (label: string, text: string | undefined): readonly Line[] =>
  text === undefined || text.trim() === '' ? [] : [[{ text: `${label}: `, isStrong: true }, { text: text.trim() }]];

export const addressOf = ({ base }: Pick<Facts, 'base'>, { slug, link }: Pick<Result, 'slug' | 'link'>): string | undefined =>
  base === undefined ? undefined : `${base}calculators/${slug}/?${link}`;

/** To the thousandth of an inch or the tenth of a millimeter, without noughts that nobody typed. */
const rainWords = (rainIn: number, system: UnitSystem): string =>
  system === 'us' ? withUnit(printAsIs(rainIn), 'in') : withUnit(printAsIs(roundedTo(convert(rainIn, 'in', 'mm'), 1)), 'mm');
/** The ground that day, in a line: `wet, 3 days since rain`. */
export function groundWords({ ground }: Visit, system: UnitSystem): string {
  if (ground === undefined) return '';
  const { moistureFeel, daysSinceRain, fiveDayRainIn, isFrozen } = ground;
  return [
    moistureFeel ?? '',
    isFrozen === true ? 'frozen' : '',
    daysSinceRain === undefined ? '' : `${daysSinceRain} ${daysSinceRain === 1 ? 'day' : 'days'} since rain`,
    fiveDayRainIn === undefined ? '' : `${rainWords(fiveDayRainIn, system)} of rain in five days`,
  ]
    .filter((each) => each !== '')
    .join(', ');
}
export const isToldStep = ({ what, who, byDay }: Step): boolean => (what ?? '').trim() !== '' || (who ?? '').trim() !== '' || byDay !== undefined;
/** `Rest the high bench (A. R., by Jul 20, 2026)`; without who, for the office. */
export function stepWords({ what, who, byDay, isDone }: Step, hasWho: boolean): string {
  const more = [hasWho ? (who ?? '').trim() : '', byDay === undefined ? '' : `by ${dayWords(byDay)}`, isDone === true ? 'done' : ''].filter(
    (each) => each !== '',
  );
  return `${(what ?? '').trim() || 'To be told'}${more.length === 0 ? '' : ` (${more.join(', ')})`}`;
}

function headOf({ place, visit, office, system }: Facts): readonly Line[] {
  return [
    ...(place.isDemo === true ? [[{ text: 'Invented example. Nothing here is anybody’s own.', isStrong: true }]] : []),
    ...told('Place', place.name),
    ...told('Day', dayWords(visit.day)),
    ...told('Pastures', pastureNames(place, visit.pastureIds)),
    ...told('By', visit.by),
    ...told('There', visit.present),
    ...told('Ground', groundWords(visit, system)),
    ...told('Where', visit.spots),
    ...told('Office', office?.name),
  ];
}
/** Figures with their ranges, as they were kept: nobody types over them. */
const figures = (result: Result): readonly Line[] => [
  ...(result.stamp === undefined ? [] : [[{ text: result.stamp, isStrong: true }]]),
  ...firstFigures(result).map(({ label, text, range }) => [
    { text: `${label}: ` },
    { text, isStrong: true },
    ...(range === undefined ? [] : [{ text: `, ${range}` }]),
  ]),
];
/** How to open it: by its link, or else by hand with what was put in. */
function openLines(facts: Facts, result: Result): readonly Line[] {
  const href = addressOf(facts, result);
  const record = result.hasRecord ? ' The record that went into it is not in the link.' : '';
  if (href !== undefined) return [[{ text: 'Open it as it stood', href }, ...(record === '' ? [] : [{ text: `.${record}` }])]];
  const open = `To open it: in any copy of these pages open “${result.title}”`;
  const putIn = facts.putIn?.get(result.id) ?? [];
  // Of a form that this copy does not have, or has not fetched.
  if (putIn.length === 0) return [plain(`${open}. What was put in stands where this note was made.`)];
  const alone = result.hasRecord ? ' The record that went into it is not among them.' : '';
  return [plain(`${open} and put these figures in again.${alone}`), ...putIn.map((line) => [{ text: 'Put in: ', isStrong: true }, { text: line }])];
}

/** Tests that ask how wet the ground was, by the name that their links give it; their words for it are those of a visit. */
export const wetnessInLink: Readonly<Record<string, string>> = { 'ring-test': 'moisture' };
/** Where a test was told other ground than the visit: whoever was there can say which of the two is so. */
function wetnessLine({ visit }: Facts, { slug, link }: Result): readonly Line[] {
  const felt = visit.ground?.moistureFeel;
  const told = new URLSearchParams(link).get(wetnessInLink[slug] ?? '');
  if (felt === undefined || told === null || told === felt) return [];
  return [
    plain(`The visit says that the ground felt ${felt}; this test was told ${told} ground. Put right the one that is wrong: wet ground reads slow.`),
  ];
}

const once = (texts: readonly string[]): readonly string[] => [...new Set(texts)];
/** Of several grounds each caution names those that it is about. */
const cautionLines = ({ place }: Facts, results: readonly Result[]): readonly Line[] => {
  const grounds = byGround(place, results);
  const lines = once(results.flatMap(({ cautions }) => cautions.map(({ say }) => say))).map((say) => {
    const names = grounds.filter((of) => of.results.some(({ cautions }) => cautions.some((each) => each.say === say))).map((of) => of.names);
    return plain(names.length === grounds.length || names.includes('') ? say : `${names.join('; ')}: ${say}`);
  });
  if (lines.length > 0) return lines;
  const none = results.length === 0 ? '' : 'None stood with these results. ';
  return [plain(`${none}Ground, stock and weather decide; look again before you act.`)];
};
/** The office's lines and people close by before the national lines, which always stand. */
const talkLines = ({ office }: Facts): readonly Line[] => [
  ...[...(office?.lines ?? []), ...nationalLines].map((line): Line => {
    const { before, number, dials, after } = dialed(line);
    return [{ text: before }, { text: number, href: `tel:${dials}` }, { text: after }];
  }),
  ...(office === undefined || office.near === '' ? [] : [plain(office.near)]),
];
const officeLine = ({ office }: Facts): readonly Line[] =>
  office === undefined ? [] : [plain(`These pages are the copy of ${office.name}, with its values of ${office.valuesOf}.`)];
const copyLines = (facts: Facts): readonly Line[] => [...whereLines(facts), ...officeLine(facts)];
const whereLines = ({ base, edition }: Facts): readonly Line[] =>
  base === undefined
    ? [plain('The calculations stand in every copy of these pages. Ask whoever gave you this note where theirs is.')]
    : [
        [
          { text: 'Each link opens a calculation with the figures as they stood. A copy of these pages is at ' },
          { text: base.replace(/^https?:\/\//, '').replace(/\/$/, ''), href: base },
          { text: `. Edition ${edition}. It works with no signal once a copy is on your phone.` },
        ],
      ];

/** Photos stand by their words; the pictures themselves go onto paper. */
function photosOf({ visit, photos }: Facts): readonly Omit<Block, 'isLeftOut' | 'cameWith'>[] {
  const there = (visit.photos ?? []).flatMap(({ id, words }, index) => {
    const src = photos?.get(id);
    return src === undefined ? [] : [{ src, words: words ?? `Photo ${index + 1}` }];
  });
  if (there.length === 0) return [];
  return [
    { id: 'photos', kind: 'photos', title: 'Photos', isFixed: false, isList: true, lines: there.map(({ words }) => plain(words)), images: there },
  ];
}

export const resultBlockId = ({ id }: Pick<Result, 'id'>): string => `result-${id}`;
function resultBlock(facts: Facts, ground: string, result: Result): Omit<Block, 'isLeftOut' | 'cameWith'> {
  const address = addressOf(facts, result);
  return {
    id: resultBlockId(result),
    kind: 'result',
    title: ground === '' ? result.title : `${ground}: ${result.title}`,
    ...(ground === '' ? {} : { ground, shortTitle: result.title }),
    text: result.note,
    isFixed: false,
    isList: true,
    lines: [...figures(result), ...wetnessLine(facts, result), ...openLines(facts, result)],
    slug: result.slug,
    ...(address === undefined ? {} : { address }),
  };
}

/** The parts of a note in the order that it comes in; results of one ground stand together. Cautions and sources are those of the results that go out. */
function inGivenOrder(facts: Facts, going: readonly Result[]): readonly Omit<Block, 'isLeftOut' | 'cameWith'>[] {
  const { visit, results } = facts;
  const words = { isFixed: false, isList: false, lines: [] } as const;
  const last = { isFixed: true, isList: true } as const;
  return [
    { id: 'head', kind: 'head', title: `Visit of ${dayWords(visit.day)}`, isFixed: true, isList: false, lines: headOf(facts) },
    { id: 'seen', kind: 'seen', title: 'What we saw', text: visit.seen ?? '', ...words },
    ...photosOf(facts),
    ...byGround(facts.place, results).flatMap((of) => of.results.map((result) => resultBlock(facts, of.names, result))),
    { id: 'said', kind: 'said', title: 'What you said', text: visit.said ?? '', ...words },
    {
      id: 'agreed',
      kind: 'agreed',
      title: 'What we agreed',
      isFixed: false,
      isList: true,
      lines: visit.steps.filter(isToldStep).map((each) => plain(stepWords(each, true))),
    },
    {
      id: 'next',
      kind: 'next',
      title: 'Next look',
      isFixed: false,
      isList: false,
      lines: visit.nextDay === undefined ? [] : [plain(dayWords(visit.nextDay))],
    },
    { id: 'cautions', kind: 'cautions', title: 'Before you act on it', ...last, lines: cautionLines(facts, going) },
    { id: 'talk', kind: 'talk', title: 'Someone to talk to', ...last, lines: talkLines(facts) },
    {
      id: 'planning',
      kind: 'planning',
      title: 'These are planning figures',
      isFixed: true,
      isList: false,
      lines: [plain('They were worked out from what was told and measured that day. Your ground, your stock and the weather decide.')],
    },
    {
      id: 'sources',
      kind: 'sources',
      title: 'Sources',
      ...last,
      lines: [
        ...once(going.flatMap(({ sources }) => sources)).map(plain),
        plain('Method, formulas and sources of each calculation stand on its own page.'),
      ],
    },
    { id: 'copies', kind: 'copies', title: 'Where a copy is', ...last, isList: false, lines: copyLines(facts) },
  ];
}

/**
 * The parts of a note as they stand: in somebody's order, with somebody's words.
 * @param facts - What the note is made from
 * @param isFor - Whether a result may go to those whom this copy is for: of one that does not, cautions and sources stay away too, for they tell of it
 */
export function blocksOf(facts: Facts, isFor: (result: Result) => boolean = () => true): readonly Block[] {
  const { note, results } = facts;
  const leftOut = new Set(note?.blocks.filter(({ isLeftOut }) => isLeftOut === true).map(({ id }) => id));
  const going = results.filter((result) => !leftOut.has(resultBlockId(result)) && isFor(result));
  const order = note?.order ?? [];
  const placeOf = (id: string, index: number): number => (order.includes(id) ? order.indexOf(id) : order.length + index);
  return inGivenOrder(facts, going)
    .map((block, index) => ({ block, at: placeOf(block.id, index) }))
    .toSorted((one, other) => one.at - other.at)
    .map(({ block }): Block => {
      const done = note?.blocks.find(({ id }) => id === block.id);
      const isLeftOut = !block.isFixed && leftOut.has(block.id);
      if (block.text === undefined || done?.text === undefined || done.text === block.text) return { ...block, isLeftOut };
      const { text } = done;
      const lines = block.kind === 'result' ? [] : block.text.split('\n').map((line) => line.trim());
      const onlyInVisit = lines.filter((line) => !text.includes(line));
      return { ...block, text, cameWith: block.text, isLeftOut, ...(onlyInVisit.length === 0 ? {} : { onlyInVisit }) };
    });
}
