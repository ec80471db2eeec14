import definition from '../../calculators/catalog/feed-hazards/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';

/** The query of a laboratory’s slip with that much nitrate nitrogen, dry. */
export const nitrogen = (ppm: number, rest = '') => `forage-nitrate=no3-n&nitrate-ppm=${ppm}&basis=dry${rest}`;
/** What the answer leads with. */
export const readingOf = (query: string) => resultAt(runQuery(definition, query), 'reading');
/** All cautions that stand there. */
export const saysIn = (query: string) =>
  runQuery(definition, query)
    .cautions.map(({ say }) => say)
    .join('\n');
