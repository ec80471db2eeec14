import { referenceTables } from '../../content/tables/tables.ts';
import { calculators } from '../catalog/catalog.ts';
import { allChecks, bySubject, countOf, isFromOutside } from '../catalog/checks.ts';
import { guides, sourceKeysOf } from '../guides/guides.ts';
import { href } from '../site/href.ts';

interface Use {
  readonly address: string;
  readonly name: string;
}
const places = [
  ...calculators.map(({ slug, title, sources }) => ({ address: href(`/calculators/${slug}/`), name: title, keys: sources })),
  ...guides.map((guide) => ({ address: href(`/guides/${guide.id}/`), name: guide.data.title, keys: sourceKeysOf(guide) })),
  ...referenceTables.map(({ slug, title, rows }) => ({ address: href(`/tables/${slug}/`), name: title, keys: rows.map(({ source }) => source) })),
];
const outside = allChecks().filter((each) => each.isUsed && isFromOutside(each));

/** What rests on a source: calculators, guides and tables, then what was checked against it. */
export const usesOf = (key: string): readonly Use[] => [
  ...places.filter(({ keys }) => keys.includes(key)),
  ...bySubject(outside.filter(({ check }) => check.source === key)).map(([{ slug, title }, list]) => ({
    address: href(`/checks/${slug}/#${key}`),
    name: `${title}: ${countOf(list)} checked`,
  })),
];
