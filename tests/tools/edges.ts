import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CaseList } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { fetchWhole } from '../../calculators/kit/fetchWhole.ts';
import { root } from '../support/files.ts';
import { proposeEdges } from '../support/proposeEdges.ts';

// `npm run edges -- <slug>`: proposes the edges of one definition. What it prints is where the code turns now; whether that is right, its source says.
const [slug = ''] = process.argv.slice(2);
const folder = join(root, 'calculators/catalog', slug);
if (slug === '' || !existsSync(join(folder, 'definition.ts'))) {
  console.error('npm run edges -- <slug>, the name of a folder in calculators/catalog');
  process.exit(2);
}
const { default: calculator }: { default: Calculator } = await import(join(folder, 'definition.ts'));
await fetchWhole(calculator);
const { default: cases }: { default: CaseList } = await import(join(folder, 'cases.ts'));
const frozenFile = join(root, `calculators/catalog/${slug}/frozen.json`);
const frozen: readonly { readonly query: string }[] = existsSync(frozenFile) ? JSON.parse(readFileSync(frozenFile, 'utf8')) : [];

const { limits, lines, missing } = proposeEdges(
  calculator,
  cases,
  frozen.map(({ query }) => query),
);
console.log(`import { always, defineEdges, edge, shows, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

export default defineEdges(definition, {
  limits: ${limits},
  edges: [
${lines.map((line) => `    ${line}`).join('\n')}
  ],
});`);
for (const each of missing) console.error(`not proposed: ${each}`);
