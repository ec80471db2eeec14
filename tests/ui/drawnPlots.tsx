// A made-up calculator with a picture of each kind, drawn, and what is read from a drawing.
import { render } from 'preact-render-to-string';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import type { Bars, DaySpans, Lines, PlainPicture, RowSpans, Shares } from '../../calculators/kit/pictures.ts';
import type { NumberQuantity } from '../../calculators/kit/quantities.ts';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import { heightAt, type Point } from '../../calculators/ui/pictures/placeWords.ts';
import { boxOf, meet, type Word } from '../../calculators/ui/pictures/words.ts';
import type { UnitName, UnitSystem } from '../../calculators/units/units.ts';

const amount = (label: string, unit: UnitName, digits: number): NumberQuantity => ({ kind: 'number', label, symbol: 'x', unit, digits });
const calculator: Calculator = {
  slug: 'made-up',
  version: 1,
  title: 'Made up',
  question: '',
  lead: '',
  searchWords: [],
  inputs: {},
  quantities: {
    boughtTon: amount('Hay to buy', 'ton', 0),
    eatenTon: amount('They eat', 'ton', 0),
    storedTon: amount('Lost in storage outside on bare ground', 'ton', 0),
    fedTon: amount('Lost in feeding', 'ton', 0),
    lowDays: amount('At the least', 'd', 0),
    likelyDays: amount('Likely', 'd', 0),
    highDays: amount('At the most', 'd', 0),
    backDay: { kind: 'day', label: 'Back' },
    atDay: { kind: 'day', label: 'Yours' },
    thereLbPerAc: amount('Yours', 'lb/ac', 0),
    verdict: { kind: 'word', label: 'Grows', words: { yes: 'Yes', no: 'No' } },
    moves: {
      kind: 'rows',
      label: 'Moves',
      columns: {
        paddock: amount('Paddock', 'count', 0),
        inDay: { kind: 'day', label: 'In' },
        outDay: { kind: 'day', label: 'Out' },
        goesIn: { kind: 'word', label: 'Go in', words: { ready: 'ready', 'not-back': 'not back' } },
      },
    },
    season: {
      kind: 'rows',
      label: 'Season',
      columns: {
        day: { kind: 'day', label: 'Day' },
        grassLbPerAc: amount('Grass standing', 'lb/ac', -1),
        eatenLbPerAc: amount('Eaten so far', 'lb/ac', -1),
      },
    },
    byMonth: {
      kind: 'rows',
      label: 'Months',
      columns: { monthDay: { kind: 'day', label: 'Up to' }, rainIn: amount('Rain', 'in', 1), usualIn: amount('Median', 'in', 1) },
    },
  },
  results: [],
  steps: [],
  cautions: [],
  refusals: [],
  limits: [],
  layout: { first: [], groups: [] },
  handout: [],
  weighsOnPeople: false,
  picture: undefined,
  morePictures: [],
  wholes: [],
  hasCalendar: false,
  leadsTo: [],
  sources: [],
  topic: 'rain',
  order: 10,
  guides: [],
  changes: [],
  refuses: () => [],
  run: () => ({ refusals: [] }),
};
export const outcome = (values: Outcome['values']): Outcome => ({
  values,
  computed: {},
  shown: [],
  ranges: {},
  shorts: {},
  cautions: [],
  uses: [],
  note: '',
  calendar: [],
  leads: undefined,
});
export interface Drawing {
  readonly other?: Outcome;
  readonly widthPx?: number;
  readonly system?: UnitSystem;
}
export const draw = (picture: PlainPicture, one: Outcome, { other, widthPx = 376, system = 'us' }: Drawing = {}): string =>
  render(
    <Picture
      calculator={calculator}
      picture={picture}
      outcome={one}
      other={other ?? null}
      titles={other ? ['Grazed short', 'Rested'] : ['', '']}
      system={system}
      id="p"
      widthPx={widthPx}
    />,
  );

export const shares: Shares = {
  kind: 'shares',
  whole: 'boughtTon',
  parts: [
    { of: 'eatenTon', tone: 'kept' },
    { of: 'storedTon', tone: 'lost' },
    { of: 'fedTon', tone: 'lost' },
  ],
};
export const hay = (eatenTon: number, storedTon: number, fedTon: number): Outcome =>
  outcome({ boughtTon: eatenTon + storedTon + fedTon, eatenTon, storedTon, fedTon });
export const spans: RowSpans = {
  kind: 'spans',
  rows: 'moves',
  lane: 'paddock',
  from: 'inDay',
  to: 'outDay',
  spanSays: 'grazed',
  gapSays: 'rests',
  hollow: { of: 'goesIn', is: 'not-back', says: 'not grown back' },
  mark: { at: 'backDay', says: 'paddock 1 is back', shownWhen: { verdict: 'yes' } },
};
/** Day 20514 is March 2, 2026. */
export const firstDay = 20514;
export const moves = (paddocks: number, stayDays: number, days: number, verdict: 'yes' | 'no' = 'yes', goesIn = 'ready'): Outcome =>
  outcome({
    backDay: firstDay + 30,
    verdict,
    moves: Array.from({ length: Math.max(1, Math.floor(days / stayDays)) }, (_, index) => ({
      paddock: 1 + (index % paddocks),
      inDay: firstDay + index * stayDays,
      outDay: firstDay + (index + 1) * stayDays,
      goesIn: index < paddocks ? 'ready' : goesIn,
    })),
  });
