import { describe, expect, it } from 'vitest';
import type { Check, Figure } from '../../src/checks/check.ts';
import { chapters } from '../../src/checks/index.ts';
import { outcomeOf, outcomeOfExact } from '../../src/checks/outcome.ts';
import { checksOf, summaryOf } from '../../src/checks/summary.ts';

/** A simulation of a few hundred thousand trials may take its time on a busy machine. */
const PATIENCE_MS = 60_000;

/** One line on a figure, so that a failure shows every number at once. */
function told(figure: Figure): string {
  const { printed, computed, allowed } = outcomeOf(figure);
  return `${figure.what}: printed ${printed}, computed ${computed}, may differ by ${allowed}`;
}

/** Figures that do not do what the check says: agree with print, or differ from it and agree with the exact value. */
function broken({ figures }: Check): string[] {
  return figures
    .filter((figure) => {
      const exact = outcomeOfExact(figure);
      const { agrees } = outcomeOf(figure);
      return exact ? agrees || !exact.agrees : !agrees;
    })
    .map(told);
}

for (const { title, sources } of chapters()) {
  describe(title, () => {
    for (const { name, checks } of sources) {
      describe(name, () => {
        for (const check of checks) {
          it(`${check.clause}: ${check.title}`, { timeout: PATIENCE_MS }, () => {
            expect(check.figures.length).toBeGreaterThan(0);
            expect(broken(check)).toEqual([]);
          });
        }
      });
    }
  });
}

describe('all checks together', () => {
  it('leave nothing open', { timeout: PATIENCE_MS }, () => {
    const sum = summaryOf(checksOf(chapters()));
    expect(sum.open).toBe(0);
    expect(sum.agreeing + sum.explained).toBe(sum.figures);
  });
});
