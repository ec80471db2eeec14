import { parseArgs } from 'node:util';
import { calculatorOf, slugs } from './command/catalog.ts';
import { describeAll } from './command/describe.ts';
import { Refused, runOnce } from './command/runOnce.ts';
import { runTable } from './command/runTable.ts';

const usage = `Runs a calculator as its page does.

  npm run --silent calc -- SLUG "rain=3in&area=40ac"   one calculation, as JSON; what is left out holds its default
  npm run --silent calc -- SLUG --csv FILE             a table, a row a pasture, as CSV with the results
  npm run --silent calc -- --list                      every calculator, its inputs and results, as JSON

Inputs go by their names in a link. A number may carry its unit: 3in, 75mm, "3 1/2 in".
A value that cannot be used ends with status 2 and the message that the form shows.
`;

async function answer(args: readonly string[]): Promise<string> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { list: { type: 'boolean' }, csv: { type: 'string' }, help: { type: 'boolean', short: 'h' } },
  });
  if (values.list === true) return JSON.stringify(await describeAll(), null, 2);
  const [slug, query = '', ...more] = positionals;
  if (slug === undefined || values.help === true) return usage.trimEnd();
  if (more.length > 0) throw new Refused('Put the whole query between quotes: the shell takes & for its own.');
  const calculator = await calculatorOf(slug);
  if (!calculator) throw new Refused(`There is no calculator “${slug}”. These are known: ${slugs().join(', ')}.`);
  if (values.csv !== undefined && query !== '') throw new Refused('Give a query or a table, not both.');
  return values.csv === undefined ? JSON.stringify(runOnce(calculator, query), null, 2) : runTable(calculator, values.csv);
}

/** Our own refusals, a wrong option, a file that cannot be read: told in a line. Anything else is a fault and shows where it is. */
const isForPeople = (error: unknown): error is Error =>
  error instanceof Refused || (error instanceof Error && 'code' in error && /^(?:ERR_PARSE_ARGS|ENOENT|EISDIR|EACCES)/.test(String(error.code)));

try {
  process.stdout.write(`${await answer(process.argv.slice(2))}\n`);
} catch (error) {
  if (!isForPeople(error)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
