import { fits, type Inputs, type ValuesOf } from './inputs.ts';
import type { Computed, PlainValues, Rows, Scalar } from './quantities.ts';
import type { Values } from './state.ts';
import type { PlainStep, PlainWay, Step, Way } from './steps.ts';

// A definition and a run of it as plain data: the types are checked here once and then erased.

const isScalar = (value: unknown): value is Scalar => (typeof value === 'number' && Number.isFinite(value)) || typeof value === 'string';
const isRows = (value: unknown): value is Rows =>
  Array.isArray(value) && value.every((row: unknown) => typeof row === 'object' && row !== null && Object.values(row).every(isScalar));
export const isComputed = (value: object): value is Computed => Object.values(value).every((each: unknown) => isScalar(each) || isRows(each));
export const areValuesOf = <I extends Inputs>(inputs: I, values: Values): values is Values & ValuesOf<I> =>
  Object.entries(inputs).every(([key, input]) => fits(input, values[key]));
/** Inputs as they stand among the results: yes and no as words, rows as rows. */
const plainCell = (cell: unknown): Scalar => (typeof cell === 'boolean' ? (cell ? 'yes' : 'no') : typeof cell === 'number' ? cell : String(cell));
const plainRow = (row: number | object): Readonly<Record<string, Scalar>> =>
  Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, plainCell(cell)]));
export const plainInputs = (inputs: Inputs, values: Values): PlainValues =>
  Object.fromEntries(
    Object.entries(values).flatMap(([key, value]): (readonly [string, Scalar | Rows | readonly number[]])[] => {
      // A record is no number to name: thousands of lines that nobody draws.
      if (inputs[key]?.kind === 'record') return [];
      if (typeof value !== 'object') return [[key, plainCell(value)]];
      const list: readonly (number | object)[] = value;
      return [[key, list.length > 0 && list.every((each) => typeof each === 'number') ? list : list.map(plainRow)]];
    }),
  );
const plainWays = (ways: string | readonly PlainWay[]): readonly PlainWay[] =>
  typeof ways === 'string' ? [{ formula: ways }] : ways.map(({ formula, because }) => ({ formula, ...(because === undefined ? {} : { because }) }));
export const areWays = <V>(ways: unknown): ways is readonly Way<V>[] => Array.isArray(ways);
export const usedWay = <V>(ways: readonly (Way<V> | Omit<Way<V>, 'when'>)[], values: V): number =>
  ways.findIndex((way) => !('when' in way) || way.when === undefined || way.when(values));

export function plainStep<V, R>(step: Step<V, R>): PlainStep {
  const common = { says: step.says, ...(step.source === undefined ? {} : { source: step.source }) };
  switch (step.kind) {
    case 'formula':
      return { ...common, kind: 'formula', shows: step.shows, ways: plainWays(step.ways) };
    case 'lookup':
      return { ...common, kind: 'lookup', shows: step.shows };
    case 'check':
      return { ...common, kind: 'check', left: step.left, right: step.right, because: step.because };
    case 'rows': {
      const formulas: Record<string, readonly PlainWay[]> = {};
      for (const [column, ways] of Object.entries<string | readonly PlainWay[] | undefined>(step.formulas))
        if (ways !== undefined) formulas[column] = plainWays(ways);
      const sums: Record<string, string> = {};
      for (const [name, column] of Object.entries<string | undefined>(step.sums ?? {})) if (column !== undefined) sums[name] = column;
      return { ...common, kind: 'rows', of: String(step.of), formulas, sums };
    }
  }
}
