import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type CaseList, runQuery } from '../../calculators/kit/cases.ts';
import type { EdgeList } from '../../calculators/kit/edges.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { failing } from '../../calculators/math/checks.ts';
import { calculators, fileOf, loadFrom, slugs } from '../support/catalog.ts';
import { itObeysTheLaws } from '../support/definitionLaws.ts';
import { itIsWellDeclared } from '../support/definitionShape.ts';
import { itHoldsItsEdges } from '../support/edgeLaws.ts';
import { root } from '../support/files.ts';
import { itDrawsWhatFits } from '../support/pictureLaws.ts';

const all = await Promise.all(
  slugs.map(async (slug) => ({
    slug,
    calculator: calculators.find((each) => each.slug === slug),
    cases: await loadFrom<CaseList>(slug, 'cases.ts'),
    edges: await loadFrom<EdgeList>(slug, 'edges.ts'),
  })),
);

describe.each(all)('$slug', ({ slug, calculator, cases, edges }) => {
  it('goes by the name of its folder', () => {
    expect(calculator?.slug, `${fileOf(slug, 'definition.ts')} must export a calculator with slug: '${slug}'`).toBe(slug);
  });
  it('has a case from outside', () => {
    expect(cases?.slug, `add ${fileOf(slug, 'cases.ts')}: export default defineCases(definition, [ … ])`).toBe(slug);
    expect(cases?.checks.length, `add to ${fileOf(slug, 'cases.ts')} a worked example as its source prints it`).toBeGreaterThan(0);
  });
  it('has its edges beside its cases', () => {
    expect(edges?.slug, `add ${fileOf(slug, 'edges.ts')}; \`npm run edges -- ${slug}\` proposes it`).toBe(slug);
  });
  if (!calculator) return;
  // What tells most comes first: with faults put in on purpose, the first test that fails ends the run.
  if (edges) itHoldsItsEdges(calculator, edges);

  // The season runs its thirty years for some of them, on a machine that may be busy.
  it('agrees with what the sources print', () => {
    expect((cases?.checks ?? []).map(failing).filter((problem) => problem !== undefined)).toEqual([]);
  });
  it('cites, beside each case, a source that is there, and types what the form takes', () => {
    for (const { name, query, records, source, where } of cases?.cases ?? []) {
      expect(
        existsSync(join(root, `content/sources/${source}.json`)) || source === 'common practice',
        `${name}: add content/sources/${source}.json`,
      ).toBe(true);
      expect(where.trim(), `${name}: say in \`where\` on which page`).not.toBe('');
      expect(fromLink(calculator, query).notices, name).toEqual([]);
      expect(() => runQuery(calculator, query, records)).not.toThrow();
    }
  });

  itIsWellDeclared(calculator);
  itDrawsWhatFits(calculator);
  itObeysTheLaws(calculator, cases);
});
