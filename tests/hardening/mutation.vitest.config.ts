/** The tests that hold the pure rooms; those of growth and of programs would only take time. */
import { defineConfig } from 'vitest/config';

/** Folders of tests that are run; fewer make a room quicker: MUTATION_TESTS='sizes,editor' npm run mutation. */
const folders = process.env.MUTATION_TESTS ?? 'sizes,notations,mentions,claims,editor,course-settings';

export default defineConfig({
  test: {
    include: [`tests/{${folders},none}/**/*.test.ts`],
    setupFiles: ['tests/hardening/mutation.setup.ts'],
    exclude: ['tests/**/growth.test.ts', 'tests/editor/manifest.test.ts'],
    testTimeout: 60_000,
  },
});
