import type { ReferenceTable } from '../../content/tables/table.ts';
import { referenceTables } from '../../content/tables/tables.ts';
import { type Guide, guides, tablesIn } from './guides.ts';

/** The tables that a calculator rests on. */
export const tablesOfCalculator = (slug: string): readonly ReferenceTable[] =>
  referenceTables.filter(({ calculators }) => calculators.includes(slug));

/** The guides that show a table or a figure out of it. */
export const guidesShowing = (slug: string): readonly Guide[] => guides.filter((guide) => tablesIn(guide).includes(slug));