export const lasting: DaySpans = {
  kind: 'spans',
  lanes: [
    { of: 'lowDays', says: 'at the least' },
    { of: 'likelyDays', says: 'likely' },
    { of: 'highDays', says: 'at the most' },
  ],
  spanSays: 'grazed',
  mark: { at: 'likelyDays', says: 'down to the stubble' },
};
export const lasts = (likelyDays: number): Outcome => outcome({ lowDays: likelyDays * 0.8, likelyDays, highDays: likelyDays * 1.3 });
export const lines: Lines = {
  kind: 'lines',
  rows: 'season',
  x: 'day',
  ys: ['grassLbPerAc', 'eatenLbPerAc'],
  you: { at: 'atDay', value: 'thereLbPerAc' },
};
export const season = (rows: readonly (readonly [number, number])[], you?: readonly [number, number]): Outcome =>
  outcome({
    season: rows.map(([grassLbPerAc, eatenLbPerAc], index) => ({ day: firstDay + index * 10, grassLbPerAc, eatenLbPerAc })),
    ...(you ? { atDay: firstDay + you[0], thereLbPerAc: you[1] } : {}),
  });
export const bars: Bars = {
  kind: 'bars',
  rows: 'byMonth',
  x: 'monthDay',
  y: 'rainIn',
  usual: 'usualIn',
  usualSays: 'the usual month',
  shortSays: 'short of it',
};
export const months = (list: readonly (readonly [number, number])[]): Outcome =>
  outcome({ byMonth: list.map(([rainIn, usualIn], index) => ({ monthDay: firstDay + 29 + 30 * index, rainIn, usualIn })) });

export const numbersOf = (markup: string, pattern: RegExp): readonly number[] => [...markup.matchAll(pattern)].map((found) => Number(found[1]));
export const attribute = (tag: string, name: string): string => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
export const unescaped = (text: string): string => text.replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>');
/** The words of a drawing as they were placed. */
export const wordsIn = (markup: string): readonly Word[] =>
  [...markup.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].map(([, tag = '', text = '']) => {
    const anchor = attribute(tag, 'text-anchor');
    return {
      text: unescaped(text),
      x: Number(attribute(tag, 'x')),
      y: Number(attribute(tag, 'y')),
      size: attribute(tag, 'class').split(' ').includes('plot-figure') ? 'figure' : 'name',
      ...(anchor === 'middle' || anchor === 'end' ? { anchor } : {}),
    };
  });
/** Words that cover each other or leave the drawing. Widths are estimated, a little too wide, so a hair is let pass. */
export function crowded(markup: string): readonly string[] {
  const [wide, tall] = [numbersOf(markup, /<svg width="([\d.]+)"/g)[0] ?? 0, numbersOf(markup, /<svg width="[\d.]+" height="([\d.]+)"/g)[0] ?? 0];
  const words = wordsIn(markup);
  return words.flatMap((word, index) => {
    const box = boxOf(word);
    const over = words.slice(index + 1).filter((other) => meet(box, boxOf(other), -0.5));
    const isOut = box.left < -1 || box.right > wide + 1 || box.top < -1 || box.bottom > tall + 1.5;
    return [...over.map((other) => `${word.text} | ${other.text}`), ...(isOut ? [`${word.text} leaves`] : [])];
  });
}
export const widthsPx = [306, 376, 608];

/** Names of curves that stand nearer to another curve of their drawing than to their own, or nowhere; a curve alone is named above its drawing. */
export function misnamed(markup: string): readonly string[] {
  const curves = [...markup.matchAll(/<path class="curve is-[^"]*" d="M([^"]*)"/g)]
    .map(([, path = '']) => path.split('L').map((point) => point.split(' ').map(Number) as [number, number]))
    // The first named is drawn last, over the others.
    .toReversed();
  if (curves.length < 2) return [];
  const said = unescaped(attribute(/<svg[^>]* role="img"[^>]*>/.exec(markup)?.[0] ?? '', 'aria-label'));
  const names = [...said.matchAll(/(?:^[^:]*: |; )([^;:]*?) from [^;]*? to [^;]*/g)].map(([, name = '']) => name).slice(-curves.length);
  const words = wordsIn(markup).filter(({ size }) => size === 'name');
  return names.flatMap((name, index) => {
    const own = curves[index];
    // A name of two lines is two words one after the other.
    const at = words.findIndex(({ text }, start) => text === name || `${text} ${words[start + 1]?.text}` === name);
    const first = words[at];
    if (!own || !first) return [`${name} stands nowhere`];
    const boxes = (first.text === name ? [first] : words.slice(at, at + 2)).map(boxOf);
    const middle = (Math.min(...boxes.map(({ left }) => left)) + Math.max(...boxes.map(({ right }) => right))) / 2;
    const level = (Math.min(...boxes.map(({ top }) => top)) + Math.max(...boxes.map(({ bottom }) => bottom))) / 2;
    const away = (points: readonly Point[]): number => Math.abs((heightAt(points, middle) ?? Number.POSITIVE_INFINITY) - level);
    return curves.some((curve) => curve !== own && away(curve) < away(own) - 1) ? [`${name}: ${Math.round(away(own))} px from its own`] : [];
  });
}
