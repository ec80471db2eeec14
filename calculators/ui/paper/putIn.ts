import type { Input, Inputs } from '../../kit/inputs.ts';
import { printInput } from '../../kit/print.ts';
import { readMonth } from '../../kit/read.ts';
import { askedNow, inputNameOf, type Layout } from '../../kit/screen.ts';
import { isShown, monthsIn, rowsIn, type Text, type Texts } from '../../kit/state.ts';
import { summaryOf, tellInput, tellRow } from '../../kit/summary.ts';
import { shortMonthName } from '../../units/months.ts';
import type { UnitSystem } from '../../units/units.ts';

// What was put in, in words for paper: nothing is left out there, for nothing opens.

/** An answer in full: every row of a table, every month. */
export function tellWhole(input: Input, text: Text | undefined, texts: Texts, system: UnitSystem): string {
  if (input.kind === 'rows')
    return rowsIn(text)
      .map((row, index) =>
        input.each === ''
          ? `${input.rowName} ${index + 1}: ${Object.entries(input.columns)
              .filter(([, cell]) => isShown(cell, { ...texts, ...row }))
              .map(([name, cell]) => `${cell.label} ${tellInput(cell, row[name], texts, system)}`)
              .join(', ')}`
          : tellRow(input, row, texts, system),
      )
      .join('; ');
  if (input.kind === 'months') {
    const cell = { ...input, kind: 'number', default: 0 } as const;
    return monthsIn(text)
      .map((each, index) => {
        const reading = readMonth(input, index, each, system);
        return `${shortMonthName(index)} ${'value' in reading ? printInput(reading.value, cell, system) : each}`;
      })
      .join(', ');
  }
  return tellInput(input, text, texts, system);
}

export interface Unlike {
  readonly key: string;
  readonly label: string;
  readonly mine: string;
  readonly theirs: string;
}
/** What two sides answer differently, cell by cell of their tables. */
export function unlikeIn(inputs: Inputs, mine: Texts, theirs: Texts, system: UnitSystem): readonly Unlike[] {
  return Object.entries(inputs).flatMap(([key, input]): Unlike[] => {
    const shows = [isShown(input, mine), isShown(input, theirs)];
    if (!shows.includes(true)) return [];
    const [one, two] = [mine[key], theirs[key]];
    const [ones, twos] = [rowsIn(one), rowsIn(two)];
    if (input.kind === 'rows' && ones.length === twos.length && !shows.includes(false))
      return ones.flatMap((row, index) =>
        Object.entries(input.columns).flatMap(([name, cell]): Unlike[] => {
          const [here, there] = [row[name] ?? '', twos[index]?.[name] ?? ''];
          if (here === there) return [];
          const label = `${input.rowName} ${index + 1}: ${cell.label}`;
          return [{ key, label, mine: tellInput(cell, here, mine, system), theirs: tellInput(cell, there, theirs, system) }];
        }),
      );
    const told = [shows[0] ? tellWhole(input, one, mine, system) : '–', shows[1] ? tellWhole(input, two, theirs, system) : '–'] as const;
    return told[0] === told[1] ? [] : [{ key, label: input.label, mine: told[0], theirs: told[1] }];
  });
}

/** What it is stands in the working: nobody writes it down in the field. */
const isSetting = (input: Input): boolean => 'isSetting' in input && input.isSetting === true;
/** Questions that apply, in the order of the form: those that stand open, then group by group. */
export function groupsShown(
  { inputs, layout }: { readonly inputs: Inputs; readonly layout: Layout },
  texts: Texts,
): readonly { readonly title: string; readonly keys: readonly string[]; readonly summary?: string }[] {
  const isOn = (key: string): boolean => {
    const input = inputs[key];
    return input !== undefined && isShown(input, texts) && !isSetting(input);
  };
  const asked = [...new Set(askedNow(inputs, layout, texts).map(inputNameOf))];
  return [
    { title: '', keys: asked },
    ...layout.groups.map(({ inputs: keys, ...group }) => ({ ...group, keys: keys.filter((key) => isOn(key) && !asked.includes(key)) })),
  ].filter(({ keys }) => keys.length > 0);
}

/** The answers of a form as sentences, a group each, without those in `but`. What a group's own line leaves out follows it. */
export function putInLines(
  calculator: { readonly inputs: Inputs; readonly layout: Layout },
  texts: Texts,
  but: ReadonlySet<string>,
  system: UnitSystem,
): readonly { readonly title: string; readonly text: string }[] {
  const { inputs } = calculator;
  const labelled = (key: string): string[] => {
    const input = inputs[key];
    return input ? [`${input.label.replace(/[?:]$/, '')}: ${tellWhole(input, texts[key], texts, system)}`] : [];
  };
  return groupsShown(calculator, texts).flatMap(({ title, keys, summary }) => {
    const left = keys.filter((key) => !but.has(key));
    if (left.length === 0) return [];
    const named = new Set([...(summary ?? '').matchAll(/\{#?(\w+)\}/g)].map(([, name = '']) => name));
    // A line of a group tells all of a table only while it is short.
    const isLong = keys.some((key) => inputs[key]?.kind === 'months' || rowsIn(texts[key]).length > 4);
    const usable = summary !== undefined && !isLong && [...named].every((name) => !but.has(name));
    const parts = usable
      ? [summaryOf(inputs, { title, inputs: keys, summary }, texts, system).text, ...left.filter((key) => !named.has(key)).flatMap(labelled)]
      : left.flatMap(labelled);
    return [{ title, text: parts.filter((part) => part !== '').join('; ') }];
  });
}
