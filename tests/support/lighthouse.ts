import { chromium } from '@playwright/test';
import lighthouse from 'lighthouse';
import { launchOptions } from '../../chromium.ts';

/** What can be said of a page whatever else the machine does; and performance, which leans on its clock. */
export const steadyCategories = ['accessibility', 'best-practices', 'seo'] as const;
export const categories = ['performance', ...steadyCategories] as const;
export type Category = (typeof categories)[number];

/** Lighthouse on one address, as a phone: scores of 100, and the audits that are not whole, one a line. */
export async function scoresOf(
  address: string,
  asked: readonly Category[],
): Promise<{ readonly scores: Readonly<Partial<Record<Category, number>>>; readonly why: string }> {
  const debugPort = 9300 + (process.pid % 500);
  const browser = await chromium.launch({
    ...launchOptions,
    args: [...launchOptions.args, '--ignore-certificate-errors', `--remote-debugging-port=${debugPort}`],
  });
  try {
    const found = await lighthouse(address, {
      port: debugPort,
      logLevel: 'error',
      onlyCategories: [...asked],
      formFactor: 'mobile',
      // It slows network and processor by sums, not by waiting.
      throttlingMethod: 'simulate',
    });
    if (!found) throw new Error(`${address}: no report`);
    const { lhr } = found;
    return {
      scores: Object.fromEntries(asked.map((key) => [key, Math.round((lhr.categories[key]?.score ?? 0) * 100)])),
      why: Object.values(lhr.audits)
        .filter((audit) => audit.score !== null && audit.score < 1)
        .map((audit) => `${audit.id} ${audit.score} ${audit.displayValue ?? ''}`)
        .join('\n'),
    };
  } finally {
    await browser.close();
  }
}
