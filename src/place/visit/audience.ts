import type { Result } from '../model/result.ts';
import type { Step } from '../model/visit.ts';
import { type Block, blocksOf, type Facts, isToldStep, type Line, resultBlockId, stepWords } from './blocks.ts';
import { hiddenNames, pastureCode, takenAwayCode, withoutNames } from './names.ts';

/** For whom an output is. Chosen before each. */
export type Audience = 'producer' | 'office';

/** Soil, cover and where rain goes, which an office may have as they come; money, the herd, feed and plans for grazing only where somebody ticks them. */
const usualForOffice: ReadonlySet<string> = new Set([
  'ring-test',
  'slake-test',
  'packed-soil',
  'ponding',
  'cover-count',
  'soil-loss',
  'storm-runoff',
  'rain-demonstration',
  'stored-water',
]);
export const usualPlaceCode = 'a place';
/** What the office's copy calls the place. */
export const placeCodeOf = ({ note }: Facts): string => note?.placeCode?.trim() || usualPlaceCode;

/** Whether a block goes into the office's copy. */
export function isForOffice({ id, kind, slug = '' }: Pick<Block, 'id' | 'kind' | 'slug'>, { note }: Facts): boolean {
  const told = note?.blocks.find((each) => each.id === id)?.isForOffice;
  if (told !== undefined) return told;
  if (kind === 'result') return usualForOffice.has(slug);
  return kind !== 'said' && kind !== 'photos';
}
/** Whether a result may go to that audience, as `blocksOf` asks. */
export const isResultFor =
  (facts: Facts, audience: Audience | undefined) =>
  (result: Result): boolean =>
    audience !== 'office' || isForOffice({ id: resultBlockId(result), kind: 'result', slug: result.slug }, facts);
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

/** What is left out of parts that go out, and of those that somebody emptied. */
const leftWords = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap(({ title, isLeftOut, onlyInVisit }) =>
    isLeftOut || onlyInVisit === undefined ? [] : [`words of the visit that “${title}” of this note does not have`],
  );
const isEmpty = ({ text = '', lines }: Block): boolean => text.trim() === '' && lines.length === 0;

function forProducer(facts: Facts): Outgoing {
  const all = blocksOf(facts);
  const blocks = all.filter((block) => !block.isLeftOut && !isEmpty(block));
  const left = [...all.filter(({ isLeftOut }) => isLeftOut).map(({ title }) => title), ...leftWords(all)];
  const kept = new Set(blocks.map(({ id }) => id));
  return {
    title: `Visit of ${facts.place.name}`,
    blocks,
    results: facts.results.filter((result) => kept.has(resultBlockId(result))),
    told: {
      has: 'Names, place and pastures, all results with their links, what was said, who does what by when.',
      leavesOut: left.join('; ') || 'nothing',
    },
    fileWord: facts.place.name,
  };
}

/** The facts as an office may have them: the place and its pastures called by codes wherever a part of the note names them. */
function inCodes(facts: Facts): Facts {
  const { place, note } = facts;
  const name = placeCodeOf(facts);
  if (note?.hasPastureNames === true) return { ...facts, place: { ...place, name } };
  const pastures = place.pastures.map((each) => ({ ...each, name: pastureCode(place, each.id) }));
  const pasturesTakenAway = (place.pasturesTakenAway ?? []).map(({ id }) => ({ id, name: takenAwayCode }));
  return { ...facts, place: { ...place, name, pastures, pasturesTakenAway } };
}
/** What takes the names out of words that somebody typed in the visit; all else in a note was worked out or comes from these pages, and stays as it is. */
export const bareWords = (facts: Facts): ((text: string) => string) => {
  const hidden = hiddenNames(facts.place, facts.visit, placeCodeOf(facts), facts.note?.hasPastureNames === true);
  return (text) => withoutNames(text, hidden);
};

function forOffice(facts: Facts): Outgoing {
  const { visit, note } = facts;
  const coded = inCodes(facts);
  const bare = bareWords(facts);
  const all = blocksOf(coded, isResultFor(facts, 'office'));
  const blocks = all
    .filter((block) => !block.isLeftOut && isForOffice(block, facts))
    .map((block): Block => {
      const { cameWith, ...rest } = block;
      switch (block.kind) {
        case 'head':
          return { ...rest, lines: block.lines.filter(isForAnyone) };
        case 'agreed':
          return { ...rest, lines: visit.steps.filter(isToldStep).map((each) => [{ text: stepWords(bareStep(each, bare), false) }]) };
        case 'photos': {
          const images = (block.images ?? []).map((each) => ({ ...each, words: bare(each.words) }));
          return { ...rest, images, lines: images.map(({ words }): Line => [{ text: words }]) };
        }
        case 'cautions':
          return withBareSides(rest, facts, bare);
        case 'result':
          return withBareSides(cameWith === undefined ? rest : { ...rest, text: bare(rest.text ?? '') }, facts, bare);
        default:
          return rest.text === undefined ? rest : { ...rest, text: bare(rest.text) };
      }
    })
    .filter((block) => !isEmpty(block));
  const kept = new Set(blocks.map(({ id }) => id));
  const left = all.filter(({ id }) => !kept.has(id)).filter((block) => !isEmpty(block));
  const code = coded.place.name;
  return {
    title: `Visit of ${code}`,
    blocks,
    results: facts.results.filter((result) => kept.has(resultBlockId(result))),
    told: {
      has: `${code}, ${note?.hasPastureNames === true ? 'pastures by name' : 'pastures by number'}, no other names; what was agreed and by when, without who.`,
      leavesOut: ['names of people and of the place', ...left.map(({ title }) => title), ...leftWords(blocks)].join('; '),
    },
    fileWord: code,
  };
}
/** Lines of the head that an office's copy keeps. */
const isForAnyone = (line: Line): boolean => !['By: ', 'There: ', 'Where: '].includes(line[0]?.text ?? '');
export const bareStep = (step: Step, bare: (text: string) => string): Step => (step.what === undefined ? step : { ...step, what: bare(step.what) });
/** What two managements were called is typed; the words and figures around it are not. */
function withBareSides(block: Block, { results }: Facts, bare: (text: string) => string): Block {
  const sides = results.filter((result) => block.kind === 'cautions' || block.id === resultBlockId(result)).flatMap((result) => result.sides ?? []);
  const bareSides = (text: string): string => sides.reduce((now, side) => now.replaceAll(side, bare(side)), text);
  return {
    ...block,
    ...(block.text === undefined ? {} : { text: bareSides(block.text) }),
    lines: block.lines.map((line) => line.map((run) => ({ ...run, text: bareSides(run.text) }))),
  };
}

export const outgoing = (facts: Facts, audience: Audience): Outgoing => (audience === 'office' ? forOffice(facts) : forProducer(facts));
