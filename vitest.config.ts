import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['tests/**/*.test.{ts,tsx}'], globalSetup: ['tests/support/build-page.ts'], testTimeout: 120_000, hookTimeout: 120_000 },
});
