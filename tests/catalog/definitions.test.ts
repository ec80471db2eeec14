import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type CaseList, runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { EdgeList } from '../../calculators/kit/edges.ts';
import { fromLink } from '../../calculators/kit/link.ts';
import { failing } from '../../calculators/math/checks.ts';
import { itObeysTheLaws } from '../support/definitionLaws.ts';
import { itIsWellDeclared } from '../support/definitionShape.ts';
import { itHoldsItsEdges } from '../support/edgeLaws.ts';
import { root } from '../support/files.ts';
import { isWanted } from '../support/mutated.ts';
import { itDrawsWhatFits } from '../support/pictureLaws.ts';

const catalog = join(root, 'calculators/catalog');
const load = async <T>(folder: string, file: string): Promise<T> => (await import(join(catalog, folder, file))).default;
const all: readonly { readonly folder: string; readonly calculator: Calculator; readonly cases: CaseList; readonly edges: EdgeList | undefined }[] =
  await Promise.all(
    readdirSync(catalog)
      .filter((folder) => existsSync(join(catalog, folder, 'definition.ts')) && isWanted(folder))
      .map(async (folder) => ({
        folder,
        calculator: await load<Calculator>(folder, 'definition.ts'),
        // A definition without cases fails its own test, not everybody's.
        cases: existsSync(join(catalog, folder, 'cases.ts')) ? await load<CaseList>(folder, 'cases.ts') : { slug: folder, cases: [], checks: [] },
        edges: existsSync(join(catalog, folder, 'edges.ts')) ? await load<EdgeList>(folder, 'edges.ts') : undefined,
      })),
  );

describe.each(all)('$folder', ({ folder, calculator, cases, edges }) => {
  it('goes by the name of its folder', () => {
    expect(calculator.slug).toBe(folder);
    expect(cases.slug).toBe(folder);
  });
  itIsWellDeclared(calculator);
  itObeysTheLaws(calculator, cases);
  itDrawsWhatFits(calculator);

  it('has its edges beside its cases', () => {
    expect(edges?.slug, `add calculators/catalog/${folder}/edges.ts; npm run edges -- ${folder} proposes it`).toBe(folder);
  });
  if (edges) itHoldsItsEdges(calculator, edges);

  it('agrees with what the sources print', () => {
    expect(cases.checks.length).toBeGreaterThan(0);
    expect(cases.checks.map(failing).filter((problem) => problem !== undefined)).toEqual([]);
  });
  it('cites, beside each case, a source that is there, and types what the form takes', () => {
    for (const { name, query, records, source, where } of cases.cases) {
      expect(existsSync(join(root, `content/sources/${source}.json`)) || source === 'common practice', `${name}: ${source}`).toBe(true);
      expect(where.trim(), `${name}: where`).not.toBe('');
      expect(fromLink(calculator, query).notices, name).toEqual([]);
      expect(() => runQuery(calculator, query, records)).not.toThrow();
    }
  });
});
