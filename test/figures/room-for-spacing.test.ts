import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { rulersLayout } from '../../src/figures/rulers.layout.ts';
import { wholeRowOf } from '../../src/sheet/evaluated-pads.ts';
import { LAYS, rowOf, rowSpec } from '../../src/widgets/pads-in-a-row/spec.ts';
import { figureWords as rowWords } from '../../src/widgets/pads-in-a-row/words.ts';
import { statedSpec } from '../../src/widgets/stated/spec.ts';
import { figureWords as statedWords } from '../../src/widgets/stated/words.ts';
import { anyState } from '../address/any-state.ts';
import { rulerStates } from './ruler-states.ts';

/**
 * So many letters go across the narrow figure at 320 pixels where they are spaced as WCAG 1.4.12 lets a reader have them: 40 were found cut
 * off in a browser, 39 were not.
 */
const MOST_LETTERS = 39;

describe('words across a narrow figure', () => {
  const fits = (words: Readonly<Record<string, string>>): void => {
    for (const text of Object.values(words)) expect(text.length, text).toBeLessThanOrEqual(MOST_LETTERS);
  };

  it.each(LAYS)('leave room for spacing whatever is set: pads in a row, %s', (lay) => {
    const whole = wholeRowOf(rowOf(defaultState(rowSpec(lay).fields)));
    fc.assert(
      fc.property(anyState(rowSpec(lay).fields), (state) => {
        fits(rowWords(lay, state, whole));
        fits(rowWords(lay, state, undefined));
      }),
    );
  });

  it('leave room for spacing whatever is set: a stated tolerance', () => {
    fc.assert(fc.property(anyState(statedSpec.fields), (state) => fits(statedWords(state))));
  });
});

describe('numbers of rulers', () => {
  /** About how wide a letter is, as a share of its size, with the distance to the next (0.12) and what a space takes more (0.16). */
  const widthOf = (text: string, size: number): number =>
    size * (0.56 * text.length + 0.12 * text.length + 0.16 * (text.match(/\s/g)?.length ?? 0));

  it.each(Object.keys(rulerStates))('end within their figure where they are spaced: %s', (name) => {
    const figure = rulerStates[name]?.();
    if (figure === undefined) throw new Error(`wish a named state, got ${name}`);
    for (const frame of ['wide', 'narrow'] as const) {
      const { rulers, measures } = rulersLayout({ ...figure, frame });
      for (const { ticks } of rulers)
        for (const { x, text, named } of ticks)
          if (named)
            expect(x + widthOf(text, measures.fontSize) / 2, text).toBeLessThanOrEqual(measures.width + 1);
    }
  });
});
