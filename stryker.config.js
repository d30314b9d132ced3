/**
 * Mutation testing: small faults are put into a room of the house one by one, and the tests must notice each.
 * `npm run mutation` does the smallest room; another one: `npm run mutation -- --mutate 'server/src/checks/*.ts'`.
 * @type {import('@stryker-mutator/core').PartialStrykerOptions}
 */
export default {
  mutate: ['server/src/sizes/**/*.ts'],
  // Its rewriting of the compiler's settings needs an interface that the compiler no longer has; nothing here needs it.
  tsconfigFile: 'none',
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'tests/hardening/mutation.vitest.config.ts' },
  coverageAnalysis: 'perTest',
  concurrency: 1,
  // Faults that no test needs to see: values frozen at loading time would start every test anew.
  ignoreStatic: true,
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: 'artifacts/mutation.json' },
  tempDirName: '.cache/mutation',
  ignorePatterns: ['artifacts', 'dist', '*.vsix', 'tests/host', '.cache', 'client/media'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  thresholds: { high: 90, low: 80, break: null },
};
