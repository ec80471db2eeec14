import * as v from 'valibot';
import fieldsData from '../../content/local/fields.json';
import { fieldsSchema } from '../../content/local/schema.ts';
import { shortCitation, sourceOf } from '../sources/citation.ts';
import { countries } from './local.ts';

export interface LocalField {
  /** Key of the calculator's input. */
  readonly key: string;
  /** In the input's own unit. */
  readonly value: number;
  readonly source: string;
  /** The row of a table that it comes from: what comes from one row is filled in together or not at all. */
  readonly row?: string;
}
/** What a picked country can fill in, by calculator. */
export interface LocalFields {
  readonly name: string;
  readonly calculators: Readonly<Record<string, readonly LocalField[]>>;
}

const fields = v.parse(fieldsSchema, fieldsData);
/** Whether any value goes into a calculator's form. */
export const hasLocalFields = (slug: string): boolean => Object.hasOwn(fields, slug);

const member = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? new Map(Object.entries(value)).get(key) : undefined;
const numbersIn = (value: unknown): readonly number[] => (Array.isArray(value) ? value.filter((each) => typeof each === 'number') : []);

/** The value at a path, and the source nearest to it. A path may end in `sum` or `most` of a list. */
function valueAt(values: unknown, path: string): { readonly value: number; readonly source: string } | undefined {
  let here: unknown = values;
  let source: unknown;
  for (const step of path.split('.')) {
    source = member(here, 'source') ?? source;
    if (step === 'sum') here = Math.round(numbersIn(here).reduce((sum, each) => sum + each, 0) * 100) / 100;
    else here = step === 'most' ? Math.max(...numbersIn(here)) : member(here, step);
  }
  return typeof here === 'number' && typeof source === 'string' ? { value: here, source } : undefined;
}

const named = (source: string): string => (source.includes(' ') ? source : shortCitation(sourceOf(source)));

export const localFields: Readonly<Record<string, LocalFields>> = Object.fromEntries(
  countries.map(({ slug, values }) => [
    slug,
    {
      name: values.name,
      calculators: Object.fromEntries(
        Object.entries(fields).map(([calculator, paths]) => [
          calculator,
          Object.entries(paths).flatMap(([key, path]) => {
            const found = valueAt(values, path);
            const row = /^.*\.rows\.\d+(?=\.)/.exec(path)?.[0];
            return found ? [{ key, value: found.value, source: named(found.source), ...(row === undefined ? {} : { row }) }] : [];
          }),
        ]),
      ),
    },
  ]),
);
