import { reportOf } from './report.ts';

/** Comparisons, conditions, arithmetic and signs. What else could be turned is text, or takes a whole piece of code away, which any test notices. */
const left = [
  'ArrayDeclaration',
  'ArrowFunction',
  'BlockStatement',
  'CallExpression',
  'MethodExpression',
  'ObjectLiteral',
  'OptionalChaining',
  'Regex',
  'StringLiteral',
];
const isApart = process.env['MUTATED_APART'] === 'yes';

export default {
  testRunner: isApart ? 'vitest' : 'in-process',
  plugins: ['@stryker-mutator/vitest-runner', './tests/mutation/inProcess.ts'],
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false, pool: 'threads' },
  coverageAnalysis: 'perTest',
  concurrency: 1,
  timeoutMS: 8000,
  disableTypeChecks: false,
  tempDirName: 'node_modules/.cache/mutation',
  mutator: { excludedMutations: left },
  ignorePatterns: ['dist*', 'public', '.astro', 'test-results', 'content/drawings', 'src'],
  reporters: ['json', 'dots'],
  jsonReporter: { fileName: reportOf(process.env['MUTATED'] ?? '') },
  warnings: { slow: false },
};
