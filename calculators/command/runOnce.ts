import type { Calculator, Outcome } from '../kit/define.ts';
import { doubtsIn } from '../kit/doubts.ts';
import type { Cell, Input, RecordInput } from '../kit/inputs.ts';
import { linkName, toLink } from '../kit/link.ts';
import { noteOf } from '../kit/note.ts';
import { fromLink, type Opened } from '../kit/openLink.ts';
import { printName, printScalar } from '../kit/print.ts';
import type { Quantity, Scalar } from '../kit/quantities.ts';
import { splitAnswers, withAnswers } from '../kit/record/answers.ts';
import { runTexts } from '../kit/runTexts.ts';
import { isShown, type Problem, type Texts, type Value, type Values } from '../kit/state.ts';
import { textAt } from '../kit/textAt.ts';
import { isoDay } from '../units/printQuantity.ts';
import { didYouMean, namesOf } from './nearestName.ts';

/** Something that a person must put right. Its message is all that is shown. */
export class Refused extends Error {}

export interface Ran {
  /** Numbers that are taken and look wrong, each behind the name of its field in a link. */
  readonly doubts: readonly string[];
  readonly values: Values;
  readonly outcome: Outcome;
}
/** @throws Refused with the messages that the form shows, each behind the name of its field in a link */
export function run(calculator: Calculator, texts: Texts): Ran {
  const ran = runTexts(calculator, texts);
  const said = ({ at, say }: Problem): string => `${linkPath(calculator, at)}: ${say}${optionsSaid(calculator, texts, at)}`;
  if ('outcome' in ran) return { values: ran.values, doubts: doubtsIn(calculator.inputs, texts).map(said), outcome: ran.outcome };
  throw new Refused(ran.refusals.map(said).join('\n'));
}
/** What is asked at `rainIn`, or in a table at `parts.0.areaAc`. */
function askedAt({ inputs }: Calculator, at: string): Input | Cell | undefined {
  const [key = '', , column] = at.split('.');
  const input = inputs[key];
  return input?.kind === 'rows' && column !== undefined ? input.columns[column] : input;
}
/** The list that the form shows beside a choice; here nobody sees one. */
function optionsSaid(calculator: Calculator, texts: Texts, at: string): string {
  const asked = askedAt(calculator, at);
  const text = textAt(texts, at) ?? '';
  if (asked?.kind !== 'choice' || Object.hasOwn(asked.options, text)) return '';
  const labels = new Map(Object.entries(asked.options).map(([option, { label }]) => [option, label]));
  return `${didYouMean(text, labels)} The list: ${[...labels.keys()].join(', ')}.`;
}
/** `parts.0.areaAc` as `parts.area, row 1`. */
function linkPath(calculator: Calculator, at: string): string {
  const [key = '', index, column] = at.split('.');
  const input = calculator.inputs[key];
  if (!input) return at;
  const name = linkName(key, input);
  const cell = askedAt(calculator, at);
  if (cell && cell !== input && column !== undefined) return `${name}.${linkName(column, cell)}, row ${Number(index) + 1}`;
  return index === undefined ? name : `${name}, month ${Number(index) + 1}`;
}

const cellAsRead = (cell: Cell, value: unknown): unknown => {
  if (cell.kind === 'number') return { value, unit: cell.unit };
  return { value: cell.kind === 'date' && typeof value === 'number' ? isoDay(value) : value };
};
function inputAsRead(input: Input, value: Value | undefined): unknown {
  if (input.kind === 'months') return { values: value, unit: input.unit };
  if (input.kind === 'record') return { lines: Array.isArray(value) ? value.length : 0, unit: input.unit };
  if (input.kind !== 'rows') return cellAsRead(input, value);
  const rows: readonly unknown[] = Array.isArray(value) ? value : [];
  return rows.map((row) => {
    const cells = new Map<string, unknown>(typeof row === 'object' && row !== null ? Object.entries(row) : []);
    return Object.fromEntries(Object.entries(input.columns).map(([name, cell]) => [linkName(name, cell), cellAsRead(cell, cells.get(name))]));
  });
}
/** What is shown for these values, by its name in a link. */
const inputsAsRead = ({ inputs }: Calculator, values: Values): object =>
  Object.fromEntries(
    Object.entries(inputs)
      .filter(([, input]) => isShown(input, values))
      .map(([key, input]) => [linkName(key, input), inputAsRead(input, values[key])]),
  );

/** `told` is the text on the page, where a number stands beside others that it must add up with. */
function resultAsData(quantity: Quantity, value: Outcome['values'][string] | undefined, told?: string): unknown {
  if (quantity.kind !== 'rows') {
    if (typeof value !== 'number' && typeof value !== 'string') return null;
    const said = { value: quantity.kind === 'day' ? isoDay(Number(value)) : value, text: told ?? printScalar(value, quantity, 'us') };
    return quantity.kind === 'number' ? { ...said, unit: quantity.unit } : said;
  }
  const rows: readonly (number | Readonly<Record<string, Scalar>>)[] = typeof value === 'object' ? value : [];
  return rows.map((row) =>
    typeof row === 'number'
      ? row
      : Object.fromEntries(Object.entries(quantity.columns).map(([name, column]) => [name, resultAsData(column, row[name])])),
  );
}
const resultsAsData = (calculator: Calculator, { outcome: { shown, values } }: Ran): object =>
  Object.fromEntries(
    shown.flatMap((name) => {
      const quantity = calculator.quantities[name];
      if (!quantity) return [];
      return [[name, resultAsData(quantity, values[name], quantity.kind === 'rows' ? undefined : printName(calculator, values, name, 'us'))]];
    }),
  );

