// A site that was open once where there was signal, and is used where there is none.
import type { BrowserContext, Page } from '@playwright/test';
import { dist } from '../site/builtSite.ts';
import { copyWhole } from './copyHere.ts';
import { type Served, serve } from './staticServer.ts';

/** After the day on which a copy was built, so that its clock is not doubted. */
export const morning = '2027-06-20T07:00:00';
/** The site after a first visit, with the server gone and no signal; and all that is asked for from then on. */
export async function withoutSignal(
  page: Page,
  context: BrowserContext,
  before: () => Promise<void>,
): Promise<{ readonly server: Served; readonly asked: string[] }> {
  const server = await serve(dist);
  await page.clock.setFixedTime(new Date(morning));
  await page.goto(`${server.origin}/`);
  await copyWhole(page);
  await before();
  await server.stop();
  await context.setOffline(true);
  const asked: string[] = [];
  page.on('request', (request) => asked.push(`${request.method()} ${request.url()} ${request.postData() ?? ''}`));
  await page.goto(`${server.origin}/`);
  return { server, asked };
}
