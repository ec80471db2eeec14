import { readCountry } from '../../content/local/readCountry.ts';
import type { CountryValues } from '../../content/local/schema.ts';
import { sources } from '../sources/citation.ts';

const files = import.meta.glob<{ default: unknown }>('../../content/local/*.json', { eager: true });
const nameOf = (path: string): string => path.replace(/^.*\//, '');

export interface Country {
  /** Name of its file, without the ending. */
  readonly slug: string;
  readonly values: CountryValues;
}

/** Every kind of country in `content/local`, wettest and coolest first, as their guides tell of them; one that an office adds comes last. */
const order = ['humid-cool-season', 'fescue-belt', 'southern-warm-season', 'plains-range', 'mediterranean-annual-range', 'mountain-and-irrigated'];
const placeOf = (slug: string): number => (order.includes(slug) ? order.indexOf(slug) : order.length);

export const countries: readonly Country[] = Object.entries(files)
  .filter(([path]) => nameOf(path) !== 'fields.json')
  .map(([path, { default: data }]) => ({
    slug: nameOf(path).replace('.json', ''),
    values: readCountry(nameOf(path), data, (key) => sources.some(({ id }) => id === key)),
  }))
  .sort((one, other) => placeOf(one.slug) - placeOf(other.slug) || one.slug.localeCompare(other.slug));
if (countries.length === 0) throw new Error('content/local has no country: one file with the values of yours is the least');
