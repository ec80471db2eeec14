import type { UnitName } from '../../units/units.ts';
import type { RecordInput } from '../inputs.ts';
import { type Understood, understandRecord } from './understandRecord.ts';

// A form is read again at each key. A record of many years takes a hundred times as long as all the rest, and hardly ever changes.
const keptReadings = 4;

/** A record among the inputs. What is understood of a text is worked out once while it stays. */
export function record<const U extends UnitName>(spec: Omit<RecordInput<U>, 'kind' | 'read'>): RecordInput<U> {
  const kept = new Map<string, Understood>();
  return {
    kind: 'record',
    ...spec,
    read: (text) => {
      const found = kept.get(text) ?? understandRecord(spec, text);
      kept.delete(text);
      kept.set(text, found);
      for (const [oldest] of kept) {
        if (kept.size <= keptReadings) break;
        kept.delete(oldest);
      }
      return found;
    },
  };
}
