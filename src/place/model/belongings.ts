import type { Note } from './note.ts';
import type { Result } from './result.ts';
import type { Row } from './row.ts';
import type { Visit } from './visit.ts';

/** What is kept with places, by the store and the list of a file that holds it. */
export interface Belongings {
  readonly rows: readonly Row[];
  readonly visits: readonly Visit[];
  readonly results: readonly Result[];
  readonly notes: readonly Note[];
}
