// Adds up what the last run of `npm test` and `npm run release` reported: `node tests/support/tally.ts`.
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
const statsOf = (name: string): Record<string, unknown> => {
  const stats = read(name)['stats'];
  return typeof stats === 'object' && stats !== null ? { ...stats } : {};
};
const walked = [statsOf('browser'), statsOf('release')];
const sum = (key: string): number => walked.reduce((total, stats) => total + count(stats[key]), 0);

const passed = count(unit['numPassedTests']) + count(site['numPassedTests']) + sum('expected');
const failed = count(unit['numFailedTests']) + count(site['numFailedTests']) + sum('unexpected') + sum('flaky');
console.log(`${passed} passed, ${failed} failed`);
