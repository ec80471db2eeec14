// Adds up what the last run of `npm test` and `npm run release` reported: `node tests/support/tally.ts`.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { JSONReport, JSONReportSuite } from '@playwright/test/reporter';
import { root } from './files.ts';

const reports = join(root, 'node_modules/.cache/tests');
function read<Report>(name: string): Partial<Report> {
  const file = join(reports, `${name}.json`);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
}
type UnitReport = { readonly numPassedTests: number; readonly numFailedTests: number };
const units = ['unit', 'site'].map((name) => read<UnitReport>(name));
const walked = ['browser', 'release'].map((name) => read<JSONReport>(name));
const sum = (counts: readonly (number | undefined)[]): number => counts.reduce<number>((total, each) => total + (each ?? 0), 0);
const secondTries = ({ title, specs, suites }: JSONReportSuite): string[] => [
  ...specs.filter((spec) => spec.tests.some((each) => each.status === 'flaky')).map((spec) => `${title}: ${spec.title}`),
  ...(suites ?? []).flatMap(secondTries),
];

for (const each of walked.flatMap((report) => report.suites ?? []).flatMap(secondTries)) console.log(`passed only at the second try: ${each}`);
const passed = sum([...units.map((each) => each.numPassedTests), ...walked.flatMap(({ stats }) => [stats?.expected, stats?.flaky])]);
const failed = sum([...units.map((each) => each.numFailedTests), ...walked.map(({ stats }) => stats?.unexpected)]);
console.log(`${passed} passed, ${failed} failed`);
