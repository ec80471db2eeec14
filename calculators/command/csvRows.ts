import { createReadStream } from 'node:fs';
import { csvParseRows } from 'd3-dsv';
import { Refused } from './runOnce.ts';

/** A quote that nobody closes would otherwise swallow the rest of the file. */
const longestRow = 1_000_000;

/** Where the rows that stand whole in `text` end. Fields are told apart as d3-dsv does: a quote opens one only at its beginning. */
function endOfRows(text: string, isLast: boolean): number {
  if (isLast) return text.length;
  const mark = /[,\n\r]/g;
  let end = 0;
  let at = 0;
  while (at < text.length) {
    if (text[at] === '"') {
      do at = text.indexOf('"', at + 1) + 1;
      while (at > 0 && text[at] === '"');
      if (at === 0) return end;
    } else {
      mark.lastIndex = at;
      at = mark.exec(text)?.index ?? text.length;
    }
    // A return at the very end may be half of a line's end.
    if (at + 1 >= text.length && text[at] !== '\n') return end;
    if (text[at] === '\r' && text[at + 1] === '\n') at += 1;
    if (text[at] === '\n' || text[at] === '\r') end = at + 1;
    at += 1;
  }
  return end;
}

/**
 * The rows of a file, a piece of it at a time.
 * @throws Refused for a row that is too long to be one
 */
export async function* csvRows(path: string): AsyncGenerator<readonly string[][]> {
  let text = '';
  let isFirst = true;
  let rows = 0;
  for await (const piece of createReadStream(path, { encoding: 'utf8', highWaterMark: 1 << 16 })) {
    text += isFirst ? String(piece).replace(/^\ufeff/, '') : String(piece);
    isFirst = false;
    const end = endOfRows(text, false);
    if (end > 0) {
      const whole = csvParseRows(text.slice(0, end));
      rows += whole.length;
      yield whole;
    }
    text = text.slice(end);
    if (text.length > longestRow) throw new Refused(`Row ${rows + 1} is longer than ${longestRow / 1e6} MB. Look for a quote that is not closed.`);
  }
  if (text !== '') yield csvParseRows(text);
}
