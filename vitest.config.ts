import { defineConfig } from 'vitest/config';

/** Time for a browser or an outside reader on a busy machine, milliseconds. */
const PATIENCE = { testTimeout: 120_000, hookTimeout: 120_000 };

export default defineConfig({
  test: {
    globalSetup: ['tests/support/build-once.ts'],
    // One of two cores would stand idle.
    maxWorkers: '100%',
    projects: [
      // What touches no page leaves nothing behind, and loads the core once for all.
      { extends: true, test: { name: 'core', include: ['tests/**/*.test.ts'], exclude: ['tests/window/**'], isolate: false, ...PATIENCE } },
      // A stood-in page is a world of its own.
      { extends: true, test: { name: 'window', include: ['tests/window/**/*.test.{ts,tsx}'], ...PATIENCE } },
    ],
  },
});
