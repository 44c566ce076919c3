import { describe, expect, it } from 'vitest';
import type { Check, Figure } from '../../src/checks/check.ts';
import { chapters } from '../../src/checks/index.ts';
import { outcomeOf, outcomeOfExact } from '../../src/checks/outcome.ts';

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
          it(`${check.clause}: ${check.title}`, () => {
            expect(check.figures.length).toBeGreaterThan(0);
            expect(broken(check)).toEqual([]);
          });
        }
      });
    }
  });
}
