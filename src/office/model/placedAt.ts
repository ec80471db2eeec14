import type { OfficeField } from './field.ts';
import { type OfficeSection, officeSections } from './fields.ts';

export interface Placed {
  readonly section: OfficeSection;
  readonly field: OfficeField | undefined;
  /** Of several, which one, counted from 0. */
  readonly row: number | undefined;
  /** Of twelve, which month. */
  readonly month: number | undefined;
}
/** The section and the field that a path of the file belongs to. */
export function placedAt(path: string): Placed | undefined {
  const fits = officeSections.filter(({ at }) => path === at || path.startsWith(`${at}.`));
  const below = (section: OfficeSection): Placed => {
    const rest = path.slice(section.at.length + 1);
    const [, index, inRow = ''] = section.rows ? (/^(\d+)(?:\.(.*))?$/.exec(rest) ?? []) : [];
    const at = section.rows ? inRow : rest;
    const found = section.fields.find((each) => each.at === at || (each.kind === 'months' && at.startsWith(`${each.at}.`)));
    const month = found?.kind === 'months' && at !== found.at ? Number(at.slice(found.at.length + 1)) : undefined;
    return { section, field: found, row: index === undefined ? undefined : Number(index), month };
  };
  const placed = fits.map(below);
  return (
    placed.find(({ field: found }) => found !== undefined) ?? placed.toSorted((one, other) => other.section.at.length - one.section.at.length)[0]
  );
}
