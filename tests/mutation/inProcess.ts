import { readFileSync, writeFileSync } from 'node:fs';
import { registerHooks, stripTypeScriptTypes } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { configureGlobal } from 'fast-check';
import type { Collected } from './collect.ts';

/**
 * Runs the tests of one folder of code for one mutant after another in the same process: what takes half a second in a worker of its own takes a few
 * hundredths here. The tests, their `expect` and the code are the same; only who calls the tests is other than in Vitest.
 */
interface Namespace {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number;
  hitLimit?: number | undefined;
  mutantCoverage?: unknown;
}
const global: { __stryker__?: Namespace } & typeof globalThis = globalThis;
const namespace: Namespace = global.__stryker__ ?? {};
global.__stryker__ = namespace;

interface MutantRun {
  readonly testFilter?: readonly string[];
  readonly hitLimit?: number;
  readonly activeMutant: { readonly id: string };
  readonly mutantActivation: 'runtime' | 'static';
}

/** The tests, loaded once in a process. `vitest` is what keeps them; TypeScript is read without its types wherever it lies. */
async function load(): Promise<readonly Collected[]> {
  const collect = pathToFileURL(join(process.cwd(), 'tests/mutation/collect.ts')).href;
  registerHooks({
    resolve: (specifier, context, next) =>
      specifier === 'vitest' && context.parentURL !== collect ? { url: collect, shortCircuit: true } : next(specifier, context),
    load: (url, context, next) =>
      url.startsWith('file:') && url.endsWith('.ts')
        ? { format: 'module', source: stripTypeScriptTypes(readFileSync(fileURLToPath(url), 'utf8')), shortCircuit: true }
        : next(url, context),
  });
  // That a mutant is noticed is enough: nobody needs the smallest example. A whole calculator takes a hundred times as long as one function.
  configureGlobal({ endOnFailure: true, numRuns: process.env['MUTATED']?.startsWith('catalog/') ? 20 : 100 });
  await import(pathToFileURL(join(process.cwd(), 'tests/mutation/together.ts')).href);
  return (await import(collect)).collected;
}

const [succeeded, skipped] = [0, 2];
/** In the copy of the code: it becomes the working folder only after this file was loaded. */
const leftOutFile = (): string => join(process.cwd(), 'left-out.json');

interface Log {
  readonly warn: (message: string) => void;
}

class InProcess {
  static inject = ['logger'];
  private readonly log: Log;
  private tests: Promise<readonly Collected[]> | undefined;
  constructor(log: Log) {
    this.log = log;
  }
  capabilities() {
    return { reloadEnvironment: false };
  }
  async dryRun() {
    this.tests ??= load();
    const results = [];
    const leftOut: string[] = [];
    for (const { id, run } of await this.tests) {
      namespace.currentTestId = id;
      const start = performance.now();
      const failureMessage = await failureOf(run);
      const timeSpentMs = performance.now() - start;
      // One that reads the code as text can fail on code that is made ready for turning. It says nothing then, and is told and left out.
      if (failureMessage !== undefined) {
        leftOut.push(id);
        this.log.warn(`left out: ${id}: ${failureMessage}`);
      }
      results.push({ id, name: id, timeSpentMs, status: failureMessage === undefined ? succeeded : skipped });
    }
    namespace.currentTestId = undefined;
    // For the processes to come: each mutant of what is worked out while a module loads has its own.
    writeFileSync(leftOutFile(), JSON.stringify(leftOut));
    return { status: 'complete', tests: results, mutantCoverage: namespace.mutantCoverage };
  }
  async mutantRun({ testFilter, hitLimit, activeMutant, mutantActivation }: MutantRun) {
    if (mutantActivation === 'static') namespace.activeMutant = activeMutant.id;
    this.tests ??= load();
    const wanted = testFilter && new Set(testFilter);
    let tests: readonly Collected[];
    try {
      const leftOut: readonly string[] = JSON.parse(readFileSync(leftOutFile(), 'utf8'));
      tests = (await this.tests).filter(({ id }) => !leftOut.includes(id) && (!wanted || wanted.has(id)));
    } catch (error) {
      return { status: 'killed', killedBy: [], failureMessage: String(error), nrOfTests: 0 };
    }
    namespace.hitCount = 0;
    namespace.hitLimit = hitLimit;
    namespace.activeMutant = activeMutant.id;
    for (const [at, { id, run }] of tests.entries()) {
      const failureMessage = await failureOf(run);
      if (hitLimit !== undefined && namespace.hitCount > hitLimit) return { status: 'timeout', reason: `more than ${hitLimit} hits` };
      if (failureMessage !== undefined) return { status: 'killed', killedBy: [id], failureMessage, nrOfTests: at + 1 };
    }
    return { status: 'survived', nrOfTests: tests.length };
  }
}
async function failureOf(run: () => unknown): Promise<string | undefined> {
  try {
    await run();
    return undefined;
  } catch (error) {
    return String(error);
  }
}

export const strykerPlugins = [{ kind: 'TestRunner', name: 'in-process', injectableClass: InProcess }];
