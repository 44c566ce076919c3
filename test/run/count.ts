import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/** How many checks of a step held, and how many did not. */
export interface Counts {
  readonly passed: number;
  readonly failed: number;
}

/** `one`: the step itself is the check; otherwise the runner whose report is read. */
export type Kind = 'one' | 'vitest' | 'site' | 'playwright';

const files = { vitest: 'unit.json', site: 'site.json', playwright: 'browser.json' } as const;
const fileOf = (kind: keyof typeof files, root: string): string => join(root, '.reports', files[kind]);

/** A test that is skipped or left to do proves nothing: it counts as failed. */
const readers: Record<Exclude<Kind, 'one'>, (report: Record<string, unknown>) => Counts> = {
  vitest: (report) => ({
    passed: Number(report.numPassedTests),
    failed: Number(report.numFailedTests) + Number(report.numPendingTests) + Number(report.numTodoTests),
  }),
  site: ({ passed, failed }) => ({ passed: Number(passed), failed: Number(failed) }),
  playwright: ({ stats }) => {
    const { expected, unexpected, flaky, skipped } = stats as Record<string, number>;
    return { passed: expected ?? 0, failed: (unexpected ?? 0) + (flaky ?? 0) + (skipped ?? 0) };
  },
};

/** Takes away the report of an earlier run, so that it is not counted for this one. */
export function forget(kind: Kind, root: string): void {
  if (kind !== 'one') rmSync(fileOf(kind, root), { force: true });
}

/**
 * Counts of a step that ended well or not; a runner that leaves no report, or one without its numbers, fails otherwise or finds no test
 * has failed once.
 */
export function count(kind: Kind, endedWell: boolean, root: string): Counts {
  if (kind === 'one') return endedWell ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
  const file = fileOf(kind, root);
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const { passed, failed } = readers[kind](JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>);
  if (!Number.isInteger(passed) || !Number.isInteger(failed)) return { passed: 0, failed: 1 };
  const broken = failed === 0 && (!endedWell || passed === 0);
  return { passed, failed: broken ? 1 : failed };
}
