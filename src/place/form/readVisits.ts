import type { Result } from '../model/result.ts';
import type { Visit } from '../model/visit.ts';
import { isAt, isOf, readFrom } from './readPlaces.ts';

/** The visits of a place, and of their results those that are wanted: a place may have thousands. */
export const readVisits = async (placeId: string): Promise<readonly Visit[]> => (await readFrom('visits')).filter(isOf<Visit>(isAt(placeId)));
export const readResults = async (ids: readonly string[]): Promise<readonly Result[]> =>
  (await readFrom('results', ids)).filter(isOf<Result>((raw) => 'link' in raw));
