import type { Calculator } from '../kit/define.ts';
import type { Cell, Input } from '../kit/inputs.ts';
import { linkName } from '../kit/link.ts';
import { defaultText } from '../kit/read.ts';
import { isShown, rowsIn, type Texts } from '../kit/state.ts';
import { didYouMean, namesOf } from './nearestName.ts';
import { Refused } from './runOnce.ts';

/** Something that is asked, and whether the table has a column for it. */
interface Asked {
  /** As the table heads it, else its name in a link. */
  readonly name: string;
  readonly headers: readonly string[];
  /** What it holds without a column. */
  readonly fallback: string;
  readonly isAsked: (texts: Texts) => boolean;
}
export interface Columns {
  readonly names: readonly string[];
  /** Names of inputs among them. */
  readonly known: ReadonlySet<string>;
  readonly asked: readonly Asked[];
}

const fallbackOf = (input: Input): string =>
  input.kind === 'rows' || input.kind === 'months' || input.kind === 'record' ? 'its example' : defaultText(input).replace('\u00a0', ' ');
/** A table inside a cell is followed column by column where one of them is given, and else as a whole. */
const askedOf = ({ inputs }: Calculator, known: ReadonlySet<string>): readonly Asked[] =>
  Object.entries(inputs).flatMap(([key, input]): readonly Asked[] => {
    const asked = (cell: Input | Cell, names: readonly string[], isAsked: Asked['isAsked']): Asked => {
      const headers = names.filter((name) => known.has(name));
      return { name: headers[0] ?? names[0] ?? key, headers, fallback: fallbackOf(cell), isAsked };
    };
    const name = linkName(key, input);
    const isHere = (texts: Texts): boolean => isShown(input, texts);
    if (input.kind !== 'rows') return [asked(input, [name, ...(input.aliases ?? [])], isHere)];
    const inside = Object.entries(input.columns).map(([column, cell]) =>
      asked(
        cell,
        [linkName(column, cell), ...(cell.aliases ?? [])].map((each) => `${name}.${each}`),
        (texts) => isHere(texts) && rowsIn(texts[key]).some((row) => isShown(cell, { ...texts, ...row })),
      ),
    );
    return inside.some(({ headers }) => headers.length > 0) ? inside : [asked(input, [name], isHere)];
  });

/** @throws Refused for a column that is neither an input nor named as carried along */
export function columnsOf(calculator: Calculator, header: readonly string[], carried: readonly string[]): Columns {
  const { slug, inputs } = calculator;
  const names = header.map((name) => name.trim());
  const labels = namesOf(inputs);
  const known = new Set(names.filter((name) => labels.has(name)));
  const twice = names.find((name, at) => known.has(name) && names.indexOf(name) !== at);
  if (twice !== undefined) throw new Refused(`Two columns are named “${twice}”.`);
  const lost = carried.find((name) => known.has(name) || !names.includes(name));
  if (lost !== undefined)
    throw new Refused(known.has(lost) ? `“${lost}” is an input, so --carry cannot take it.` : `--carry: this table has no column “${lost}”.`);
  const all = `Its inputs are: ${[...labels.keys()].join(', ')}.`;
  const faults = names
    .filter((name) => name !== '' && !known.has(name) && !carried.includes(name))
    .map((name) => `“${name}” is no input of ${slug}.${didYouMean(name, labels)} If it is only to be carried along, say --carry "${name}".`);
  if (known.size === 0) throw new Refused([`No column of this table is an input of ${slug}.`, ...faults, all].join('\n'));
  if (faults.length > 0) throw new Refused([...faults, all].join('\n'));
  return { names, known, asked: askedOf(calculator, known) };
}