const sideAsData = (calculator: Calculator, ran: Ran): object => ({
  inputs: inputsAsRead(calculator, ran.values),
  results: resultsAsData(calculator, ran),
  ranges: Object.fromEntries(Object.entries(ran.outcome.ranges).filter(([name]) => ran.outcome.shown.includes(name))),
  cautions: ran.outcome.cautions,
  ...(ran.doubts.length > 0 ? { doubts: ran.doubts } : {}),
  note: noteOf(calculator, ran.outcome),
});

/** By how much each number of the second management stands above that of the first. */
function differences({ quantities }: Calculator, first: Ran, second: Ran): object {
  return Object.fromEntries(
    first.outcome.shown.flatMap((name) => {
      const [quantity, one, other] = [quantities[name], first.outcome.values[name], second.outcome.values[name]];
      if (quantity?.kind !== 'number' || typeof one !== 'number' || typeof other !== 'number' || !second.outcome.shown.includes(name)) return [];
      return [[name, { value: other - one, unit: quantity.unit, text: printScalar(other - one, quantity, 'us') }]];
    }),
  );
}

/** @throws Refused with the lines that answer what the form would ask below a record */
function refuseOpenRecord({ read }: RecordInput, record: string): void {
  const { problem, questions } = read(record);
  const open = questions.find(({ answer }) => answer === '');
  if (problem === undefined || open === undefined) return;
  const { answers } = splitAnswers(record);
  const lines = open.options.map(({ value, label }) => `${withAnswers({ ...answers, [open.name]: value }, '').trim()}   ${label}`);
  throw new Refused(`${problem.replace(' below', ' in the first line of the file')}\n${lines.join('\n')}`);
}

/**
 * The texts of a form with a record in place of its example.
 * @throws Refused where nothing of the kind is asked
 */
export function withRecord({ slug, inputs }: Calculator, texts: Texts, record: string): Texts {
  const asked = Object.entries(inputs).filter(([, { kind }]) => kind === 'record');
  const [key] = asked.map(([name]) => name);
  if (key === undefined || asked.length > 1)
    throw new Refused(`${slug} asks for ${key === undefined ? 'no record' : 'several records'}, so --record cannot be used with it.`);
  const input = inputs[key];
  const missing = Object.entries(input?.shownWhen ?? {}).flatMap(([other, is]) =>
    input !== undefined && !isShown(input, texts) && inputs[other] ? [`${linkName(other, inputs[other])}=${[is].flat()[0]}`] : [],
  );
  if (missing.length > 0) throw new Refused(`${slug} uses a record only with ${missing.join(' and ')}. Put that into the query.`);
  if (input?.kind === 'record') refuseOpenRecord(input, record);
  return { ...texts, [key]: record };
}

/** What is wrong with a name that a query gives and no input has. */
function unknownSaid({ slug, inputs }: Calculator, given: string): string {
  const names = namesOf(inputs);
  const name = given.replace(/^that\./, '');
  if (names.has(name)) return `“${given}” cannot differ: both sides share the place.`;
  return `“${given.slice(0, 60)}” is no input of ${slug}.${didYouMean(name, names)}`;
}
/** @throws Refused for a name that nothing goes by, a name given twice, a row too many: nobody looks over here what would be left out */
function refuseFaults(calculator: Calculator, { faults, unknown }: Pick<Opened, 'faults' | 'unknown'>): void {
  if (unknown.length > 0) throw new Refused(unknown.map((name) => unknownSaid(calculator, name)).join('\n'));
  if (faults.length > 0) throw new Refused(faults.join('\n'));
}

/**
 * One calculation with all that the page says of it. `record`: the text of a file that stands where the page has it pasted.
 * @throws Refused for what cannot be used
 */
export function runOnce(calculator: Calculator, query: string, record?: string): object {
  const { form: asked, notices, ...told } = fromLink(calculator, query.replace(/^\?/, ''));
  refuseFaults(calculator, told);
  const given = (texts: Texts): Texts => (record === undefined ? texts : withRecord(calculator, texts, record));
  const form = { ...asked, this: given(asked.this), that: asked.that && given(asked.that) };
  const first = run(calculator, form.this);
  const second = form.that && run(calculator, form.that);
  return {
    slug: calculator.slug,
    question: calculator.question,
    ...sideAsData(calculator, first),
    ...(second ? { that: sideAsData(calculator, second), differences: differences(calculator, first, second) } : {}),
    ...(notices.length > 0 ? { notices } : {}),
    link: `/calculators/${calculator.slug}/?${toLink(calculator, form)}`,
  };
}
