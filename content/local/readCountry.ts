import * as v from 'valibot';
import { type CountryValues, countrySchema } from './schema.ts';

/** Every source that is named anywhere in the data. */
export const sourcesNamedIn = (data: unknown): readonly string[] => {
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, value]) => {
    if (key === 'source' && typeof value === 'string') return [value];
    return key === 'also' && Array.isArray(value) ? value.filter((each) => typeof each === 'string') : sourcesNamedIn(value);
  });
};

/**
 * The values of one file, checked.
 * @throws Error that names the file, the place in it and what is wrong there, so that whoever edited the file can mend it
 */
export function readCountry(file: string, data: unknown, isSource: (key: string) => boolean): CountryValues {
  const read = v.safeParse(countrySchema, data);
  if (!read.success) {
    const problems = read.issues.map((issue) => `  ${v.getDotPath(issue) ?? 'the file'}: ${issue.message}`);
    throw new Error(`content/local/${file} cannot be used:\n${problems.join('\n')}`);
  }
  const unknown = sourcesNamedIn(data).filter((key) => !['common practice', 'from memory'].includes(key) && !isSource(key));
  if (unknown.length > 0)
    throw new Error(
      `content/local/${file} names sources that are not in content/sources: ${unknown.join(', ')}. Add them, or write "common practice" or "from memory".`,
    );
  return read.output;
}
