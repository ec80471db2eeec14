import { runLink } from '../../calculators/kit/cases.ts';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import type { Inputs } from '../../calculators/kit/inputs.ts';
import { linkName } from '../../calculators/kit/link.ts';
import { isShown, startTexts } from '../../calculators/kit/state.ts';

/** What a page tells beside its single numbers: which results stand there, the numbers of the note, and each table of the answer in short. */
export interface Told {
  readonly shown: string;
  readonly note: string;
  /** Column by column: how many, the first, the last, the sum. */
  readonly rows: Readonly<Record<string, string>>;
}
/** Another answer to one question of the form as it opens: which results it adds and takes away, and how many numbers the note then has. */
export interface Turned {
  readonly adds: string;
  readonly drops: string;
  readonly numbers: number;
}

const short = (value: number): string => String(Number(value.toPrecision(8)));
const numbersIn = (text: string): readonly string[] => text.match(/−?\d+(?:,\d{3})*(?:\.\d+)?/g) ?? [];

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
const outcomeOf = (calculator: Calculator, query: string): Outcome | undefined => {
  const run = runLink(calculator, query);
  return 'outcome' in run ? run.outcome : undefined;
};
/** Frozen links of one side: a second management changes nothing in what the first tells. */
export const isOneSided = ({ query }: { readonly query: string }): boolean => !query.includes('that.');
/** What a link tells; nothing where it is refused. */
export function toldBy(calculator: Calculator, query: string): Told | undefined {
  const outcome = outcomeOf(calculator, query);
  return outcome && { shown: outcome.shown.join(' '), note: numbersIn(outcome.note).join(' '), rows: columnsOf(outcome) };
}

/** Each other option of each question that the form asks as it opens. */
const turnsOf = (inputs: Inputs): readonly string[] =>
  Object.entries(inputs).flatMap(([key, input]) => {
    if (!isShown(input, startTexts(inputs))) return [];
    const options = input.kind === 'choice' ? Object.keys(input.options) : input.kind === 'yesNo' ? ['yes', 'no'] : [];
    return options.map((option) => `${linkName(key, input)}=${option}`);
  });
export function turnedBy(calculator: Calculator): Readonly<Record<string, Turned>> {
  const start = outcomeOf(calculator, '');
  if (!start) return {};
  const numbers = numbersIn(start.note).length;
  return Object.fromEntries(
    turnsOf(calculator.inputs).flatMap((query) => {
      const turned = outcomeOf(calculator, query);
      if (!turned) return [];
      const adds = turned.shown.filter((name) => !start.shown.includes(name)).join(' ');
      const drops = start.shown.filter((name) => !turned.shown.includes(name)).join(' ');
      const then = numbersIn(turned.note).length;
      return adds === '' && drops === '' && then === numbers ? [] : [[query, { adds, drops, numbers: then }] as const];
    }),
  );
}
