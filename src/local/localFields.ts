import * as v from 'valibot';
import fieldsData from '../../content/local/fields.json';
import { fieldsSchema } from '../../content/local/schema.ts';
import { fieldsOf, type LocalFields } from './fieldValues.ts';
import { countries } from './local.ts';
import { nameSource } from './nameSource.ts';

const fields = v.parse(fieldsSchema, fieldsData);
/** Whether any value goes into a calculator's form. */
export const hasLocalFields = (slug: string): boolean => Object.hasOwn(fields, slug);

/** What each shipped kind of country can fill in. */
export const localFields: Readonly<Record<string, LocalFields>> = Object.fromEntries(
  countries.map(({ slug, values }) => [slug, fieldsOf(values.name, values, fields, (source) => nameSource(source).text)]),
);
