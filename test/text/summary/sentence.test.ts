import { describe, expect, it } from 'vitest';
import type { Judgement } from '#compute';
import { quantityText } from '../../../src/text/quantity-text.ts';
import { asBbcode, asMarkdown, asPlainText, asUnicodeText } from '../../../src/text/summary/format.ts';
import { line } from '../../../src/text/summary/piece.ts';
import { licenceVerdictWords } from '../../../src/text/words.ts';

describe('a whole sentence within a line', () => {
  const summary = {
    lines: [
      line('readings', 'Lead: ', {
        sentence: (style) =>
          `Trace “across” the load ${quantityText(style, { value: -20.4, decimals: 1, unit: 'Vpp' })}, read again and again until the line is long enough`,
      }),
    ],
    link: undefined,
  };

  it('may break at any space, so that no word is cut', () => {
    expect(asPlainText(summary).split('\n')).toEqual([
      'Lead: Trace "across" the load -20.4 Vpp, read again and again until the',
      '  line is long enough',
    ]);
  });

  it('has the signs of each form, and nothing in it becomes a mark', () => {
    expect(asUnicodeText(summary)).toContain('“across” the load −20.4 Vpp');
    expect(asMarkdown(summary)).toContain('−20\\.4 Vpp');
    expect(asBbcode(summary)).toContain('−20.4 Vpp');
  });
});

it('words the verdict on a licence by its maximum', () => {
  const verdicts: readonly Judgement['verdict'][] = ['inside', 'outside', 'cant-tell'];
  expect(verdicts.map(licenceVerdictWords).every((words) => words.includes("the licence's maximum"))).toBe(
    true,
  );
  expect(licenceVerdictWords('inside')).toMatch(/^not shown to exceed/);
});
