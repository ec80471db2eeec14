import type { Calculator, Outcome } from '../kit/define.ts';
import { isoDay } from '../units/printQuantity.ts';

/** A column of what comes out. */
export interface ResultColumn {
  readonly head: string;
  readonly cellOf: (outcome: Outcome) => string;
}

/**
 * Results that fit in one cell, each headed by its name and, for a number, its unit; behind a result that has a range its low and its high end,
 * which are told where the page tells the range.
 */
export function resultColumns({ quantities, results }: Calculator): readonly ResultColumn[] {
  const own = new Set(results.map(({ of }) => of));
  const isRangeTold = (end: string) => {
    const ranged = results.flatMap(({ of, range }) => (range && [range.low, range.high].includes(end) ? [of] : []));
    return ({ shown, ranges }: Outcome): boolean => ranged.some((of) => shown.includes(of) && ranges[of] !== undefined);
  };
  const columns = new Map<string, ResultColumn>();
  const add = (name: string, isTold: (outcome: Outcome) => boolean): void => {
    const quantity = quantities[name];
    if (quantity === undefined || quantity.kind === 'rows' || columns.has(name)) return;
    columns.set(name, {
      head: quantity.kind === 'number' ? `${name} (${quantity.unit})` : name,
      cellOf: (outcome) => {
        const value = outcome.values[name];
        if (typeof value === 'object' || value === undefined || !isTold(outcome)) return '';
        if (quantity.kind === 'word') return quantity.words[String(value)] ?? String(value);
        return quantity.kind === 'day' ? isoDay(Number(value)) : String(value);
      },
    });
  };
  for (const { of, range } of results) {
    add(of, ({ shown }) => shown.includes(of));
    for (const end of range ? [range.low, range.high] : []) if (!own.has(end)) add(end, isRangeTold(end));
  }
  return [...columns.values()];
}
