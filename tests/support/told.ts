import fc from 'fast-check';
import { runLink } from '../../calculators/kit/cases.ts';
import type { Calculator, Outcome, Run } from '../../calculators/kit/define.ts';
import type { Cell, Inputs } from '../../calculators/kit/inputs.ts';
import { linkName } from '../../calculators/kit/link.ts';
import { isShown, readForm, startTexts } from '../../calculators/kit/state.ts';
import { textsOf } from './randomForms.ts';

/** What a page tells beside its single numbers. */
export interface Told {
  /** Results that stand there, in order. */
  readonly shown: string;
  /** What is said before them, by first words. */
  readonly says: readonly string[];
  /** The numbers of the note. */
  readonly note: string;
  /** Tables of the answer, column by column: how many, the first, the last, the sum. */
  readonly rows: Readonly<Record<string, string>>;
}
/** Another answer to one question of the form as it opens: what it adds and takes away, and how many numbers the note then has. */
export interface Turned {
  readonly adds: readonly string[];
  readonly drops: readonly string[];
  readonly numbers: number;
}
/** In how many of so many forms each thing stands; of texts, in how many each of their kinds. */
export type Counts = Readonly<Record<string, number | string>>;

const short = (value: number): string => String(Number(value.toPrecision(8)));
const numbersIn = (text: string): readonly string[] => text.match(/−?\d+(?:,\d{3})*(?:\.\d+)?/g) ?? [];
const start = (say: string): string => say.split(' ').slice(0, 5).join(' ');

function columnsOf({ computed }: Outcome): Told['rows'] {
  return Object.fromEntries(
    Object.entries(computed).flatMap(([name, rows]) => {
      if (typeof rows !== 'object') return [];
      const columns = new Set(rows.flatMap((row) => Object.keys(row)));
      return [...columns].map((column) => {
        const cells = rows.flatMap((row) => (row[column] === undefined ? [] : [row[column]]));
        const numbers = cells.filter((cell) => typeof cell === 'number');
        const told =
          numbers.length === cells.length
            ? `${short(numbers[0] ?? Number.NaN)} to ${short(numbers.at(-1) ?? Number.NaN)}, sum ${short(numbers.reduce((sum, each) => sum + each, 0))}`
            : cells.length <= 12
              ? cells.join(' ')
              : `${cells[0]} to ${cells.at(-1)}`;
        return [`${name}.${column}`, `${cells.length}: ${told}`] as const;
      });
    }),
  );
}
/** Frozen links of one side: a second management changes nothing in what the first tells. */
export const isOneSided = ({ query }: { readonly query: string }): boolean => !query.includes('that.');
/** What a link tells; nothing where it is refused. */
export function toldBy(calculator: Calculator, query: string): Told | undefined {
  const run = runLink(calculator, query);
  if ('refusals' in run) return undefined;
  const { outcome } = run;
  return {
    shown: outcome.shown.join(' '),
    says: outcome.cautions.map(({ say }) => start(say)),
    note: numbersIn(outcome.note).join(' '),
    rows: columnsOf(outcome),
  };
}

interface Turn {
  readonly key: string;
  readonly query: string;
}
const optionsOf = (cell: Cell): readonly string[] =>
  cell.kind === 'choice' ? Object.keys(cell.options) : cell.kind === 'yesNo' ? ['yes', 'no'] : [];
/** Each option of each question that the form asks as it opens; in a table, with one row of it. */
const turnsOf = (inputs: Inputs): readonly Turn[] =>
  Object.entries(inputs).flatMap(([key, input]): readonly Turn[] => {
    if (!isShown(input, startTexts(inputs))) return [];
    if (input.kind === 'rows')
      return Object.entries(input.columns).flatMap(([name, cell]) =>
        optionsOf(cell).map((option) => ({ key: `${key}.${name}`, query: `${linkName(key, input)}.${linkName(name, cell)}=${option}` })),
      );
    return input.kind === 'months' || input.kind === 'record'
      ? []
      : optionsOf(input).map((option) => ({ key, query: `${linkName(key, input)}=${option}` }));
  });
/** Results and sentences that stand on the page, refusals among them. */
const standing = (run: Run): readonly string[] =>
  'refusals' in run
    ? run.refusals.map(({ say }) => `refused: ${start(say)}`)
    : [...run.outcome.shown, ...run.outcome.cautions.map(({ say }) => `says: ${start(say)}`)];
const numbersOf = (run: Run): number => ('refusals' in run ? 0 : numbersIn(run.outcome.note).length);

