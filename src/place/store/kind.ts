import type { Read } from '../model/readRecord.ts';
import type { StoreName } from './backend.ts';
import type { Kept } from './records.ts';

/** A kind of record: where it lies, and how it is read whatever edition wrote it. */
export interface Kind<T extends Kept> {
  readonly store: StoreName;
  readonly read: (raw: unknown) => Read<T>;
}
