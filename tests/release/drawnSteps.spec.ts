import { expect, test } from '@playwright/test';
import { elementsOf } from '../../calculators/ui/markup.ts';
import { drawWorking } from '../../src/catalog/drawWorking.ts';
import { markupOf } from '../../src/integrations/markupOf.ts';
import { calculators } from '../support/catalog.ts';

test('drawn steps are built as a browser would have read them', async ({ page }) => {
  const links = { short: (key: string) => key, href: (key: string) => `/sources/#${key}` };
  // On a page without a policy, which may read markup.
  await page.setContent('<main></main>');
  for (const calculator of calculators) {
    const html = drawWorking(calculator, links);
    const { read, built, spaces } = await page.evaluate(
      ([html, markup, builder]) => {
        const [one, two] = [document.createElement('div'), document.createElement('div')];
        one.innerHTML = html;
        // biome-ignore lint/security/noGlobalEval: the function under test, put into the page
        two.append(eval(`(${builder})`)(JSON.parse(markup)));
        const spacesOf = (box: Element) => [...box.querySelectorAll('*')].map(({ namespaceURI, localName }) => `${namespaceURI} ${localName}`).join();
        return { read: one.innerHTML, built: two.innerHTML, spaces: [spacesOf(one), spacesOf(two)] };
      },
      [html, JSON.stringify(markupOf(html)), elementsOf.toString()] as const,
    );
    expect(built === read, `${calculator.slug}: the same markup`).toBe(true);
    expect(spaces[0] === spaces[1], `${calculator.slug}: the same elements`).toBe(true);
  }
});
