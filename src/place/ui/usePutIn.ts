import { useEffect, useState } from 'preact/hooks';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Result } from '../model/result.ts';
import { definitionIn } from './definitions.ts';

type PutIn = ReadonlyMap<string, readonly string[]>;
async function putInto(result: Result, system: UnitSystem): Promise<readonly [string, readonly string[]]> {
  try {
    const [{ putInOf }, calculator] = await Promise.all([import('./putInOf.ts'), definitionIn(result.slug)]);
    return [result.id, calculator === undefined ? [] : putInOf(calculator, result, system)];
  } catch (error) {
    // A form that does not come, or does not read its old link, leaves its figures out; the note says where they stand.
    console.info(error);
    return [result.id, []];
  }
}
/** What was put into results, a line each, where no link opens them: their forms are fetched for it. Nothing until they are here. */
export function usePutIn(results: readonly Result[] | undefined, system: UnitSystem): PutIn | undefined {
  const [putIn, setPutIn] = useState<PutIn | undefined>(undefined);
  const key = results?.map(({ id, rev }) => `${id} ${rev}`).join();
  useEffect(() => {
    if (results !== undefined && results.length > 0)
      void Promise.all(results.map((each) => putInto(each, system))).then((told) => setPutIn(new Map(told)));
  }, [key, system]);
  return putIn;
}
