import { deepest, mostLetters, type Office } from './office.ts';
import { readJson } from './readJson.ts';
import { checkOffice, sentenceOf } from './sayWrong.ts';

export type OfficeRead =
  /** The file that the site ships with: no office's. */
  | { readonly is: 'none' }
  | { readonly is: 'read'; readonly office: Office }
  /** What is wrong, in sentences. All of the file is set aside. */
  | { readonly is: 'wrong'; readonly say: readonly string[] };

export const officeFileName = 'office.css';
const headLine = ':root { --holdwater-office:';
const headShape = /^\uFEFF?\s*:root\s*\{\s*--holdwater-office\s*:/;
/** Of a file with much wrong in it, the first few are enough to begin with. */
const mostSentences = 5;

/** A style sheet with one property that styles nothing: browsers hand its text on and never run it. */
export const writeOffice = (office: Office): string => `${headLine}\n${JSON.stringify(office, null, 2)}\n}\n`;

const wrong = (...say: readonly string[]): OfficeRead => ({ is: 'wrong', say });
const tooLarge = `It has more than ${mostLetters / 1024} kB, and no office file is that large.`;

function readValues(text: string, firstLine: number): OfficeRead {
  const read = readJson(text, firstLine, deepest);
  if (read.is === 'wrong') return wrong(`Line ${read.line}, letter ${read.letter}: ${read.say}.`);
  if (typeof read.value === 'object' && read.value !== null && Object.keys(read.value).length === 0) return { is: 'none' };
  const checked = checkOffice(read.value);
  if ('office' in checked) return { is: 'read', office: checked.office };
  const said = checked.wrongs.map((each) => sentenceOf(each, read.lineOf(each.at)));
  const more = said.length - mostSentences;
  return wrong(...said.slice(0, mostSentences), ...(more > 0 ? [`${more} more ${more === 1 ? 'thing is' : 'things are'} wrong below.`] : []));
}

/** Reads an office file as text: that somebody opens, or that a build is given. */
export function readOfficeFile(text: string): OfficeRead {
  if (text.length > mostLetters) return wrong(tooLarge);
  const [head] = headShape.exec(text) ?? [];
  if (head === undefined) return wrong(`It is no office file: it must begin with “${headLine}”.`);
  const body = text.slice(head.length);
  const end = /;?\s*\}\s*$/.exec(body);
  if (!end) return wrong('Its last line is missing: a } by itself.');
  const firstLine = head.split('\n').length;
  const values = body.slice(0, end.index);
  return readValues(values, firstLine);
}
/** Reads what a browser found in the property. Empty where there is no such property: the file is missing, or is no style sheet. */
export function readOfficeProperty(text: string): OfficeRead {
  if (text.length > mostLetters) return wrong(tooLarge);
  if (text.trim() === '') return wrong('It is missing, or it is no office file. Open it on the page “Make it yours”: there each line is looked at.');
  // The values begin on the file's second line, under its head.
  return readValues(text.trimStart(), 2);
}
