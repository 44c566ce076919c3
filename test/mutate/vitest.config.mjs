import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';

/** Tests and mutants live in one process: vitest lends its `expect` and its loader. */
export default defineConfig({
  root: import.meta.dirname,
  cacheDir: resolve(import.meta.dirname, '../../.cache/vitest'),
  test: { include: ['step.mjs'], pool: 'forks', maxWorkers: 1, isolate: false },
});
