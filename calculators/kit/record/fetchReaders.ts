import { type Inputs, isRecord, type RecordInput } from '../inputs.ts';
import { isShown } from '../state.ts';

/** Records whose reader comes later. */
const laterOf = (inputs: Inputs): readonly RecordInput[] =>
  Object.values(inputs)
    .filter(isRecord)
    .filter(({ readBy }) => readBy !== undefined);
/** Do these texts use a record whose reader comes later? */
export const wantsReaders = (inputs: Inputs, texts: Readonly<Record<string, unknown>>): boolean =>
  laterOf(inputs).some((input) => isShown(input, texts));

/** Fetches what reads the records of a form, where it did not come along. */
export async function fetchReaders(inputs: Inputs): Promise<void> {
  const later = laterOf(inputs);
  if (later.length === 0) return;
  const { understandRecord } = await import('./understandRecord.ts');
  for (const input of later) input.readBy?.(understandRecord);
}
