import { createReadStream } from 'node:fs';
import { csvParseRows } from 'd3-dsv';
import { encodingOf, isSpreadsheet } from '../ui/textOfFile.ts';
import { Refused } from './runOnce.ts';

/** Far more than a row of a table; what is longer is no table. */
const longestRow = 1_000_000;

/**
 * Where the rows that stand whole in `text` end. Fields are told apart as d3-dsv does: a quote opens one only at its beginning.
 * @param firstRow - The number of the row that `text` begins with
 * @throws Refused for a quote that is not closed, which would swallow the rows behind it
 */
function endOfRows(text: string, firstRow: number, isLast: boolean): number {
  const mark = /[,\n\r]/g;
  let end = 0;
  let row = firstRow;
  let at = 0;
  while (at < text.length) {
    if (text[at] === '"') {
      do at = text.indexOf('"', at + 1) + 1;
      while (at > 0 && text[at] === '"');
      if (at === 0 && isLast) throw new Refused(`Row ${row}: a quote opens a cell there, and none closes it. Close it or take it out.`);
      if (at === 0) return end;
      if (at < text.length && !/[,\n\r]/.test(text.charAt(at)))
        throw new Refused(
          `Row ${row}: a cell goes on behind its closing quote. Look for a quote that is not closed, or is to be part of the text: that one is written twice.`,
        );
    } else {
      mark.lastIndex = at;
      at = mark.exec(text)?.index ?? text.length;
    }
    // A return at the very end may be half of a line's end.
    if (at + 1 >= text.length && text[at] !== '\n') return isLast ? text.length : end;
    if (text[at] === '\r' && text[at + 1] === '\n') at += 1;
    if (text[at] === '\n' || text[at] === '\r') {
      end = at + 1;
      row += 1;
    }
    at += 1;
  }
  return end;
}

/** A file as text, a piece at a time. */
async function* textOf(path: string): AsyncGenerator<string> {
  let decoder: TextDecoder | undefined;
  for await (const piece of createReadStream(path, { highWaterMark: 1 << 16 })) {
    const bytes: Uint8Array = piece;
    if (!decoder && isSpreadsheet(bytes)) throw new Refused(`${path} is a spreadsheet. Save its sheet as CSV and give that.`);
    decoder ??= new TextDecoder(encodingOf(bytes));
    const text = decoder.decode(bytes, { stream: true });
    if (text.includes('\0')) throw new Refused(`${path} is no text in UTF-8. Save the table as CSV in UTF-8.`);
    yield text;
  }
  yield decoder?.decode() ?? '';
}

const separators: readonly (readonly [mark: string, name: string])[] = [
  [';', 'semicolons'],
  ['\t', 'tabs'],
  ['|', 'bars'],
];
/** @throws Refused for a header that has no comma and something else between its cells */
function refuseSeparator(text: string): void {
  const [header = ''] = text.split(/[\r\n]/, 1);
  const found = header.includes(',') ? undefined : separators.find(([mark]) => header.includes(mark));
  if (found)
    throw new Refused(
      `${found[1].replace(/^./, (letter) => letter.toUpperCase())} part the cells of this table. Save it as CSV with commas, and with points in its numbers.`,
    );
}
/** @throws Refused for a letter that could not be read, of an older encoding or lost before */
function refuseLost(text: string, firstRow: number): void {
  const at = text.indexOf('\ufffd');
  if (at < 0) return;
  const row = firstRow - 1 + csvParseRows(text.slice(0, at + 1)).length;
  const [word = ''] = /[^\s,"]{0,20}\ufffd[^\s,"]{0,20}/.exec(text.slice(Math.max(0, at - 20))) ?? [];
  throw new Refused(
    `Row ${row}, “${word}”: a letter there is not in UTF-8. Save the table as CSV in UTF-8; where the letter is lost, type it again.`,
  );
}

/**
 * The rows of a file, a piece of it at a time.
 * @throws Refused for what is no table in UTF-8 with commas, a quote that is not closed, and a row that is too long to be one
 */
export async function* csvRows(path: string): AsyncGenerator<readonly string[][]> {
  let text = '';
  let row = 1;
  for await (const piece of textOf(path)) {
    if (row === 1 && text === '') refuseSeparator(piece);
    text += piece;
    if (piece.includes('\ufffd')) refuseLost(text, row);
    const end = endOfRows(text, row, false);
    if (end > 0) {
      const whole = csvParseRows(text.slice(0, end));
      row += whole.length;
      yield whole;
    }
    text = text.slice(end);
    if (text.length > longestRow) throw new Refused(`Row ${row} is longer than ${longestRow / 1e6} MB. Look for a quote that is not closed.`);
  }
  if (text !== '') yield csvParseRows(text.slice(0, endOfRows(text, row, true)));
}
