import { expect, it } from 'vitest';
import packageData from '../../package.json' with { type: 'json' };
import { auditLine } from '../support/auditLine.ts';

const answer = (total: number, vulnerabilities: object) =>
  JSON.stringify({ auditReportVersion: 2, vulnerabilities, metadata: { vulnerabilities: { total }, dependencies: { prod: 312 } } });

it('tells a clean answer, one with faults, and none, from one another', () => {
  expect(auditLine(answer(0, {}))).toEqual({ is: 'clean', line: 'npm audit: no known fault in 312 packages' });
  expect(auditLine(answer(1, { preact: { severity: 'high' } }))).toEqual({ is: 'faulty', line: 'npm audit: known faults: preact (high)' });
  for (const none of ['', '<html>', '{"error":{"summary":""}}', '{"message":"405 Method Not Allowed"}', '{"metadata":{}}'])
    expect(auditLine(none).is, none).toBe('unanswered');
  expect(auditLine('{"message":"405 Method Not Allowed"}').line).toContain('NOT LOOKED UP, the registry did not answer (405 Method Not Allowed)');
});

it('is asked for at every release', () => {
  expect(packageData.scripts.audit).toBe('node tests/tools/audit.ts');
  expect(packageData.scripts.release).toMatch(/^npm run --silent audit && /);
});
