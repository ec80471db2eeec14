import type { NameSource } from '../office/ui/Sourced.tsx';
import { sourceLinks } from '../sources/citation.ts';

const isWords = (source: string): boolean => ['common practice', 'from memory'].includes(source);
/** A source of `content/sources` by its short citation, which leads to it; words as they are. */
export const nameSource: NameSource = (source) =>
  isWords(source) ? { text: source } : { text: sourceLinks.short(source), address: sourceLinks.href(source) };
