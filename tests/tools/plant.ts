import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, posix } from 'node:path';
import { parseArgs } from 'node:util';
import { type Fault, faultsOf, type Layer } from '../support/faults.ts';
import { filesBelow, root } from '../support/files.ts';

/**
 * `npm run plant -- tables | catalog | math [--most 40] [--seed 1] [--group storm-runoff] [--files 'cautions|refusals'] [--out survivors.json]`: puts wrong numbers, turned signs and
 * swapped keys into a copy of the code, one in each folder at a time, and tells which of them no test noticed. It is slow; nothing runs it by itself.
 * `--together 6` plants in no more than so many folders at a time, so that each run is short; `--near` leaves out tests farther away; `--again survivors.json` plants only what an
 * earlier run has left.
 */
const { values: given, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    most: { type: 'string', default: '40' },
    seed: { type: 'string', default: '1' },
    group: { type: 'string' },
    files: { type: 'string', default: '' },
    out: { type: 'string' },
    together: { type: 'string', default: '99' },
    near: { type: 'boolean', default: false },
    again: { type: 'string' },
  },
});
const isLayer = (text: string | undefined): text is Layer => text === 'tables' || text === 'catalog' || text === 'math';
const [layer] = positionals;
if (!isLayer(layer)) throw new RangeError('npm run plant -- tables, catalog or math');

interface Failure {
  readonly file: string;
  readonly name: string;
}
interface Report {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

const copy = mkdtempSync(join(tmpdir(), 'holdwater-plant-'));
for (const folder of ['calculators', 'content', 'src', 'tests', 'package.json', 'tsconfig.json', 'vitest.config.ts'])
  cpSync(join(root, folder), join(copy, folder), { recursive: true });
symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));

/** All but those that try the same with random texts: slow, and it is not numbers that they hold. */
const telling =
  '^(?!.*(?:opens any query|reopens from its link|does not look at what is hidden|in the other units|keeps what was typed|names the field in))';

/** As it is now: work on the code may go on meanwhile. */
const sound = new Map(filesBelow('calculators', /\.ts$/).map((path) => [path, readFileSync(join(copy, path), 'utf8')]));
/** The copy with these faults and no others. */
function plant(faults: readonly Fault[]): void {
  for (const [path, list] of Map.groupBy(faults, (fault) => fault.path)) {
    let text = sound.get(path) ?? '';
    for (const { from, to, is } of list.toSorted((one, other) => other.from - one.from)) text = text.slice(0, from) + is + text.slice(to);
    writeFileSync(join(copy, path), text);
  }
}
function heal(faults: readonly Fault[]): void {
  for (const { path } of faults) writeFileSync(join(copy, path), sound.get(path) ?? '');
}
/** Tests that fail with these faults; a file that does not even load, or never ends, counts as one that fails for all. */
function failuresWith(
  faults: readonly Fault[],
  tests: readonly string[],
  groups: readonly string[] = [],
): { readonly failures: readonly Failure[]; readonly loads: boolean } {
  plant(faults);
  const output = join(copy, 'report.json');
  rmSync(output, { force: true });
  const vitest = join(root, 'node_modules/vitest/vitest.mjs');
  // Without a shell between, so that its end is the end of its workers.
  spawnSync(
    process.execPath,
    [vitest, 'run', '--no-isolate', '--testTimeout=60000', '--reporter=json', `--outputFile=${output}`, '-t', telling, ...tests],
    {
      cwd: copy,
      env: { ...process.env, LAWS_RUNS: '20', ...(layer === 'tables' ? {} : { MUTATED: groups.map((group) => `${layer}/${group}`).join(',') }) },
      // A fault can make a loop that never ends.
      timeout: given.near ? 45_000 : 120_000,
      killSignal: 'SIGKILL',
    },
  );
  heal(faults);
  if (!existsSync(output)) return { failures: [], loads: false };
  const report: Report = JSON.parse(readFileSync(output, 'utf8'));
  const failures = report.testResults.flatMap(({ name: file, assertionResults }) =>
    assertionResults.filter(({ status }) => status === 'failed').map(({ fullName }) => ({ file: posix.relative(copy, file), name: fullName })),
  );
  return { failures, loads: report.testResults.every(({ status, assertionResults }) => status !== 'failed' || assertionResults.length > 0) };
}

/** Does a failing test speak of this group, so that nothing else planted beside it can be the cause? */
function speaksOf({ file, name }: Failure, group: string): boolean {
  if (layer === 'catalog')
    return name.startsWith(`${group} `) || file.startsWith(`tests/catalog/${group}.`) || name.startsWith(`tests/catalog/${group}.`);
  if (layer === 'tables') return name.startsWith(`${group} `);
  return file.startsWith(`tests/math/${group}.`) || name.includes(`calculators/math/${group}/`);
}