export function turnedBy(calculator: Calculator): Readonly<Record<string, Turned>> {
  const first = runLink(calculator, '');
  const stood = standing(first);
  return Object.fromEntries(
    turnsOf(calculator.inputs).flatMap(({ query }) => {
      const run = runLink(calculator, query);
      const stands = standing(run);
      const adds = stands.filter((name) => !stood.includes(name));
      const drops = stood.filter((name) => !stands.includes(name));
      const numbers = numbersOf(run);
      return adds.length + drops.length === 0 && numbers === numbersOf(first) ? [] : [[query, { adds, drops, numbers }] as const];
    }),
  );
}
/** Three options of a long list are enough here. */
const mostOptions = 3;
/** Of one that runs long, thirty years of days each. */
const [mostPairs, mostLongPairs] = [120, 40];
/** Two other answers at a time. */
export function pairsBy(calculator: Calculator): Counts {
  const turns = [...Map.groupBy(turnsOf(calculator.inputs), ({ key }) => key).values()].flatMap((list) => list.slice(0, mostOptions));
  const all = turns.flatMap((one, at) => turns.slice(at + 1).flatMap((other) => (one.key === other.key ? [] : [`${one.query}&${other.query}`])));
  const every = Math.ceil(all.length / (calculator.runs === 'long' ? mostLongPairs : mostPairs));
  return countsOf(all.filter((_, at) => at % every === 0).map((query) => runLink(calculator, query)));
}
/** The same forms every time, with numbers from end to end of their fields: in how many of them each thing stands. */
export function formsBy(calculator: Calculator): Counts {
  const texts = fc.sample(textsOf(calculator.inputs), { seed: 1, numRuns: calculator.runs === 'long' ? 15 : 120 });
  return countsOf(texts.map((each) => calculator.run(readForm(calculator.inputs, each).values)));
}
/** A text without its numbers and months, so that only what is said tells two apart. */
const kindOf = (text: string): string =>
  text
    .replaceAll(/\b(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\b/g, 'month')
    .replaceAll(/−?\d[\d,.]*(?: (?:head|days?|in|lb|gal|ac|ft|tons?)\b)?/g, '#');
const mostKinds = 12;
function countsOf(runs: readonly Run[]): Counts {
  const counts = new Map<string, number>();
  const count = (name: string, times = 1): void => void counts.set(name, (counts.get(name) ?? 0) + times);
  const kinds = new Map<string, Map<string, number>>();
  const steps = new Map<number, Map<string, number>>();
  const countKind = (name: string, text: string): void => {
    const known = kinds.get(name) ?? new Map<string, number>();
    kinds.set(name, known.set(kindOf(text), (known.get(kindOf(text)) ?? 0) + 1));
  };
  for (const run of runs) {
    count('forms');
    for (const name of standing(run)) count(name);
    count('numbers of notes', numbersOf(run));
    if ('refusals' in run) continue;
    countKind('kinds of notes', run.outcome.note);
    for (const { title, text } of run.outcome.calendar) countKind('kinds of calendar entries', `${title} ${text}`);
    for (const [step, use] of run.outcome.uses.entries()) {
      const ways = steps.get(step) ?? new Map<string, number>();
      if (use !== null) ways.set(JSON.stringify(use), (ways.get(JSON.stringify(use)) ?? 0) + 1);
      steps.set(step, ways);
    }
    for (const [name, range] of Object.entries(run.outcome.ranges)) countKind(`kinds of ranges of ${name}`, range);
    count('numbers of ranges', numbersIn(Object.values(run.outcome.ranges).join(' ')).length);
  }
  // From the shortest text to the longest: a change of words moves nothing, unless it makes two kinds of one.
  const told = [...kinds].map(([name, known]): readonly [string, string] => {
    const sizes = [...known].toSorted(([one], [other]) => one.length - other.length).map(([, times]) => times);
    return [name, sizes.length > mostKinds ? `${sizes.length} kinds` : sizes.join(', ')];
  });
  // How often each step of the working is drawn, each way of it apart where there are few.
  const drawn = [...steps.values()].map((ways) => {
    const sizes = [...ways].toSorted(([one], [other]) => one.localeCompare(other)).map(([, times]) => times);
    return sizes.length > mostKinds ? sizes.reduce((sum, each) => sum + each, 0) : sizes.join('/') || 0;
  });
  return Object.fromEntries([...counts, ...told, ['steps', drawn.join(' ')] as const].sort(([one], [other]) => one.localeCompare(other)));
}

/** What the picture draws by which name, as plain text: two names exchanged draw the wrong thing. */
export const drawnBy = ({ picture, wholes }: Calculator): string => JSON.stringify({ picture, wholes });
