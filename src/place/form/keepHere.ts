import type { KeptAs } from '../../../calculators/ui/Actions.tsx';
import type { Keeping } from './types.ts';

/** Offers to keep what stands in a form. What that takes is fetched at the tap. */
export async function keepHere(as: KeptAs, keeping: Keeping): Promise<void> {
  if (as === 'place') await (await import('./keepPlace.tsx')).keepPlace(keeping);
  else await (await import('./keepResult.tsx')).keepResult(keeping);
}
