import type { Calculator } from '../../calculators/kit/define.ts';
import { isRecord, movesWithToday, usesTools } from '../../calculators/kit/inputs.ts';
import { askedFirst, isTable } from '../../calculators/kit/screen.ts';

/**
 * Sources of the scripts that a calculator's own page begins with, as `src/scripts/calculator.tsx` and `formExtras.ts` fetch them one after the other: named in
 * the page they come at once. What only a link needs, and what a live form fetches later, is not among them.
 */
export function fetchedAhead({ slug, inputs, layout, runs }: Calculator): readonly string[] {
  const first = askedFirst(inputs, layout);
  const record = Object.values(first).some(isRecord) ? 'RecordField' : Object.values(inputs).some(isRecord) ? 'LaterRecord' : undefined;
  return [
    'src/scripts/calculator.tsx',
    // What the definition of one that runs long imports would, named, weigh more than its page may: 56 bytes over 14 kB.
    ...(runs === 'long' ? ['src/scripts/longRuns.ts'] : [`calculators/catalog/${slug}/definition.ts`]),
    ...(movesWithToday(inputs) ? ['src/scripts/clock.ts', 'src/scripts/today.ts'] : []),
    ...(Object.values(first).some(isTable) ? ['calculators/ui/tables.ts'] : []),
    ...(usesTools(first) ? ['calculators/ui/tools/toolSet.ts'] : []),
    ...(record === undefined ? [] : [`calculators/ui/${record}.tsx`]),
  ];
}
