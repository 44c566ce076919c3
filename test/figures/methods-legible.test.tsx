import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { LineBand, type LineBandWords } from '../../src/figures/LineBand.tsx';
import type { LineBandProps } from '../../src/figures/line-band.layout.ts';
import { figureOf as heatFigure } from '../../src/widgets/dc-heat/figure.ts';
import { type HeatFields, heatSpec } from '../../src/widgets/dc-heat/spec.ts';
import { strings as heatStrings } from '../../src/widgets/dc-heat/strings.ts';
import { figureOf as inLineFigure } from '../../src/widgets/in-line/figure.ts';
import { type InLineFields, inLineSpec } from '../../src/widgets/in-line/spec.ts';
import { strings as inLineStrings } from '../../src/widgets/in-line/strings.ts';
import { figureOf as padsFigure } from '../../src/widgets/pads-line/figure.ts';
import { type PadsFields, padsSpec } from '../../src/widgets/pads-line/spec.ts';
import { strings as padsStrings } from '../../src/widgets/pads-line/strings.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';
import { drawnTexts, letterSize, outsideOf, touching } from './drawn-text.ts';

const FRAMES = ['wide', 'narrow'] as const;
type Frame = (typeof FRAMES)[number];
const sizeOf = (frame: Frame): number => letterSize(frame === 'narrow' ? '.plot-narrow text' : '.plot text');
/** The least margin of the page: so far the numbers at the ends of an axis may reach out of their figure. */
const MARGIN = 0.9 * 16;

const drawn = (frame: Frame, figure: Omit<LineBandProps, 'frame'>, words: LineBandWords): string =>
  render(
    <LineBand frame={frame} {...figure} words={words} name="The figure" description="What it shows" handle />,
  );

/** Nothing is written into anything else, nothing is cut off, and no coordinate is missing. */
function expectLegible(markup: string, frame: Frame): void {
  const texts = drawnTexts(markup, { size: sizeOf(frame) });
  expect(texts.length).toBeGreaterThan(4);
  expect(touching(texts)).toEqual([]);
  expect(outsideOf(markup, texts, MARGIN)).toEqual([]);
  expect(markup).not.toMatch(/NaN|Infinity|undefined/);
}

describe.each(FRAMES)('what is written in the %s figure of', (frame) => {
  const line = defaultState(padsSpec.fields);
  it.each([
    {},
    { source: 2, meter: 1.25, pad: 6, reading: 10 },
    { source: 5, meter: 2, padSwr: 1.5, pad: 0 },
    { source: 1, meter: 1, padSwr: 1 },
  ])('a line through a pad can be read: %o', (change) => {
    const state = fieldsState<PadsFields>({ ...line, ...change });
    expectLegible(drawn(frame, padsFigure(state), padsStrings.axes), frame);
  });

  const meter = defaultState(inLineSpec.fields);
  it.each([
    {},
    { scale: 20, forward: 3 },
    { scale: 100, percent: 0 },
    { percent: 10, scale: 7, forward: 20 },
  ])('a meter in the line can be read: %o', (change) => {
    const state = fieldsState<InLineFields>({ ...meter, ...change });
    expectLegible(drawn(frame, inLineFigure(state), inLineStrings.axes), frame);
  });

  const load = defaultState(heatSpec.fields);
  it.each([
    {},
    { waitedRf: 1, timeConstant: 20 },
    { riseRf: 1, riseDc: 1, within: 0.5 },
    { room: 0.9, waitedDc: 5 },
  ])('a load that is warmed twice can be read: %o', (change) => {
    const state = fieldsState<HeatFields>({ ...load, ...change });
    expectLegible(drawn(frame, heatFigure(state), heatStrings.axes), frame);
  });
});
