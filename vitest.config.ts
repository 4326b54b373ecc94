import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 60_000,
    typecheck: { enabled: false },
    coverage: { provider: 'v8', include: ['src/**/*.ts'] },
  },
});
