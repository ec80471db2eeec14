import { printNumber } from '../../units/printQuantity.ts';

/** A hundred years of days with several columns take under 3 MB. */
export const largestText = 10_000_000;
/** Wide enough for a weather station's own file with a column for each thing that it measures. */
const mostCells = 300;
const longestLine = 10_000;
/** Remarks may stand beside the rain. */
const longestCell = 1000;
/** No day and no amount is written longer. What is longer is not looked at further: it could only cost time. */
export const longestRead = 60;

const told = (count: number): string => printNumber(count, 0);
const [newline, carriageReturn] = ['\n'.charCodeAt(0), '\r'.charCodeAt(0)];

const tooMuch = (what: string, most: number, of: string): string =>
  `${what} is too long: ${told(most)} ${of} are the most. Keep the day and the rain, one day a line.`;

/** Looks through a text before it is cut into cells. Returns what is too long to be a record, or nothing. */
export function textTooLong(text: string, cutAt: string, maxRows: number): string | undefined {
  if (text.length > largestText) return tooMuch('it', largestText, 'characters');
  const cut = cutAt.charCodeAt(0);
  let [lines, length, cells] = [1, 0, 1];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === newline || (code === carriageReturn && text.charCodeAt(at + 1) !== newline)) {
      if (at + 1 < text.length) lines += 1;
      length = 0;
      cells = 1;
      continue;
    }
    length += 1;
    // Blanks in a row part one cell from the next, so only other marks can be counted.
    if (code === cut && cutAt !== ' ') cells += 1;
    if (length > longestLine) return tooMuch(`line ${told(lines)}`, longestLine, 'characters');
    if (cells > mostCells) return tooMuch(`line ${told(lines)}`, mostCells, 'columns');
  }
  // Every other line may be empty.
  return lines > 2 * maxRows + 2 ? tooMuch('it', maxRows, 'lines') : undefined;
}

/** The same once it is cut: a quote that nobody closed makes one cell of all that follows. */
export function cellTooLong(rows: readonly (readonly string[])[]): string | undefined {
  for (const [index, row] of rows.entries()) {
    const where = `line ${index + 1}`;
    if (row.length > mostCells) return tooMuch(where, mostCells, 'columns');
    if (row.some((cell) => cell.length > longestCell)) return `${tooMuch(`a cell of ${where}`, longestCell, 'characters')} Is a quote not closed?`;
  }
  return undefined;
}
