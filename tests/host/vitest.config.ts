import { defineConfig } from 'vitest/config';

/** Tests in real editors: one after another, with time for a first installation. */
export default defineConfig({
  test: {
    include: ['tests/host/**/*.test.ts'],
    testTimeout: 240_000,
    hookTimeout: 900_000,
    fileParallelism: false,
    // A busy machine can be slower than any wait; what is really broken fails twice.
    retry: process.env.CI ? 1 : 0,
    reporters: ['verbose'],
  },
});
