/** The tests that hold the pure rooms; those of growth and of programs would only take time. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/{sizes,notations,mentions,claims,checks,editor,course-settings}/**/*.test.ts'],
    exclude: ['tests/**/growth.test.ts', 'tests/editor/manifest.test.ts'],
    testTimeout: 60_000,
  },
});
