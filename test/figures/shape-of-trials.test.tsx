import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { Shape } from '../../src/figures/Shape.tsx';
import type { ShapeFrame } from '../../src/figures/shape.frame.ts';
import type { ShapeProps } from '../../src/figures/shape.layout.ts';
import { foundMeanOf } from '../../src/sheet/evaluated-readings.ts';
import { triedOf } from '../../src/sheet/tried.ts';
import { clubTry, TRIED, type TryOrder } from '../../src/sheet/tries.ts';
import { figureOf as readingsFigure } from '../../src/widgets/few-readings/figure.ts';
import { type ReadingsState, readingsSpec, repeatedOf } from '../../src/widgets/few-readings/spec.ts';
import { strings as readingsStrings } from '../../src/widgets/few-readings/strings.ts';
import { axesOf, figureOf as triesFigure } from '../../src/widgets/tries/figure.ts';
import { drawnTexts, letterSize, outsideOf, touching } from './drawn-text.ts';

const FRAMES = ['wide', 'narrow', 'stage'] as const satisfies readonly ShapeFrame[];
const SIZES: Readonly<Record<(typeof FRAMES)[number], string>> = {
  wide: '.plot text',
  narrow: '.plot-narrow text',
  stage: '.plot-stage text',
};

interface Named {
  readonly figure: Omit<ShapeProps, 'frame'>;
  readonly words: { readonly up: string; readonly along: string };
}

const ofTrials = (change: Partial<TryOrder>): Named => {
  const order = { ...clubTry(), trials: '1000', ...change } as const;
  return { figure: triesFigure(triedOf(order), 'symmetric'), words: axesOf(order) };
};
function ofReadings(change: Partial<ReadingsState>): Named {
  const state = { ...defaultState(readingsSpec.fields), ...change };
  return { figure: readingsFigure(foundMeanOf(repeatedOf(state))), words: readingsStrings.axes };
}
const draw = ({ figure, words }: Named, frame: ShapeFrame): string =>
  render(<Shape frame={frame} {...figure} words={words} name="The" description="It" />);

const states: readonly Named[] = [
  ...TRIED.map((model) => ofTrials({ model })),
  ofTrials({ model: 'loss', reflection: 50 }),
  ofTrials({ model: 'phase', order: 'second' }),
  ofTrials({ voltsPercent: 25, ohmsPercent: 25 }),
  ...[1, 2, 3, 10].map((count) => ofReadings({ count })),
  ofReadings({ count: 2, known: 'pooled', limits: 1 }),
  ofReadings({ count: 10, limits: 0.05 }),
];

describe.each(FRAMES)('trials and readings as shapes, %s', (frame) => {
  it('never have letters written into each other or cut off', () => {
    const size = letterSize(SIZES[frame]);
    for (const state of states) {
      const markup = draw(state, frame);
      const texts = drawnTexts(markup, { size });
      expect(texts.length).toBeGreaterThan(5);
      expect(touching(texts)).toEqual([]);
      expect(outsideOf(markup, texts, 14)).toEqual([]);
    }
  });

  it('draw finite numbers only, and have no knob', () => {
    for (const state of states) {
      expect(draw(state, frame)).not.toMatch(/NaN|Infinity|undefined| style=/);
      expect(draw(state, frame)).not.toContain('data-handle');
    }
  });

  it('draw an interval without width as one mark, and any other as an outline', () => {
    const certain = draw(ofTrials({ model: 'loss' }), frame);
    expect(certain).toContain('plot-mark plot-limit');
    expect(certain).not.toContain('<rect class="plot-mark plot-rms"');
    const usual = draw(ofTrials({}), frame);
    expect(usual).toContain('<rect class="plot-mark plot-rms"');
    expect(usual).not.toContain('plot-mark plot-limit');
  });
});
