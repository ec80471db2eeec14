import { createReadStream, createWriteStream, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { parseArgs } from 'node:util';
import { textOfFile } from '../ui/textOfFile.ts';
import { calculatorOf, slugs } from './catalog.ts';
import { describeAll } from './describe.ts';
import { didYouMean } from './nearestName.ts';
import { Refused, runOnce } from './runOnce.ts';
import { rowRangeOf, runTable } from './runTable.ts';

const usage = `Runs a calculator as its page does.

  npm run --silent calc -- SLUG "rain=3in&area=40ac"   one calculation, as JSON; what is left out holds its default
  npm run --silent calc -- SLUG --record rain.csv      the same with your record of days in place of its example
  npm run --silent calc -- SLUG --csv FILE             a table, a row a pasture, as CSV with the results
  npm run --silent calc -- SLUG --csv FILE --rows 2001-4000   only these rows of it, counted with the header as row 1
  npm run --silent calc -- --list                      every calculator, its inputs and results, as JSON

Inputs go by their names in a link. A number may carry its unit: 3in, 75mm, "3 1/2 in".
A column of a table that is no input, such as the pasture's name, is carried along when it is named: --carry pasture.
What has no column stands at its default, and that is told on standard error, as are numbers that look wrong. A row whose cell stands empty where it is asked
for comes back without results, and says so in the last column, which else holds its cautions. A cell that begins like a formula comes back with an apostrophe.
A table is CSV in UTF-8 (or UTF-16 with its mark), with commas, and each row has as many cells as the header.
A name, a value or a column that cannot be used ends with status 2 and a message, for a value the one that the form shows.
`;

const say = (text: string): Promise<void> => pipeline(Readable.from([`${text}\n`]), process.stdout, { end: false });

/** A table goes out whole or not at all: a row that cannot be used may be the last. It waits in a file, for it may be larger than the memory. */
async function sayTable(pieces: AsyncIterable<string>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'calc-'));
  try {
    const file = join(folder, 'table.csv');
    await pipeline(Readable.from(pieces), createWriteStream(file));
    await pipeline(createReadStream(file), process.stdout, { end: false });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The most that a record file may hold, far above a hundred years of days. */
const mostRecordBytes = 20_000_000;
async function recordText(path: string): Promise<string> {
  if (statSync(path).size > mostRecordBytes) throw new Refused(`--record: ${path} is larger than ${mostRecordBytes / 1e6} MB.`);
  const read = await textOfFile(new File([readFileSync(path)], path));
  if ('text' in read) return read.text;
  throw new Refused(`--record: ${read.problem}`);
}

async function answer(args: readonly string[]): Promise<void> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      list: { type: 'boolean' },
      record: { type: 'string' },
      csv: { type: 'string' },
      rows: { type: 'string' },
      carry: { type: 'string', multiple: true },
      help: { type: 'boolean', short: 'h' },
    },
  });
  if (values.list === true) return say(JSON.stringify(await describeAll(), null, 2));
  const [slug, query = '', ...more] = positionals;
  if (slug === undefined || values.help === true) return say(usage.trimEnd());
  if (more.length > 0) throw new Refused('Put the whole query between quotes: the shell takes & for its own.');
  const calculator = await calculatorOf(slug);
  if (!calculator) {
    const near = didYouMean(slug, new Map(slugs().map((known) => [known, known])));
    throw new Refused(`There is no calculator “${slug}”.${near || ` These are known: ${slugs().join(', ')}.`}`);
  }
  if (values.csv !== undefined && query !== '') throw new Refused('Give a query or a table, not both.');
  if (values.csv === undefined && values.rows !== undefined) throw new Refused('--rows belongs to a table: --csv FILE --rows 2001-4000.');
  if (values.csv === undefined) {
    const record = values.record === undefined ? undefined : await recordText(values.record);
    return say(JSON.stringify(runOnce(calculator, query, record), null, 2));
  }
  if (values.record !== undefined) throw new Refused('Give a record with one calculation, not with a table.');
  const rows = values.rows === undefined ? undefined : rowRangeOf(values.rows);
  const notes: string[] = [];
  await sayTable(runTable(calculator, values.csv, values.carry ?? [], (line) => notes.push(line), rows));
  for (const note of notes) process.stderr.write(`${note}\n`);
}

const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '');
/** Our own refusals, a wrong option, a file that cannot be read: told in a line. Anything else is a fault and shows where it is. */
const isForPeople = (error: unknown): error is Error =>
  error instanceof Refused || (error instanceof Error && /^(?:ERR_PARSE_ARGS|ENOENT|EISDIR|EACCES)/.test(codeOf(error)));

/** Answers on standard output what the words after `calc` ask; what cannot be answered is told on standard error, with status 2. */
export async function runCommand(args: readonly string[]): Promise<void> {
  try {
    await answer(args);
  } catch (error) {
    // Who reads the output has had enough of it, as `head` does: no fault.
    if (codeOf(error) === 'EPIPE') process.exit(0);
    if (!isForPeople(error)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 2;
  }
}
