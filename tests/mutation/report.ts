import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** One thing turned in the code, and whether a test noticed. */
export interface Mutant {
  readonly path: string;
  /** `line:column-line:column`, as the tool takes it back. */
  readonly range: string;
  readonly was: string;
  readonly is: string;
  readonly kind: string;
  readonly status: string;
}
interface Place {
  readonly line: number;
  readonly column: number;
}
interface Report {
  readonly files: Readonly<
    Record<
      string,
      {
        readonly source: string;
        readonly mutants: readonly {
          readonly location: { readonly start: Place; readonly end: Place };
          readonly mutatorName: string;
          readonly replacement: string;
          readonly status: string;
        }[];
      }
    >
  >;
}
const folder = 'node_modules/.cache/mutants';
/** Where the tool writes what it found in one folder of code. */
export const reportOf = (area: string): string => `${folder}/${area.replace('/', '-')}.report.json`;
const keptOf = (area: string): string => `${folder}/${area.replace('/', '-')}.json`;

/** What was found so far in this folder of code. */
export const kept = (area: string): readonly Mutant[] => (existsSync(keptOf(area)) ? JSON.parse(readFileSync(keptOf(area), 'utf8')) : []);
export function keep(area: string, mutants: readonly Mutant[]): void {
  mkdirSync(dirname(keptOf(area)), { recursive: true });
  writeFileSync(keptOf(area), JSON.stringify(mutants, null, 1));
}

function textAt(source: string, start: Place, end: Place): string {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  return lines.map((line, at) => line.slice(at === 0 ? start.column - 1 : 0, at === lines.length - 1 ? end.column - 1 : undefined).trim()).join(' ');
}
/** The report of the tool, a line to a mutant. Those of kinds that are not tried are left out. */
export function found(area: string): readonly Mutant[] {
  const { files }: Report = JSON.parse(readFileSync(reportOf(area), 'utf8'));
  return Object.entries(files).flatMap(([path, { source, mutants }]) =>
    mutants.flatMap(({ location: { start, end }, mutatorName, replacement, status }) =>
      status === 'Ignored'
        ? []
        : [
            {
              path,
              range: `${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`,
              was: textAt(source, start, end),
              is: replacement.replaceAll(/\s+/g, ' '),
              kind: mutatorName,
              status,
            },
          ],
    ),
  );
}
