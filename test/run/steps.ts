import type { Kind } from './count.ts';

export interface Step {
  readonly name: string;
  /** A program of `node_modules/.bin`, or a script of the project, with its arguments. */
  readonly command: readonly string[];
  readonly kind: Kind;
  /** What it runs by itself on as many processors as there are: nothing else runs meanwhile. Other steps use one, and run two by two. */
  readonly alone?: true;
  /** Steps without whose result this one has nothing to look at. */
  readonly needs?: readonly string[];
  /** Lines of the runner's summary that are shown when all is well. */
  readonly shown: number;
}

const unit = ['vitest', 'run', '--config', 'test/vitest.config.ts'];
const unitReport = ['--reporter=dot', '--reporter=json', '--outputFile.json=.reports/unit.json'];

/** The whole proof, in the order in which a mistake shows soonest; two that use one processor stand beside each other. */
export const steps: readonly Step[] = [
  {
    name: 'types',
    command: ['src/build/astro.mjs', 'check', '--minimumFailingSeverity', 'hint'],
    kind: 'one',
    shown: 4,
  },
  { name: 'build', command: ['src/build/astro.mjs', 'build', '--silent'], kind: 'one', shown: 0 },
  { name: 'compute alone', command: ['tsc', '-p', 'test/tsconfig.compute.json'], kind: 'one', shown: 0 },
  { name: 'lint', command: ['biome', 'check', '--error-on-warnings', '.'], kind: 'one', shown: 1 },
  { name: 'build under a base path', command: ['test/site/under-base.mjs'], kind: 'one', shown: 0 },
  { name: 'build again', command: ['test/site/build-again.mjs'], kind: 'one', needs: ['build'], shown: 1 },
  { name: 'unit', command: [...unit, ...unitReport], kind: 'vitest', alone: true, shown: 5 },
  {
    name: 'site',
    command: ['test/site/check.mjs'],
    kind: 'site',
    needs: ['build', 'build under a base path'],
    shown: 400,
  },
  {
    name: 'browser',
    command: ['test/browser/run.mjs'],
    kind: 'playwright',
    alone: true,
    needs: ['build', 'build under a base path'],
    shown: 2,
  },
];
