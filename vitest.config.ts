import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/host/**'],
    setupFiles: ['tests/support/seed.ts'],
    testTimeout: 240_000,
    // Nothing outside the test's own folders is written.
    env: { SIZEWRIGHT_CODE_CACHE: 'off' },
    coverage: {
      provider: 'v8',
      // The pure rooms below the editor. Programs run as processes of their own, which no counter sees.
      include: ['server/src/{sizes,notes,mentions,claims,checks,course}/**/*.ts', 'grammars/notations/*.ts'],
      reporter: ['text-summary', 'json-summary'],
      reportsDirectory: 'artifacts/coverage',
      // As measured, less a little: coverage may rise and not fall.
      thresholds: { lines: 98.5, statements: 97.5, functions: 98.5, branches: 95 },
    },
  },
});
