import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CaseList } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Cell, Input } from '../../calculators/kit/inputs.ts';
import { linkName, toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import type { Scalar } from '../../calculators/kit/quantities.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { canCompare, isShown, type Texts } from '../../calculators/kit/state.ts';
import { calculators, type FrozenLink, fileOf, loadFrom } from '../support/catalog.ts';
import { root } from '../support/files.ts';

// Part of `npm run freeze`: keeps a few links of a new calculator. A file that stands already is changed by hand only.
const mostCases = 5;

function resultsOf(calculator: Calculator, texts: Texts): FrozenLink['results'] | undefined {
  const run = runTexts(calculator, texts);
  if ('refusals' in run) return undefined;
  return Object.fromEntries(Object.entries(run.outcome.computed).filter((entry): entry is [string, Scalar] => typeof entry[1] !== 'object'));
}
function keptLink(calculator: Calculator, query: string): FrozenLink | undefined {
  const { form, notices } = fromLink(calculator, query);
  const results = resultsOf(calculator, form.this);
  const that = form.that ? resultsOf(calculator, form.that) : undefined;
  if (notices.length > 0 || !results || (form.that && !that)) return undefined;
  return { query: toLink(calculator, form), results, ...(that ? { that } : {}) };
}

const isCell = (input: Input): input is Cell => !['rows', 'months', 'record'].includes(input.kind);
/** Another answer to one field, a few to try. */
function othersOf(cell: Cell): readonly string[] {
  if (cell.kind === 'choice') return Object.keys(cell.options).filter((option) => option !== cell.default);
  if (cell.kind === 'yesNo') return [cell.default ? 'no' : 'yes'];
  if (cell.kind === 'date') return [];
  return [0.9, 1.1, 0.5, 2].map((times) => `${cell.whole === true ? Math.round(cell.default * times) : cell.default * times}`);
}
/** Queries in which the second management differs in one thing. */
const comparisonsOf = ({ inputs }: Calculator, texts: Texts): readonly string[] =>
  Object.entries(inputs).flatMap(([key, input]) =>
    isCell(input) && input.belongsTo === 'management' && isShown(input, texts)
      ? othersOf(input).map((other) => `that.${linkName(key, input)}=${other}`)
      : [],
  );

for (const calculator of calculators) {
  const path = join(root, fileOf(calculator.slug, 'frozen.json'));
  if (existsSync(path)) continue;
  const cases = (await loadFrom<CaseList>(calculator.slug, 'cases.ts'))?.cases ?? [];
  const { form } = fromLink(calculator, '');
  const fromCases = cases.filter(({ records }) => records === undefined).slice(0, mostCases);
  const queries = ['', ...fromCases.map(({ query }) => query)];
  const compared = canCompare(calculator.inputs)
    ? comparisonsOf(calculator, form.this)
        .map((query) => keptLink(calculator, query))
        .find((link) => link !== undefined)
    : undefined;
  const links = [...queries.map((query) => keptLink(calculator, query)), compared].filter((link) => link !== undefined);
  writeFileSync(path, `${JSON.stringify(links, null, 2)}\n`);
  console.log(`${calculator.slug}: ${links.length} links`);
}