/** Topics of the math package that a topic leans on, itself or through others: their faults show in its tests. */
const leansOn = new Map<string, Set<string>>();
if (layer === 'math') {
  const direct = new Map<string, Set<string>>();
  for (const path of filesBelow('calculators/math', /\.ts$/)) {
    const topic = path.split('/')[2] ?? '';
    const others = [...readFileSync(join(root, path), 'utf8').matchAll(/from '\.\.\/([a-zA-Z]+)\//g)].map((found) => found[1] ?? '');
    direct.set(topic, new Set([...(direct.get(topic) ?? []), ...others]));
  }
  for (const topic of direct.keys()) {
    const all = new Set<string>();
    const waiting = [topic];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      if (all.has(next)) continue;
      all.add(next);
      waiting.push(...(direct.get(next) ?? []));
    }
    leansOn.set(topic, all);
  }
}
const areApart = (one: string, other: string): boolean => !leansOn.get(one)?.has(other) && !leansOn.get(other)?.has(one);

/** The same order every time for one seed. */
function shuffled<T>(list: readonly T[], seed: number): readonly T[] {
  let state = seed * 2_654_435_769;
  const keyed = list.map((each) => {
    state = (Math.imul(state ^ (state >>> 15), 2_246_822_519) + 374_761_393) >>> 0;
    return { each, key: state };
  });
  return keyed.toSorted((one, other) => one.key - other.key).map(({ each }) => each);
}

/** The tests of these folders: what stands beside them and, for all, what looks at no others then. */
const testsOf: Readonly<Record<Layer, (group: string) => readonly string[]>> = {
  tables: () => ['tests/tables'],
  catalog: (group) => [`tests/catalog/${group}.test.ts`],
  math: (group) => filesBelow('tests/math', /\.test\.ts$/).filter((path) => path.startsWith(`tests/math/${group}.`)),
};
const forAll: Readonly<Record<Layer, readonly string[]>> = {
  tables: [],
  catalog: ['definitions', 'frozen', 'told', 'options'].map((name) => `tests/catalog/${name}.test.ts`),
  math: ['checks', 'docstrings', 'ranges'].map((name) => `tests/math/${name}.test.ts`),
};
const nearOf = (layerOf: Layer, groups: readonly string[]): readonly string[] =>
  [...new Set([...forAll[layerOf], ...groups.flatMap(testsOf[layerOf])])].filter((path) => existsSync(join(root, path)));
/** Further tests that a survivor of the near ones must pass. */
const far: Readonly<Record<Layer, readonly string[]>> = {
  tables: [],
  catalog: ['tests/catalog/usual.test.ts', 'tests/content', 'tests/kit/command.test.ts', 'tests/kit/commandTable.test.ts'],
  math: ['tests/catalog'],
};

const toldOf = ({ path, line, kind, was, is }: Fault): string =>
  `${path}:${line} ${kind}: ${was.replaceAll(/\s+/g, ' ')} → ${is.replaceAll(/\s+/g, ' ')}`;

const wanted: readonly Fault[] | undefined = given.again === undefined ? undefined : JSON.parse(readFileSync(given.again, 'utf8'));
const wantedAgain = wanted && new Set(wanted.map(toldOf));
const all = faultsOf(layer).filter(
  (fault) =>
    (given.group === undefined || fault.group === given.group) &&
    new RegExp(given.files).test(fault.path) &&
    (!wantedAgain || wantedAgain.has(toldOf(fault))),
);
const groups = Map.groupBy(all, ({ group }) => group);
const queues = new Map([...groups].map(([group, list]) => [group, [...shuffled(list, Number(given.seed)).slice(0, Number(given.most))]]));
const count = [...queues.values()].flat().length;
console.log(`${layer}: ${all.length} faults can be planted, ${count} are, from ${queues.size} folders`);

/** Those of one round that no near test speaks of. Where the tests could not even start, by halves. */
function unnoticedNear(faults: readonly Fault[]): readonly Fault[] {
  const { failures, loads } = failuresWith(
    faults,
    nearOf(
      layer as Layer,
      faults.map(({ group }) => group),
    ),
    faults.map(({ group }) => group),
  );
  if (loads) return faults.filter(({ group }) => !failures.some((failure) => speaksOf(failure, group)));
  if (faults.length === 1) return [];
  const middle = Math.ceil(faults.length / 2);
  return [...unnoticedNear(faults.slice(0, middle)), ...unnoticedNear(faults.slice(middle))];
}

const together = Number(given.together);
const names = [...groups.keys()];
for (let at = 0; at < names.length; at += together) {
  const some = names.slice(at, at + together);
  const { failures } = failuresWith([], nearOf(layer, some), some);
  if (failures.length > 0) throw new Error(`mend these first: ${failures.map(({ name }) => name).join('; ')}`);
}

let killed = 0;
let survivors: Fault[] = [];
for (let round = 1; [...queues.values()].some((queue) => queue.length > 0); round++) {
  const faults: Fault[] = [];
  for (const [group, queue] of [...queues].sort(([, one], [, other]) => other.length - one.length)) {
    const next = queue[0];
    if (faults.length >= together) break;
    if (!next || faults.some((fault) => !areApart(fault.group, group))) continue;
    queue.shift();
    faults.push(next);
  }
  const missed = unnoticedNear(faults);
  killed += faults.length - missed.length;
  survivors.push(...missed);
  console.log(`round ${round}: ${faults.length} planted, ${killed} killed and ${survivors.length} not so far`);
  for (const fault of missed) console.log(`  ${toldOf(fault)}`);
}

/** Takes out of the survivors those that tests farther away notice: all at once first, then by halves. */
function unnoticed(faults: readonly Fault[]): readonly Fault[] {
  if (given.near || faults.length === 0 || far[layer as Layer].length === 0) return faults;
  const { failures, loads } = failuresWith(faults, far[layer as Layer]);
  if (loads && failures.length === 0) return faults;
  if (faults.length === 1) return [];
  const middle = Math.ceil(faults.length / 2);
  return [...unnoticed(faults.slice(0, middle)), ...unnoticed(faults.slice(middle))];
}
const left = unnoticed(survivors);
killed += survivors.length - left.length;
survivors = [...left].sort((one, other) => one.path.localeCompare(other.path) || one.from - other.from);
rmSync(copy, { recursive: true });

console.log(`${layer}: ${count} planted, ${killed} killed, ${survivors.length} survived`);
for (const fault of survivors) console.log(toldOf(fault));
if (given.out !== undefined) writeFileSync(given.out, JSON.stringify(survivors, null, 2));
