import type { SomeValues } from './localParts.ts';

export type FieldValue = string | number | readonly number[];
export interface LocalField {
  /** Key of the calculator's input; of a column, `table.column`. */
  readonly key: string;
  /** Numbers in the input's own unit, choices as their words, days of every year as month and day. */
  readonly value: FieldValue;
  readonly source: string;
  /** What it comes from a row of, or a group: that is filled in together or not at all. */
  readonly row?: string;
}
/** What a kind of country can fill in, by calculator. */
export interface LocalFields {
  readonly name: string;
  readonly calculators: Readonly<Record<string, readonly LocalField[]>>;
}
/** Keys of a calculator's inputs, each with the path of a value. */
type FieldPaths = Readonly<Record<string, Readonly<Record<string, string>>>>;

const member = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? new Map(Object.entries(value)).get(key) : undefined;
const numbersIn = (value: unknown): readonly number[] => (Array.isArray(value) ? value.filter((each) => typeof each === 'number') : []);

/** The value at a path, and the source nearest to it. A path may end in `sum` or `most` of a list. */
function valueAt(values: unknown, path: string): { readonly value: FieldValue; readonly source: string } | undefined {
  let here: unknown = values;
  let source: unknown;
  for (const step of path.split('.')) {
    source = member(here, 'source') ?? source;
    if (step === 'sum') here = Math.round(numbersIn(here).reduce((sum, each) => sum + each, 0) * 100) / 100;
    else here = step === 'most' ? Math.max(...numbersIn(here)) : member(here, step);
  }
  if (typeof source !== 'string') return undefined;
  if (typeof here === 'number' || typeof here === 'string') return { value: here, source };
  return Array.isArray(here) && here.length === 12 && numbersIn(here).length === 12 ? { value: numbersIn(here), source } : undefined;
}

/** Twelve months as what they are: nobody may take medians for normals, nor the other way round. */
function withRainTold(values: SomeValues): unknown {
  const { rainMonths, ...others } = values;
  if (!rainMonths) return others;
  const { are, inches, source } = rainMonths;
  return { ...others, [are === 'medians' ? 'rainMedians' : 'rainNormals']: { inches, source } };
}

/** What a country's values put into forms. `named` says how a source is told. */
export function fieldsOf(name: string, values: SomeValues, paths: FieldPaths, named: (source: string) => string): LocalFields {
  const told = withRainTold(values);
  const fieldAt = ([key, path]: readonly [string, string]): readonly LocalField[] => {
    const found = valueAt(told, path);
    const row = /^(?:.*\.rows\.\d+|growthMonths)(?=\.)/.exec(path)?.[0];
    return found ? [{ key, value: found.value, source: named(found.source), ...(row === undefined ? {} : { row }) }] : [];
  };
  return {
    name,
    calculators: Object.fromEntries(Object.entries(paths).map(([calculator, each]) => [calculator, Object.entries(each).flatMap(fieldAt)])),
  };
}
