/** A hundred years of days with several columns take under 3 MB. */
export const largestText = 10_000_000;
/** Wide enough for a weather station's own file with a column for each thing that it measures. */
const mostCells = 300;
const longestLine = 10_000;
/** Remarks may stand beside the rain. */
const longestCell = 1000;
/** No day and no amount is written longer. What is longer is not looked at further: it could only cost time. */
export const longestRead = 60;

const told = (count: number): string => count.toLocaleString('en-US');
const [newline, carriageReturn] = ['\n'.charCodeAt(0), '\r'.charCodeAt(0)];

/** Looks through a text before it is cut into cells. Returns what is too long to be a record, or nothing. */
export function textTooLong(text: string, cutAt: string, maxRows: number): string | undefined {
  if (text.length > largestText) return `it has more than ${largestText / 1e6} million characters. Keep the day and the rain, one day a line.`;
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
    const most = length > longestLine ? `${told(longestLine)} characters` : cells > mostCells ? `${told(mostCells)} columns` : '';
    if (most !== '') return `line ${told(lines)} is too long: ${most} are the most. Keep the day and the rain, one day a line.`;
  }
  // Every other line may be empty.
  return lines > 2 * maxRows + 2 ? `it has ${told(lines)} lines; ${told(maxRows)} is the most.` : undefined;
}

/** The same once it is cut: a quote that nobody closed makes one cell of all that follows. */
export function cellTooLong(rows: readonly (readonly string[])[]): string | undefined {
  for (const [index, row] of rows.entries()) {
    if (row.length > mostCells)
      return `line ${told(index + 1)} has ${told(row.length)} columns; ${told(mostCells)} are the most. Keep the day and the rain, one day a line.`;
    const long = row.find((cell) => cell.length > longestCell);
    if (long !== undefined)
      return `line ${told(index + 1)} has a cell of ${told(long.length)} characters; ${told(longestCell)} are the most. Look for a quote that is not closed, or take that column out.`;
  }
  return undefined;
}
