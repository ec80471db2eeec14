// Build only: KaTeX must never reach the browser. Plain Node reads this file too, so it imports nothing of Astro.
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import { drawHoles, drawSymbol, drawSymbols } from '../../calculators/kit/drawFormula.ts';
import type { PlainStep } from '../../calculators/kit/steps.ts';
import { symbolsOf } from './symbols.ts';

/** What a step's source is called, and where its entry stands. */
export interface SourceLinks {
  readonly short: (key: string) => string;
  readonly href: (key: string) => string;
}

/** What stands in the holes. Words are text, tables are markup. */
export interface Filling {
  readonly outcome: Outcome;
  readonly putIn: string;
  readonly says: (says: string) => string;
  readonly number: (name: string) => string;
  readonly result: (name: string) => string;
  readonly rows: (step: PlainStep & { readonly kind: 'rows' }, index: number) => string;
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** `tr55-1986, eq. 2-3` as a link and its place; `common practice` and `from memory` as the words that they are. */
export function drawSource(of: string, { short, href }: SourceLinks): string {
  const [key = '', ...place] = of.split(', ');
  const isWords = ['common practice', 'from memory', 'our own'].includes(key);
  const name = isWords ? key : `<a href="${escaped(href(key))}">${escaped(short(key))}</a>`;
  return `<span class="source-note">${name}${escaped(place.map((part) => `, ${part}`).join(''))}</span>`;
}

const letters = 'abcdefgh';
const because = (text: string | undefined): string => (text === undefined ? '' : `<p class="because">${escaped(text)}</p>`);
const hiddenIf = (isHidden: boolean): string => (isHidden ? ' hidden' : '');

/**
 * The steps of a definition, each formula drawn twice, in symbols and with holes for its numbers: what `fillWorking` fills.
 * @param filling - What stands in the holes; nothing, for a script to fill
 */
export function drawWorking(calculator: Calculator, links: SourceLinks, filling?: Filling): string {
  const symbols = symbolsOf(calculator);
  const symbol = (step: PlainStep) => (each: string) => symbols(each, step.kind === 'rows' ? step.of : undefined);
  const number = filling?.number ?? (() => '');
  const formula = (html: string, isNumbers = false): string => `<div class="formula${isNumbers ? ' is-numbers' : ''}">${html}</div>`;
  const result = (name: string): string => `<b data-result="${name}">${escaped(filling?.result(name) ?? '')}</b>`;
  // The first table of the results is the plot in numbers, and paper has the plot. The others stand there, so that the working need not repeat them on paper.
  const [, ...tables] = calculator.results.map(({ of }) => of).filter((of) => calculator.quantities[of]?.kind === 'rows');

  function sum(step: PlainStep, index: number): string {
    const use = filling?.outcome.uses[index];
    if (step.kind === 'lookup') return `<p class="step-result">${result(step.shows)}</p>`;
    if (step.kind === 'formula') {
      const ways = step.ways.map(
        (way, at) =>
          `<div data-way="${at}"${hiddenIf(at !== use)}>${because(way.because)}` +
          formula(drawSymbols(way.formula, symbol(step), `${symbols(step.shows)} = `)) +
          `${formula(drawHoles(way.formula, number, '{} = '), true)}</div>`,
      );
      return `<div class="step-sum">${ways.join('')}<p class="step-result">= ${result(step.shows)}</p></div>`;
    }
    if (step.kind === 'check') {
      const half = (template: string): string => formula(drawSymbols(template, symbol(step))) + formula(drawHoles(template, number), true);
      return `<div class="step-sum">${half(step.left)}${because(step.because)}${half(step.right)}</div>`;
    }
    const columns = Object.entries(step.formulas).flatMap(([column, ways]) =>
      ways.map((way, at) => {
        const letter = ways.length > 1 ? `<b class="way-letter">${letters[at]}</b> ` : '';
        const drawn = drawSymbols(way.formula, symbol(step), `${symbols(column, step.of)} = `);
        const why = way.because === undefined ? '' : ` <span class="because">${escaped(way.because)}</span>`;
        return `<li>${letter}<span class="formula">${drawn}</span>${why}</li>`;
      }),
    );
    const feet = Object.entries(step.sums).map(
      ([name, column]) => `${drawSymbol(symbols(name))} is the sum of ${drawSymbol(symbols(column, step.of))}`,
    );
    const foot = feet.length === 0 ? '' : `<p class="because">In the table’s foot: ${feet.join(', ')}.</p>`;
    const label = escaped(`${calculator.title}, step ${index + 1} line by line`);
    const table = `<section class="scroll" data-rows tabindex="0" aria-label="${label}">${filling?.rows(step, index) ?? ''}</section>`;
    return `<div class="step-sum"><ul class="row-formulas">${columns.join('')}</ul>${foot}${table}</div>`;
  }

  const steps = calculator.steps.map((step, index) => {
    const isLeftOut = filling?.outcome.uses[index] === null;
    const isTold = step.kind === 'rows' && tables.includes(step.of);
    const says = filling && !isLeftOut ? filling.says(step.says) : '';
    // Without numbers the sentence with its holes goes along: the script that fills them has none of these words.
    const toFill = filling ? '' : `="${escaped(step.says)}"`;
    const source = step.source === undefined ? '' : ` ${drawSource(step.source, links)}`;
    return `<li class="step${isTold ? ' is-told' : ''}" data-step="${index}"${hiddenIf(isLeftOut)}><div class="step-text"><p data-says${toFill}>${escaped(says)}</p>${source}</div>${sum(step, index)}</li>`;
  });
  return (
    '<p class="working-sides" data-working-sides hidden><button type="button" aria-pressed="true" data-side="this">Work out this</button> ' +
    '<button type="button" aria-pressed="false" data-side="that">Work out that</button></p>' +
    `<h3 class="working-title">What was put in</h3><div data-put-in>${filling?.putIn ?? ''}</div><ol class="steps">${steps.join('')}</ol>`
  );
}
