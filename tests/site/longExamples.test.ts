// What a form that runs long opens with was worked out as the site was built: it must be what the calculator says.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { calculators } from '../support/catalog.ts';
import { dist, textOf } from './builtSite.ts';

const long = calculators.filter(({ runs }) => runs === 'long');

it.each(long)('the example of $slug was worked out at build', async (calculator) => {
  const file = readdirSync(join(dist, '_astro')).find((name) => name.startsWith(`example-${calculator.slug}.`));
  const { default: built } = await import(pathToFileURL(join(dist, '_astro', file ?? '')).href);
  const run = runTexts(calculator, startTexts(calculator.inputs));
  expect({ outcome: { ...built, values: { ...built.values, ...built.computed } } }).toEqual({ outcome: 'outcome' in run && run.outcome });
});
it('knows one at least', () => expect(long.length).toBeGreaterThan(0));
it('the worker’s engine has constants where its source has them: as variables they would be looked up at each use', () => {
  const file = readdirSync(join(dist, '_astro')).find((name) => name.startsWith('longWorker-'));
  expect(textOf(join(dist, '_astro'), file ?? '')).toMatch(/\b(?:let|const)\b[^;{}]*\{width:\w+,rain:/);
});
