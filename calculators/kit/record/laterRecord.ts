import type { UnitName } from '../../units/units.ts';
import type { RecordInput } from '../inputs.ts';
import { keptReadings } from './keptReadings.ts';
import { nothingRead } from './nothingRead.ts';
import type { Understood } from './understandRecord.ts';

/** A record that only some who open the form have: what reads it is fetched for those by `fetchReaders`, so that it is no part of the definition. */
export function laterRecord<const U extends UnitName>(spec: Omit<RecordInput<U>, 'kind' | 'read' | 'readBy'>): RecordInput<U> {
  let read: ((text: string) => Understood) | undefined;
  const waiting: Understood = {
    ...nothingRead,
    problem: `${spec.label} waits for the part of this page that reads it. Load the page again with a signal.`,
  };
  return {
    kind: 'record',
    ...spec,
    read: (text) => read?.(text) ?? waiting,
    readBy: (understand) => {
      read ??= keptReadings((text) => understand(spec, text));
    },
  };
}
