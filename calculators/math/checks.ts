import { needThere } from './need.ts';

/**
 * Values from outside, beside the function that they check. The tests run them and the site prints them:
 * one list for both. Never put a number here that our own code produced.
 */

/**
 * How the expected value was come by. Only `print` and `transcription` count as outside values:
 * print: read on the source's own page; transcription: read in somebody's copy of it; practice: a trade fact with no single source;
 * memory: recalled, so the check must rest on a second route; computed: exact arithmetic or another program, or a print that is
 * only what was put in, given back.
 */
export type Seen = 'print' | 'transcription' | 'practice' | 'memory' | 'computed';

export interface Check {
  /** The case in words: `3.0 in of rain, curve number 70`. */
  readonly what: string;
  /** Our answer; a word where the source prints a class. */
  readonly ours: () => number | string;
  /** As the source prints it. The tolerance is half its last digit. */
  readonly printed: string;
  /** Key of a file in `content/sources`. */
  readonly source: string;
  /** Table, page, equation or example. */
  readonly where: string;
  readonly seen: Seen;
  /** Where the print is known to be off (misprint, truncation, slip): how far ours may stand from it, and why. */
  readonly differs?: { readonly by: string; readonly because: string };
}

export interface CheckList {
  /** The function under check, as exported. */
  readonly of: string;
  readonly checks: readonly Check[];
}

export const checkList = (of: string, checks: readonly Check[]): CheckList => ({ of, checks });

/**
 * A printed table as it stands on the page: a row a line, the row's head first, then its cells. `-` marks a cell that is not there.
 * @param columns - Heads of the columns, as printed
 * @param text - The rows
 */
export function tableChecks(spec: {
  readonly columns: readonly string[];
  readonly text: string;
  readonly what: (row: string, column: string) => string;
  readonly ours: (row: string, column: string) => number | string;
  readonly source: string;
  readonly where: string;
  readonly seen: Seen;
  readonly differs?: (row: string, column: string) => Check['differs'] | undefined;
}): Check[] {
  return spec.text
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [row = '', ...cells] = line.trim().split(/\s+/);
      if (cells.length !== spec.columns.length) {
        throw new RangeError(`tableChecks: row "${row}" has ${cells.length} cells for ${spec.columns.length} columns`);
      }
      return spec.columns.flatMap((column, index) => {
        const printed = needThere('tableChecks', column, cells[index]);
        if (printed === '-') return [];
        const differs = spec.differs?.(row, column);
        return {
          what: spec.what(row, column),
          ours: () => spec.ours(row, column),
          printed,
          source: spec.source,
          where: spec.where,
          seen: spec.seen,
          ...(differs === undefined ? {} : { differs }),
        };
      });
    });
}

/** Half of the last digit that a source prints: `0.71` → 0.005, `27,154` → 0.5. */
export function halfLastDigit(printed: string): number {
  const found = /^[-−]?[\d,]*(?:\.(\d+))?(?:e([-+]?\d+))?$/i.exec(printed.trim());
  if (!found) throw new RangeError(`halfLastDigit needs a printed number, got "${printed}"`);
  const [, decimals = '', exponent = '0'] = found;
  return 0.5 * 10 ** (Number(exponent) - decimals.length);
}

export const printedNumber = (printed: string): number => Number(printed.trim().replaceAll(',', '').replace('−', '-'));

/** What is wrong with this check, or nothing: the one rule for tests and for the page that shows them. */
export function failing(check: Check): string | undefined {
  const ours = check.ours();
  if (typeof ours === 'string') return ours === check.printed ? undefined : `${check.what}: printed "${check.printed}", ours "${ours}"`;
  const allowed = check.differs ? Number(check.differs.by) : halfLastDigit(check.printed);
  const off = Math.abs(ours - printedNumber(check.printed));
  // A value that lies exactly between two printed ones may round either way.
  return off <= allowed * (1 + 1e-9) + 1e-12 ? undefined : `${check.what}: printed ${check.printed}, ours ${ours}, allowed ${allowed}`;
}
