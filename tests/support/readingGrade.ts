import readability from 'text-readability';
import { blocksOf, spoken } from './guideBlocks.ts';

/**
 * Hyphens part words here: the library would read `sorghum-sudangrass` as one word of five syllables. And digits have no syllables for it, so
 * that a text full of figures would pass for easy: a figure is read as a number word of two.
 */
const counted = (text: string): string => text.replaceAll(/[-–—/]/g, ' ').replaceAll(/\d[\d.,]*(?<![.,])/g, 'twenty');

/**
 * Grade by the formula of Kincaid and others (1975): 0.39 words a sentence + 11.8 syllables a word - 15.59.
 * The library counts; its own grade is not used, for it rounds both means to a tenth first, which is worth half a grade.
 */
export function gradeOf(text: string): number {
  const plain = counted(text);
  const words = readability.lexiconCount(plain);
  return 0.39 * (words / readability.sentenceCount(plain)) + 11.8 * (readability.syllableCount(plain) / words) - 15.59;
}

const closed = (text: string): string => (/[.?!]["”’)]*$/.test(text) ? text : `${text.replace(/[:;,]$/, '')}.`);

/** The running text of a guide, without headings and tables. */
export const proseOf = (body: string): string =>
  blocksOf(body)
    .filter(({ kind }) => kind === 'paragraph' || kind === 'item')
    .map(({ text }) => spoken(text))
    .filter((text) => /[a-z]{2}/.test(text))
    .map(closed)
    .join(' ');

/** The sentences that lift the grade most, hardest first. */
export function hardestSentences(prose: string, count: number): readonly string[] {
  const sentences = prose.split(/(?<=[.?!]["”’)]*) (?=["“(]?[A-Z])/);
  return sentences
    .filter((sentence) => readability.lexiconCount(counted(sentence)) >= 6)
    .map((sentence) => ({ sentence, grade: gradeOf(sentence) }))
    .sort((one, other) => other.grade - one.grade)
    .slice(0, count)
    .map(({ sentence, grade }) => `${grade.toFixed(1)}: ${sentence}`);
}
