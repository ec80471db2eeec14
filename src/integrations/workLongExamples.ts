// Run by chunkEach.ts in a Node of its own: prints what the example of each calculator that runs long came to, as JSON, by slug.
import { readdirSync } from 'node:fs';
import { stdout } from 'node:process';
import type { Calculator } from '../../calculators/kit/define.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { startTexts } from '../../calculators/kit/state.ts';

const catalog = new URL('../../calculators/catalog/', import.meta.url);

async function exampleOf(slug: string): Promise<readonly (readonly [string, unknown])[]> {
  const { default: calculator }: { default: Calculator } = await import(new URL(`${slug}/definition.ts`, catalog).href);
  if (calculator.runs !== 'long') return [];
  await calculator.fetchEngine?.();
  const run = runTexts(calculator, startTexts(calculator.inputs));
  if (!('outcome' in run)) throw new Error(`${slug}: its example is refused`);
  const { values, ...outcome } = run.outcome;
  // What is computed stands among the values as well: it is sent once.
  const asked = Object.fromEntries(Object.entries(values).filter(([name]) => !Object.hasOwn(outcome.computed, name)));
  return [[slug, { ...outcome, values: asked }]];
}

const slugs = readdirSync(catalog, { withFileTypes: true }).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []));
stdout.write(JSON.stringify(Object.fromEntries((await Promise.all(slugs.map(exampleOf))).flat())));
