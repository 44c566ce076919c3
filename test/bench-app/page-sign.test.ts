import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { budgetLines } from '../../src/bench/words/budget.ts';
import { cautionsAt } from '../../src/bench/words/caution-elsewhere.ts';
import { cautionBasis, cautionWords } from '../../src/bench/words/caution-words.ts';
import { demandText, measurandText, recordSentences } from '../../src/bench/words/measured-words.ts';
import { pointsInOrder } from '../../src/bench/words/point-order.ts';
import { pointRows } from '../../src/bench/words/points-words.ts';
import { readingSentences } from '../../src/bench/words/reading-words.ts';
import { expandedWords, improvementWords } from '../../src/bench/words/result-words.ts';
import { robustnessWords } from '../../src/bench/words/robustness-words.ts';
import { titleOf } from '../../src/bench/words/shown-title.ts';
import { statedForms } from '../../src/bench/words/stated-words.ts';
import { verdictReasons } from '../../src/bench/words/verdict-words.ts';
import { waysOf, whyWaysDiffer } from '../../src/bench/words/ways.ts';
import type { Style } from '../../src/text/style.ts';
import { inPage } from '../../src/widgets/parts/shown-in-page.ts';
import { anyComputed, type Computed, numberedOf } from './any-measurement.ts';
import { firstNumber, typedMeasurement } from './typed-sheet.ts';

/** Every text in what a function of the style gives. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** In a list of whole numbers either mark will do. */
const listed = (text: string): string => text.replaceAll(/; (?=[\u2212\d])/g, ', ');

/** What the page says of a sheet, in one style. */
const saidOf = ({ measurement, results }: Computed, style: Style): readonly string[] =>
  textsIn([
    results.map(({ sheet, point }) => [readingSentences(style, sheet, 3), demandText(style, point)]),
    pointRows(style, pointsInOrder(style, measurement.points, results)),
    numberedOf({ measurement, results, entries: {} as never }).map((shown) => [
      budgetLines(style, shown.result),
      cautionBasis(style, undefined),
      expandedWords(style, shown.result),
      improvementWords(style, shown.result),
      robustnessWords(style, shown.result),
      statedForms(style, shown.result),
      verdictReasons(style, shown),
      waysOf(style, shown.result),
      whyWaysDiffer(style, shown.result),
    ]),
  ]);

describe('what the bench shows to a reader of the comma', () => {
  it('is number by number what the style with a comma writes, whatever the sheet', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        const shown = saidOf(computed, 'shown').map(inPage).map(listed);
        expect(shown).toEqual(saidOf(computed, 'shown-comma').map(listed));
      }),
      { numRuns: 25 },
    );
  });

  it('says a frequency once, whichever sign the conditions have it with', () => {
    for (const conditions of ['3.58 MHz, key down', '3,58 MHz, key down'])
      for (const style of ['shown', 'unicode-comma'] as const) {
        const { sheet } = firstNumber({ sheet: { conditions } });
        expect(measurandText(style, sheet, 3.58e6)).toMatch(/; 3[.,]58 MHz, key down\.$/);
      }
  });

  it('has a frequency that names a point with it, and a point’s own name as it was typed', () => {
    const measurement = typedMeasurement({
      points: [
        { readings: '7', frequency: '3.58' },
        { readings: '7', label: 'at 7.03' },
      ],
    });
    expect(measurement.points.map((point) => inPage(titleOf(measurement, point)))).toEqual([
      expect.stringMatching(/^A transmitter, 3,58\sMHz$/),
      'A transmitter, \u2068at 7.03\u2069',
    ]);
    const [first] = measurement.points;
    if (first === undefined) throw new Error('points: wish one');
    expect(titleOf({ title: 'Version 1.5', points: [first] }, first)).toBe('\u2068Version 1.5\u2069');
  });

  it('has the reader’s names as they were typed, and the conditions as the sentence that they stand in', () => {
    const shown = firstNumber({
      sheet: { conditions: 'key down, 12.0 V' },
      links: [{ label: 'Pad 1.5', kind: 'pad', loss: '20', amount: '0.5' }],
      points: [{ label: 'at 7.03', readings: '7' }, { readings: '7.5' }],
    });
    expect(inPage(recordSentences('shown', shown).join(' '))).toContain('key down, 12,0 V');
    const [row] = budgetLines('shown', shown.result);
    expect([row?.label, row?.stated].map((text) => inPage(`${text}`))).toEqual([
      '\u2068Pad 1.5\u2069',
      '±0,5\u00a0dB, limits',
    ]);
    const cautions = cautionWords('shown', { sheet: shown.sheet, cautions: cautionsAt(shown) });
    expect(cautions.map(({ text }) => inPage(text)).join(' ')).toMatch(/\u2068Pad 1\.5\u2069: gets \d/);
  });
});
