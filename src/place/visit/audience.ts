import type { Result } from '../model/result.ts';
import { type Block, blocksOf, type Facts, isToldStep, type Line, stepWords } from './blocks.ts';
import { hiddenNames, pastureCode, withoutNames } from './names.ts';
import { pastureNames } from './visitWords.ts';

/** For whom an output is. Chosen before each. */
export type Audience = 'producer' | 'office';

/** Tests of the ground, which an office may have as they come; all else, and money above all, only where somebody ticks it. */
const usualForOffice: ReadonlySet<string> = new Set(['ring-test', 'slake-test', 'packed-soil', 'ponding', 'cover-count', 'soil-loss']);
export const usualPlaceCode = 'a place';

/** Whether a block goes into the office's copy. */
export function isForOffice({ id, kind, slug = '' }: Block, { note }: Facts): boolean {
  const told = note?.blocks.find((each) => each.id === id)?.isForOffice;
  if (told !== undefined) return told;
  if (kind === 'result') return usualForOffice.has(slug);
  return kind !== 'said' && kind !== 'photos';
}
/** Can be ticked for the office, or not. */
export const isOfficesChoice = ({ isFixed, isLeftOut }: Block): boolean => !isFixed && !isLeftOut;

/** What an output holds and what it leaves out, said before it is made. */
export interface Told {
  readonly has: string;
  readonly leavesOut: string;
}
/** A finished note: what goes out and nothing else. */
export interface Outgoing {
  readonly title: string;
  readonly blocks: readonly Block[];
  readonly results: readonly Result[];
  readonly told: Told;
  /** What a file may be called after. */
  readonly fileWord: string;
}

const isEmpty = ({ text = '', lines }: Block): boolean => text.trim() === '' && lines.length === 0;

function forProducer(facts: Facts): Outgoing {
  const blocks = blocksOf(facts).filter((block) => !block.isLeftOut && !isEmpty(block));
  const left = blocksOf(facts).filter(({ isLeftOut }) => isLeftOut);
  const kept = new Set(blocks.map(({ id }) => id));
  return {
    title: `Visit of ${facts.place.name}`,
    blocks,
    results: facts.results.filter(({ id }) => kept.has(`result-${id}`)),
    told: {
      has: 'Names, place and pastures, all results with their links, what was said, who does what by when.',
      leavesOut: left.length === 0 ? 'nothing' : left.map(({ title }) => title).join('; '),
    },
    fileWord: facts.place.name,
  };
}

function forOffice(facts: Facts): Outgoing {
  const { place, visit, note } = facts;
  const code = note?.placeCode?.trim() || usualPlaceCode;
  const hasPastureNames = note?.hasPastureNames === true;
  const hidden = hiddenNames(place, visit, code, hasPastureNames);
  const bare = (text: string): string => withoutNames(text, hidden);
  const bareLine = (line: Line): Line => line.map((run) => ({ ...run, text: bare(run.text) }));
  const codes = new Intl.ListFormat('en-US').format(
    visit.pastureIds.filter((id) => place.pastures.some((each) => each.id === id)).map((id) => pastureCode(place, id)),
  );
  const all = blocksOf(facts);
  const blocks = all
    .filter((block) => !block.isLeftOut && isForOffice(block, facts))
    .map((block): Block => {
      const lines =
        block.kind === 'agreed'
          ? visit.steps.filter(isToldStep).map((each): Line => [{ text: stepWords(each, false) }])
          : block.kind === 'head'
            ? headForOffice(block, code, hasPastureNames ? pastureNames(place, visit.pastureIds) : codes)
            : block.lines;
      const { cameWith: _, ...rest } = block;
      return {
        ...rest,
        title: bare(block.title),
        ...(block.ground === undefined ? {} : { ground: bare(block.ground) }),
        ...(block.shortTitle === undefined ? {} : { shortTitle: bare(block.shortTitle) }),
        ...(block.images && { images: block.images.map((each) => ({ ...each, words: bare(each.words) })) }),
        ...(block.text === undefined ? {} : { text: bare(block.text) }),
        lines: lines.map(bareLine),
      };
    })
    .filter((block) => !isEmpty(block));
  const kept = new Set(blocks.map(({ id }) => id));
  const left = all.filter(({ id }) => !kept.has(id)).filter((block) => !isEmpty(block));
  return {
    title: `Visit of ${code}`,
    blocks,
    results: facts.results.filter(({ id }) => kept.has(`result-${id}`)),
    told: {
      has: `${code}, ${hasPastureNames ? 'pastures by name' : 'pastures by number'}, no other names; what was agreed and by when, without who.`,
      leavesOut: ['names of people and of the place', ...left.map(({ title }) => bare(title))].join('; '),
    },
    fileWord: code,
  };
}
/** The labels whose lines an office's copy keeps, with its own words for place and pastures. */
function headForOffice({ lines }: Block, code: string, pastures: string): readonly Line[] {
  const labelOf = (line: Line): string => line[0]?.text ?? '';
  const withText = (line: Line, text: string): Line => [...line.slice(0, 1), { text }];
  return lines.flatMap((line) => {
    const label = labelOf(line);
    if (label.startsWith('By:') || label.startsWith('There:') || label.startsWith('Where:')) return [];
    if (label.startsWith('Place:')) return [withText(line, code)];
    return [label.startsWith('Pastures:') ? withText(line, pastures) : line];
  });
}

export const outgoing = (facts: Facts, audience: Audience): Outgoing => (audience === 'office' ? forOffice(facts) : forProducer(facts));
