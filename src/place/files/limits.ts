import { longestWords } from '../model/parts.ts';

/** What a file may weigh, letters; a place with all that it can hold is far under it. */
export const mostLetters = 25 * 1024 * 1024;
const deepest = 12;
const longestList = 50_000;

/** Why a file is not even looked at, in one sentence; nothing where it may be. Looks at no content. */
export function faultOfSize(length: number): string | undefined {
  return length > mostLetters ? 'This file is larger than any place can be. It was not opened.' : undefined;
}
/** The same of what it holds: depth, lists and texts. Goes no deeper than is allowed. */
export function faultOfContent(value: unknown, depth = 1): string | undefined {
  if (typeof value === 'string')
    return value.length > longestWords ? 'A text in this file is longer than any that a place can hold. It was not opened.' : undefined;
  if (typeof value !== 'object' || value === null) return undefined;
  if (depth > deepest) return 'This file is not built as files of a place are. It was not opened.';
  const parts: readonly (readonly [string, unknown])[] = Object.entries(value);
  if (parts.length > longestList) return 'A list in this file is longer than any that a place can hold. It was not opened.';
  for (const [key, each] of parts) {
    const fault = faultOfContent(key, depth) ?? faultOfContent(each, depth + 1);
    if (fault !== undefined) return fault;
  }
  return undefined;
}
