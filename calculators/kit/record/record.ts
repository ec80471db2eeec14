import type { UnitName } from '../../units/units.ts';
import type { RecordInput } from '../inputs.ts';
import { keptReadings } from './keptReadings.ts';
import { understandRecord } from './understandRecord.ts';

/** A record among the inputs. */
export const record = <const U extends UnitName>(spec: Omit<RecordInput<U>, 'kind' | 'read' | 'readBy'>): RecordInput<U> => ({
  kind: 'record',
  ...spec,
  read: keptReadings((text) => understandRecord(spec, text)),
});
