import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The tests that the mutants of the computation face: its own, the published values and the second opinions. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    environment: 'node',
    setupFiles: ['test/setup.ts'],
    testTimeout: 60_000,
    include: ['test/{compute,published,golden,oracle}/**/*.test.ts'],
  },
});
