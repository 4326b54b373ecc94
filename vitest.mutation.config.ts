import { defineConfig } from 'vitest/config';

// A room's mutants are put to that room's own tests: quick, and stricter than asking the whole suite.
export default defineConfig({
  test: {
    include: [`tests/${process.env.ROOM ?? '*'}/**/*.test.ts`],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 60_000,
  },
});
