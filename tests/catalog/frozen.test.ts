import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { resultAt } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { fromLink, toLink } from '../../calculators/kit/link.ts';
import type { Scalar } from '../../calculators/kit/quantities.ts';
import { readForm, type Texts } from '../../calculators/kit/state.ts';
import { filesBelow, root } from '../support/files.ts';
import { isWanted } from '../support/mutated.ts';

/**
 * Links as somebody may have kept them, with what they said. They prove nothing true: they prove that nothing changed unseen.
 * Where a result is meant to change, the file is edited in the same commit, with the reason, and the definition tells it in `changes`.
 */
interface Frozen {
  readonly query: string;
  readonly results: Readonly<Record<string, Scalar>>;
  /** The results of the other management, where the link compares two. */
  readonly that?: Readonly<Record<string, Scalar>>;
}

const files = filesBelow('tests/catalog', /\.frozen\.json$/)
  .map((path) => ({ path, slug: path.replace(/^.*\/|\.frozen\.json$/g, '') }))
  .filter(({ slug }) => isWanted(slug));

describe.each(files)('$path', async ({ path, slug }) => {
  const frozen: readonly Frozen[] = JSON.parse(readFileSync(join(root, path), 'utf8'));
  const { default: calculator }: { default: Calculator } = await import(join(root, `calculators/catalog/${slug}/definition.ts`));
  const hold = (texts: Texts | null, results: Frozen['results']): void => {
    const { values, problems } = readForm(calculator.inputs, texts ?? {});
    expect(problems).toEqual([]);
    const run = calculator.run(values);
    if ('refusals' in run) throw new Error(run.refusals.map(({ say }) => say).join(' '));
    for (const [name, was] of Object.entries(results)) {
      const is = resultAt(run.outcome, name);
      if (typeof was === 'number' && typeof is === 'number') expect(Math.abs(is - was), `${name}: ${is}`).toBeLessThanOrEqual(1e-12 * Math.abs(was));
      else expect(is, name).toBe(was);
    }
  };

  it.each(frozen)('$query', ({ query, results, that }) => {
    const { form, notices } = fromLink(calculator, query);
    // A link of an earlier version is told what changed; nothing else may need telling.
    expect(notices.filter((notice) => !notice.startsWith('Since this link was written'))).toEqual([]);
    expect(Object.keys(results)).not.toEqual([]);
    hold(form.this, results);
    if (that) hold(form.that, that);
    const again = fromLink(calculator, toLink(calculator, form)).form;
    hold(again.this, results);
    if (that) hold(again.that, that);
  });
  it('holds a comparison where two managements can differ', () => {
    const hasManagement = Object.values(calculator.inputs).some((input) => 'belongsTo' in input && input.belongsTo === 'management');
    expect(!hasManagement || frozen.some(({ query }) => query.includes('that'))).toBe(true);
  });
});
