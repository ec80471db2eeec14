// Lighthouse on a page of each kind, as a phone: accessibility, best practices and search, 100 each. Performance leans on what else the machine does:
// `npm run bench:pages` measures it.
import { expect, test } from '@playwright/test';
import { kinds } from '../browser/missing.ts';
import { type Served, serve } from '../browser/staticServer.ts';
import { dist } from '../site/builtSite.ts';
import { scoresOf, steadyCategories } from '../support/lighthouse.ts';

test.describe.configure({ mode: 'default' });
let server: Served;
test.beforeAll(async () => {
  server = await serve(dist, 0, { isHost: true });
});
test.afterAll(() => server.stop());

for (const { name, address } of kinds)
  test(`${name} has 100 of 100`, async () => {
    const { scores, why } = await scoresOf(`${server.origin}${address}`, steadyCategories);
    expect(scores, `${address}\n${why}`).toEqual({ accessibility: 100, 'best-practices': 100, seo: 100 });
  });
