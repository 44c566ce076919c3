import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resultAsText, sheetSummary } from '../../src/bench/export/plain-text.ts';
import { drawnCurve } from '../../src/bench/results/drawn-curve.ts';
import type { NumberedPoint } from '../../src/bench/results/point-result.ts';
import { budgetLines } from '../../src/bench/words/budget.ts';
import { cautionsAt, cautionsElsewhere } from '../../src/bench/words/caution-elsewhere.ts';
import { cautionBasis, cautionWords } from '../../src/bench/words/caution-words.ts';
import { sharesSentence, stripSentence, wholeOf } from '../../src/bench/words/distribution-words.ts';
import { recordSentences } from '../../src/bench/words/measured-words.ts';
import { outlierWords } from '../../src/bench/words/outlier-words.ts';
import { pointsInOrder } from '../../src/bench/words/point-order.ts';
import { coverageNote, pointRows, pointsSummary } from '../../src/bench/words/points-words.ts';
import {
  aloneWords,
  expandedWords,
  improvementWords,
  summarise,
} from '../../src/bench/words/result-words.ts';
import { robustnessWords } from '../../src/bench/words/robustness-words.ts';
import { statedForms } from '../../src/bench/words/stated-words.ts';
import { verdictReasons } from '../../src/bench/words/verdict-words.ts';
import { waysOf, whyWaysDiffer } from '../../src/bench/words/ways.ts';
import { asBbcode, asMarkdown, asUnicodeText } from '../../src/text/summary/format.ts';
import { anyComputed, type Computed, numberedOf } from './any-measurement.ts';

/** What must never stand in a text. */
const HOLE = /NaN|Infinity|undefined|null|\[object/;
/** What a number that depends on the method would look like where there is none. */
const LEVEL_WITH_BAND = /dBm ±|dBm \+\/-|U = k/;

const told = (numbered: NumberedPoint): readonly string[] => {
  const { result } = numbered;
  const whole = wholeOf(result);
  return [
    ...verdictReasons('shown', numbered),
    expandedWords('shown', result),
    improvementWords('shown', result) ?? '',
    aloneWords('shown', result) ?? '',
    ...waysOf('shown', result).flatMap((way) => Object.values(way)),
    whyWaysDiffer('shown', result),
    ...(whole === undefined ? [] : [sharesSentence('shown', whole, result)]),
    stripSentence('shown', result),
    ...statedForms('shown', result).map(({ text }) => text),
    ...budgetLines('shown', result).flatMap((line) => Object.values(line).map(String)),
  ];
};

const toldOfAll = ({ measurement, results }: Computed): readonly string[] => {
  const ordered = pointsInOrder('shown', measurement.points, results);
  return [
    pointsSummary(ordered),
    coverageNote('shown', ordered) ?? '',
    ...pointRows('shown', ordered).flatMap((line) => Object.values(line)),
    ...results.flatMap((result) => [
      summarise(result),
      ...recordSentences('shown', result),
      ...outlierWords('shown', result.sheet),
      cautionBasis('shown', result.inRange ? result.result.upper : result.upper),
      ...cautionWords('shown', { sheet: result.sheet, cautions: cautionsAt(result) }).map(({ text }) => text),
      ...cautionsElsewhere(
        'shown',
        result,
        ordered.flatMap(({ label, result: other }) =>
          other === undefined || other === result ? [] : [{ label, result: other }],
        ),
      ).map(({ text }) => text),
    ]),
  ];
};

describe('the result of any usable sheet', () => {
  it('has words for everything, none of them with a hole in it', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        const words = [...toldOfAll(computed), ...numberedOf(computed).flatMap(told)];
        expect(words.join('\n')).not.toMatch(HOLE);
      }),
      { numRuns: 60 },
    );
  });

  it('is copied without a hole in every form, as plain ASCII of at most 72 columns in the first', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        const record = {
          ...computed,
          version: '1.2.3',
          checks: ['A pad of 10 dB moved it by 10.0 dB.'],
          link: 'https://example.org/bench/',
        };
        const text = resultAsText(record);
        expect(text).toMatch(/^[ -~\n]*$/);
        for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(72);
        const summary = sheetSummary(record);
        for (const copied of [text, asUnicodeText(summary), asMarkdown(summary), asBbcode(summary)])
          expect(copied).not.toMatch(HOLE);
      }),
      { numRuns: 40 },
    );
  });

  it('has words for the verdict under other choices', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed).slice(0, 1)) {
          const { lines, says } = robustnessWords('shown', result);
          expect(lines).toHaveLength(6);
          expect([says, ...lines.flatMap((line) => Object.values(line))].join('\n')).not.toMatch(HOLE);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('has a budget whose shares make up the whole variance, one line an input', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed)) {
          const lines = budgetLines('ascii', result);
          expect(lines.map(({ id }) => id)).toEqual(result.chain.model.inputs.map(({ id }) => id));
          const sum = lines.reduce((all, { shareOf }) => all + shareOf, 0);
          const { standardUncertainty } = result.chain.result.propagation;
          expect(sum).toBeCloseTo(standardUncertainty > 0 ? 1 : 0, 9);
        }
      }),
      { numRuns: 60 },
    );
  });

  // With few degrees of freedom a smaller part can leave a larger coverage factor: Welch and Satterthwaite's formula does that.
  it('is narrower the less wrong the dominant part may be, all uncertainties being well known', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed)) {
          const { improvement, chain } = result;
          const { expanded: now, degreesOfFreedom } = chain.result.propagation;
          if (improvement === undefined || degreesOfFreedom !== Number.POSITIVE_INFINITY) continue;
          expect(improvement.halvedDb).toBeLessThanOrEqual(now * (1 + 1e-9));
          expect(improvement.perfectDb).toBeLessThanOrEqual(improvement.halvedDb * (1 + 1e-9));
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is drawn as a curve with an area of one at most, and of nearly one where its tails are short', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed)) {
          const whole = wholeOf(result);
          if (whole === undefined) continue;
          const curve = drawnCurve(whole);
          const [first, second] = curve;
          if (first === undefined || second === undefined) continue;
          const area = curve.reduce((sum, { density }) => sum + density, 0) * (second.x - first.x);
          expect(area).toBeLessThanOrEqual(1 + 1e-6);
          expect(area).toBeGreaterThan(0.95);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('a point whose method is out of range', () => {
  it('has the reason in place of every number that depends on it', () => {
    fc.assert(
      fc.property(anyComputed, ({ measurement, entries, results }) => {
        const out = results.filter(({ inRange }) => !inRange);
        for (const result of out) {
          expect(summarise(result)).toMatch(/^Out of range: /);
          const [line] = pointRows('shown', pointsInOrder('shown', [result.point], [result]));
          expect(line).toMatchObject({ state: 'outOfRange', reason: expect.stringMatching(/^Out of range/) });
        }
        if (out.length === results.length)
          expect(resultAsText({ measurement, entries, results, version: '1.2.3' })).not.toMatch(
            LEVEL_WITH_BAND,
          );
      }),
      { numRuns: 60 },
    );
  });
});
