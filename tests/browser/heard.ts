// What whoever listens hears of a page.
import { expect, type Page } from '@playwright/test';

/** Keeps from now on what is read aloud: what comes into a region that stood there before, and alerts. */
export const listen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const heard: string[] = [];
    const isAlert = (node: Node): boolean => node instanceof Element && node.matches('[role=alert]');
    new MutationObserver((records) => {
      for (const { target, type, addedNodes } of records) {
        const around = target instanceof Element ? target : target.parentElement;
        const isHeard = around?.closest('[role=status], [role=alert], [aria-live]') != null;
        const nodes = type === 'characterData' ? [target] : [...addedNodes].filter((node) => isHeard || isAlert(node));
        if (type === 'characterData' && !isHeard) continue;
        for (const { textContent } of nodes) if (textContent) heard.push(textContent);
      }
    }).observe(document, { subtree: true, childList: true, characterData: true });
    Object.assign(window, { heard });
  });
export const heard = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const found: unknown = Reflect.get(window, 'heard');
    return Array.isArray(found) ? found.map(String) : [];
  });
/** These words once, and no second time a while later. */
export async function hearsOnce(page: Page, words: string): Promise<void> {
  const times = async (): Promise<number> => (await heard(page)).filter((each) => each.includes(words)).length;
  await expect.poll(times, { message: words }).toBe(1);
  await page.waitForTimeout(700);
  expect(await times(), words).toBe(1);
}
