import { render } from 'preact-render-to-string';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Anchor } from '../../calculators/ui/pictures/face/labels.ts';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { calculatorOf } from './catalog.ts';

export interface Drawn {
  readonly slug: string;
  readonly query: string;
  readonly other?: string | undefined;
  readonly widthPx?: number;
  readonly system?: UnitSystem;
}
export function draw({ slug, query, other, widthPx = 376, system = 'us' }: Drawn): string {
  const calculator = calculatorOf(slug);
  if (!calculator.picture) throw new RangeError(`${slug} has no picture`);
  const outcome = runQuery(calculator, query);
  return render(
    <Picture
      calculator={calculator}
      picture={calculator.picture}
      outcome={outcome}
      other={other === undefined ? null : runQuery(calculator, other)}
      titles={other === undefined ? ['', ''] : ['Grazed short', 'Rested']}
      system={system}
      id="p"
      widthPx={widthPx}
    />,
  );
}
const isAnchor = (text: string): text is Anchor => ['start', 'middle', 'end'].includes(text);
const sizeOf = (text: string): 15 | 16 | 18 => (text === '18' ? 18 : text === '16' ? 16 : 15);
export const textsOf = (markup: string) =>
  [...markup.matchAll(/<text class="type-(\d+) ([\w-]+)" x="([\d.-]+)" y="([\d.-]+)" text-anchor="(\w+)">([^<]*)</g)].map(
    ([, size = '', on = '', x, y, anchor = '', words = '']) => ({
      size: sizeOf(size),
      on,
      x: Number(x),
      y: Number(y),
      anchor: isAnchor(anchor) ? anchor : 'start',
      words: words.replaceAll('&amp;', '&'),
    }),
  );
export const numbersIn = (markup: string, pattern: RegExp): readonly number[] => [...markup.matchAll(pattern)].map((found) => Number(found[1]));
export const sumOf = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0);
export const pathsOf = (markup: string, name: string): readonly string[] =>
  [...markup.matchAll(new RegExp(`<path class="${name}"[^>]* d="([^"]*)"`, 'g'))].map(([, d = '']) => d);
export const countOf = (markup: string, name: string): number => sumOf(pathsOf(markup, name).map((d) => d.split('M').length - 1));
/** Width of a band: from its left edge level to its right. */
export const bandWidth = (markup: string, kind: string): readonly number[] =>
  pathsOf(markup, kind)
    .filter((d) => /^M[\d.]+ [\d.]+H/.test(d))
    .map((d) => {
      const [, left, right] = /^M([\d.]+) [\d.]+H([\d.]+)/.exec(d) ?? [];
      return Number(right) - Number(left);
    });
export const curtains = (markup: string): readonly number[] =>
  numbersIn(markup, /<svg x="[\d.]+" width="([\d.]+)" height="[\d.]+" aria-hidden="true"><rect class="curtain"/g);
