import { printIn } from '../units/printQuantity.ts';
import { convert, type UnitSystem, unitIn } from '../units/units.ts';
import type { Cell, Inputs, NumberInput } from './inputs.ts';
import { readCell } from './read.ts';
import { isShown, type Problem, rowsIn, type Texts, textIn } from './state.ts';
import { usual as ranges } from './usual.ts';

// Apart from reading, since a page asks only once somebody has stopped typing.

/** A question about a number that may be so and seldom is; nothing for one that is as usual. A nought is meant. */
export function doubtAbout({ label, unit, usual }: NumberInput, value: number, system: UnitSystem): string | undefined {
  if (usual === undefined || value === 0) return undefined;
  const [below, above] = ranges[usual];
  if (value >= below && value <= above) return undefined;
  const shown = unitIn(system, unit);
  const told = (each: number): string => {
    const there = Number(convert(each, unit, shown).toPrecision(4));
    return printIn(there, shown, there % 1 === 0 ? 0 : 2);
  };
  const isBelow = value < below;
  /** Converted to two digits, inward, so that the number is past what is told. */
  const limit = (each: number): string => {
    if (shown === unit) return told(each);
    const there = convert(each, unit, shown);
    const digits = 1 - Math.floor(Math.log10(Math.abs(there) || 1));
    const round = isBelow ? Math.ceil : Math.floor;
    return printIn(round(Number((there * 10 ** digits).toPrecision(9))) / 10 ** digits, shown, Math.max(digits, 0));
  };
  return `Is ${told(value)} right? ${label}: seldom ${isBelow ? `below ${limit(below)}` : `above ${limit(above)}`}. Look at the decimal point and the unit.`;
}

/** Every number of a form that is taken and looks wrong. */
export function doubtsIn(inputs: Inputs, texts: Texts, system: UnitSystem = 'us'): readonly Problem[] {
  const about = (cell: Cell, text: string, beside: Readonly<Record<string, unknown>>, at: string): readonly Problem[] => {
    if (cell.kind !== 'number' || !isShown(cell, beside)) return [];
    const reading = readCell(cell, text, system);
    const doubt = 'value' in reading && typeof reading.value === 'number' ? doubtAbout(cell, reading.value, system) : undefined;
    return doubt === undefined ? [] : [{ at, say: doubt }];
  };
  return Object.entries(inputs).flatMap(([key, input]) => {
    if (!isShown(input, texts)) return [];
    if (input.kind !== 'rows') return input.kind === 'number' ? about(input, textIn(texts[key]), texts, key) : [];
    return rowsIn(texts[key]).flatMap((row, index) =>
      Object.entries(input.columns).flatMap(([name, cell]) => about(cell, row[name] ?? '', { ...texts, ...row }, `${key}.${index}.${name}`)),
    );
  });
}
