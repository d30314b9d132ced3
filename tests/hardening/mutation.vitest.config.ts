/** The tests that hold the pure rooms; those of growth and of programs would only take time. */
import { defineConfig } from 'vitest/config';

/**
 * Folders and files of tests that are run; fewer make a room quicker:
 * MUTATION_TESTS='sizes,editor/sheets.test.ts' npm run mutation -- --mutate server/src/sizes/sheet/table.ts.
 */
const asked = process.env.MUTATION_TESTS ?? 'sizes,mentions,claims,checks,editor,course-settings';

export default defineConfig({
  test: {
    include: asked
      .split(',')
      .map((one) => (one.endsWith('.ts') ? `tests/${one}` : `tests/${one}/**/*.test.ts`)),
    setupFiles: ['tests/hardening/mutation.setup.ts'],
    exclude: ['tests/**/growth.test.ts', 'tests/editor/manifest.test.ts'],
    // Long, or a busy machine would be taken for a test that noticed.
    testTimeout: 600_000,
  },
});
