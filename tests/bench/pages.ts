// `npm run bench:pages` after `npm run build`, where nothing else runs: Lighthouse's four scores of a page of each kind, the middle one of three runs, and
// how busy the machine was, which on two cores is mostly its own doing: 3 to 5. The site stands behind Caddy with the file of `servers/`, by https, as phones
// need it to keep a copy. A page's address or a part of it picks some. Fails where a score is under 100.
import { loadavg } from 'node:os';
import { kinds } from '../browser/missing.ts';
import { serveBy } from '../release/webServers.ts';
import { dist } from '../site/builtSite.ts';
import { categories, scoresOf } from '../support/lighthouse.ts';

const runs = 3;
const asked = process.argv[2] ?? '';
const server = await serveBy('caddyByHttps', dist, '/');
console.log(['page', ...categories, 'load'].join('  '));
for (const { name, address } of kinds.filter((kind) => kind.address.includes(asked))) {
  const found = new Map<string, number[]>();
  let most = 0;
  for (let run = 0; run < runs; run += 1) {
    const { scores } = await scoresOf(`https://localhost:${server.port}${address}`, categories);
    for (const [key, score] of Object.entries(scores)) found.set(key, [...(found.get(key) ?? []), score]);
    most = Math.max(most, loadavg()[0] ?? 0);
  }
  const middle = categories.map((key) => found.get(key)?.toSorted((one, other) => one - other)[Math.floor(runs / 2)]);
  if (middle.some((score) => score !== 100)) process.exitCode = 1;
  console.log([name, ...middle, most.toFixed(1)].join('  '));
}
await server.stop();
