import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root,
  cacheDir: '.cache/vitest',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    environment: 'node',
    // Files share a loaded module: loading the sources afresh for each of 500 files took twice as long as the tests.
    // So a test puts back what it changes. `npm run unit -- --isolate` tells whether one leans on another.
    isolate: false,
    maxWorkers: 2,
    setupFiles: ['test/setup.ts'],
    testTimeout: 60_000, // a busy machine is slow; nothing here proves speed
    hookTimeout: 60_000,
    expect: { poll: { timeout: 30_000 } },
    include: ['test/**/*.test.{ts,tsx}'],
    exclude: ['test/browser/**'],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.{ts,tsx}'],
      reportsDirectory: '.reports/coverage',
      reporter: ['text-summary', 'json-summary'],
    },
  },
});
