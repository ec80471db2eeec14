// Adds up what the last run of `npm test` reported: `node tests/support/tally.ts`.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './files.ts';

const reports = join(root, 'node_modules/.cache/tests');
const read = (name: string): Record<string, unknown> => {
  const file = join(reports, `${name}.json`);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
};
const count = (value: unknown): number => (typeof value === 'number' ? value : 0);

const unit = read('unit');
const site = read('site');
const stats = read('browser')['stats'];
const browser: Record<string, unknown> = typeof stats === 'object' && stats !== null ? { ...stats } : {};

const passed = count(unit['numPassedTests']) + count(site['numPassedTests']) + count(browser['expected']);
const failed = count(unit['numFailedTests']) + count(site['numFailedTests']) + count(browser['unexpected']) + count(browser['flaky']);
console.log(`${passed} passed, ${failed} failed`);
