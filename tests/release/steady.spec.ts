// What a reader sees stays where it is while a page opens. Lighthouse takes the same sum (Cumulative Layout Shift, web.dev/articles/cls: good is under 0.1),
// but beside times that lean on the machine.
import { expect, test } from '@playwright/test';
import { kinds } from '../browser/missing.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 412, height: 823 }, isMobile: true, hasTouch: true });
/** A tenth of what is called good: a line that moves by its own height on a phone is more. */
const mostShift = 0.01;
/** Pictures, steps and paper are fetched ahead a little behind the page. */
const behindMs = 2500;

for (const { name, address } of kinds)
  test(`${name} stands still while it opens`, async ({ page, context }) => {
    // Whatever is said by time alone to those whose script does not come would be said on a busy machine too.
    const session = await context.newCDPSession(page);
    await session.send('Animation.enable');
    await session.send('Animation.setPlaybackRate', { playbackRate: 0 });
    await page.addInitScript(() => {
      const shifts: string[] = [];
      Object.assign(globalThis, { shifts });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) shifts.push(JSON.stringify(entry));
      }).observe({ type: 'layout-shift', buffered: true });
    });
    await page.goto(address, { waitUntil: 'networkidle' });
    await page.waitForTimeout(behindMs);
    const shifts = await page.evaluate((): readonly string[] => {
      const seen: unknown = Reflect.get(globalThis, 'shifts');
      return Array.isArray(seen) ? seen : [];
    });
    const sum = shifts.reduce((all, each) => all + Number(/"value":([\d.e-]+)/.exec(each)?.[1]), 0);
    expect(sum, shifts.join('\n')).toBeLessThan(mostShift);
  });
