/**
 * The most memory that a long table takes through `calc`, beside one a quarter as long: part of `npm run bench`, and it fails where the longer one takes
 * far more. What died long ago waits for a sweep of the heap, so a few tens of MB come and go; without the bound that package.json sets for what dies young it
 * was 63 MB more for `rain-on-ground` and 110 for the season.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../support/files.ts';

const mostMoreMB = 40;
const tables = [
  { slug: 'rain-on-ground', head: 'rain,area', rowOf: (row: number) => `${1 + (row % 7) / 10}in,${40 + (row % 13)}ac`, rows: 40_000 },
  { slug: 'season', head: 'grazed,throw', rowOf: (row: number) => `${300 + (row % 13) * 20}ac,${1 + row}`, rows: 400 },
] as const;

const { scripts }: { readonly scripts: Readonly<Record<string, string>> } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const [, ...words] = (scripts.calc ?? '').split(' ');
const tellsMost = 'data:text/javascript,process.on("exit",()=>process.stderr.write("\\n"+process.resourceUsage().maxRSS))';

const folder = mkdtempSync(join(tmpdir(), 'table-'));
function mostMB(slug: string, lines: readonly string[]): number {
  const path = join(folder, 'table.csv');
  writeFileSync(path, lines.join('\n'));
  const both = `"$0" "$@" 2>&1 >"${join(folder, 'out.csv')}"`;
  const told = execFileSync('sh', ['-c', both, process.execPath, '--import', tellsMost, ...words, slug, '--csv', path], {
    cwd: root,
    encoding: 'utf8',
  });
  return Number(told.trim().split('\n').at(-1)) / 1024;
}

for (const { slug, head, rowOf, rows } of tables) {
  const lines = Array.from({ length: rows }, (_, row) => rowOf(row));
  const [short, long] = [lines.slice(0, rows / 4), lines].map((each) => mostMB(slug, [head, ...each]));
  console.log(`${slug}, a table of ${rows / 4} rows: ${short?.toFixed(0)} MB at most; of ${rows}: ${long?.toFixed(0)} MB`);
  if (short === undefined || long === undefined || !(long - short < mostMoreMB)) process.exitCode = 1;
}
rmSync(folder, { recursive: true });
