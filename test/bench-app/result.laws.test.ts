import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { budgetLines } from '../../src/bench/budget.ts';
import { cautionBasis, cautionWords } from '../../src/bench/caution-words.ts';
import { resultAsText } from '../../src/bench/plain-text.ts';
import { readEntries } from '../../src/bench/read-entries.ts';
import { benchResult } from '../../src/bench/result.ts';
import {
  improvementWords,
  recordSentences,
  summarise,
  verdictReasons,
} from '../../src/bench/result-words.ts';
import { waysOf, whyWaysDiffer } from '../../src/bench/ways.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { usableEntries } from './any-entries.ts';

const anySheet: fc.Arbitrary<Sheet> = usableEntries.map((entries) => {
  const { sheet } = readEntries(entries);
  if (sheet === undefined) throw new Error('usable entries: wish a sheet');
  return sheet;
});

describe('the result of any usable sheet', () => {
  it('has words for everything, none of them with a hole in it', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const result = benchResult(sheet);
        const told = [
          ...recordSentences('shown', sheet),
          ...verdictReasons('shown', result),
          summarise(result),
          improvementWords('shown', result) ?? '',
          ...waysOf('shown', result).flatMap((way) => Object.values(way)),
          whyWaysDiffer('shown', result),
          ...budgetLines('shown', result).flatMap((line) => Object.values(line)),
          cautionBasis('shown', sheet, result.chain.result),
          ...cautionWords('shown', { sheet, cautions: result.cautions }).map(({ text }) => text),
          resultAsText(result, 'https://example.org/bench/'),
        ].join('\n');
        expect(told).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
      }),
      { numRuns: 40 },
    );
  });

  // With few degrees of freedom a smaller part can leave a larger coverage factor: Welch and Satterthwaite's formula does that.
  it('is narrower the less wrong the dominant link may be, all uncertainties being well known', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const { chain, improvement } = benchResult(sheet);
        if (improvement === undefined) return;
        const { expanded: now, degreesOfFreedom } = chain.result.propagation;
        fc.pre(degreesOfFreedom === Number.POSITIVE_INFINITY);
        expect(improvement.halvedDb).toBeLessThanOrEqual(now * (1 + 1e-9));
        expect(improvement.perfectDb).toBeLessThanOrEqual(improvement.halvedDb * (1 + 1e-9));
      }),
      { numRuns: 40 },
    );
  });
});
