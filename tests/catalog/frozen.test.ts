import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { resultAt } from '../../calculators/kit/cases.ts';
import { toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import type { Texts } from '../../calculators/kit/state.ts';
import { calculators, type FrozenLink, fileOf } from '../support/catalog.ts';
import { filesBelow, root } from '../support/files.ts';

/**
 * Links as somebody may have kept them, with what they said. They prove nothing true: they prove that nothing changed unseen.
 * Where a result is meant to change, the file is edited in the same commit, with the reason, and the definition tells it in `changes`.
 */
const there = new Set(filesBelow('calculators/catalog', /^frozen\.json$/));

it.each(calculators)('$slug has links that are kept', ({ slug }) => {
  const path = fileOf(slug, 'frozen.json');
  expect([...there], `${path} is missing. \`npm run freeze\` writes it: the form as it opens, each case, and a comparison`).toContain(path);
});

describe.each(calculators.filter(({ slug }) => there.has(fileOf(slug, 'frozen.json'))))('$slug', (calculator) => {
  const path = fileOf(calculator.slug, 'frozen.json');
  const frozen: readonly FrozenLink[] = JSON.parse(readFileSync(join(root, path), 'utf8'));
  const hold = (texts: Texts | null, results: FrozenLink['results']): void => {
    const run = runTexts(calculator, texts ?? {});
    if ('refusals' in run) throw new Error(`${path}: the link no longer opens. ${run.refusals.map(({ say }) => say).join(' ')}`);
    for (const [name, was] of Object.entries(results)) {
      const is = resultAt(run.outcome, name);
      const moved = `${path}: ${name} was ${was}, is ${is}`;
      if (typeof was === 'number' && typeof is === 'number') expect(Math.abs(is - was), moved).toBeLessThanOrEqual(1e-12 * Math.abs(was));
      else expect(is, moved).toBe(was);
    }
  };

  it.each(frozen)('$query', ({ query, results, that }) => {
    const { form, notices } = fromLink(calculator, query);
    // A link of an earlier version is told what changed; nothing else may need telling.
    expect(notices.filter((notice) => !notice.startsWith('Since this link was written'))).toEqual([]);
    expect(Object.keys(results), `${path}: a link without results holds nothing`).not.toEqual([]);
    hold(form.this, results);
    if (that) hold(form.that, that);
    const again = fromLink(calculator, toLink(calculator, form)).form;
    hold(again.this, results);
    if (that) hold(again.that, that);
  });
  it('holds a comparison where two managements can differ', () => {
    const hasManagement = Object.values(calculator.inputs).some((input) => 'belongsTo' in input && input.belongsTo === 'management');
    expect(
      !hasManagement || frozen.some(({ query }) => query.includes('that')),
      `${path}: add a link with \`that.\` before what the second management changes, and its results as \`that\``,
    ).toBe(true);
  });
});
