import type { RecordInput, RecordLine } from '../inputs.ts';
import type { Reading } from '../read.ts';
import { type Understood, understandRecord } from './understandRecord.ts';

// A form is read again at each key. A record of many years takes a hundred times as long as all the rest, and hardly ever changes.
const keptReadings = 4;
const kept = new Map<RecordInput, Map<string, Understood>>();

/** What was understood of a text, worked out once while it stays. */
export function understoodOf(input: RecordInput, text: string): Understood {
  const readings = kept.get(input) ?? new Map<string, Understood>();
  kept.set(input, readings);
  const found = readings.get(text) ?? understandRecord(input, text);
  readings.delete(text);
  readings.set(text, found);
  for (const [oldest] of readings) {
    if (readings.size <= keptReadings) break;
    readings.delete(oldest);
  }
  return found;
}

/** A pasted record or a file. What cannot be read is named; nothing is dropped in silence, nothing becomes a dry day unasked. */
export function readRecord(input: RecordInput, text: string): Reading<readonly RecordLine[]> {
  const { lines, problem } = understoodOf(input, text);
  return problem === undefined ? { value: lines } : { problem };
}

/** What stands before any result from this record: whose it is, and whether somebody has looked it over. */
export function remarkOn(input: RecordInput, text: string): string | undefined {
  if (text === input.default) return input.standIn;
  return understoodOf(input, text).isConfirmed
    ? undefined
    : `${input.label}: look over what was understood of it, under the field, and say that it is right. Until then do not rely on the result.`;
}
