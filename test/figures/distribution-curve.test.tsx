import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { normalDensity } from '#compute';
import { DistributionCurve } from '../../src/figures/DistributionCurve.tsx';
import { CURVE, type CurveFrame } from '../../src/figures/distribution-curve.frame.ts';
import { distributionCurveLayout } from '../../src/figures/distribution-curve.layout.ts';
import type { CurveProps } from '../../src/figures/distribution-curve.types.ts';

const NONE = { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY };
const names = { inside: 'inside', outside: 'outside' };

/** A bell about a level, drawn to four standard deviations, with its 95.45 % interval. */
const bell = (centre: number, u: number, change: Partial<CurveProps> = {}): CurveProps => ({
  frame: 'wide',
  curve: Array.from({ length: 81 }, (_, index) => {
    const z = (index - 40) / 10;
    return { x: centre + z * u, density: normalDensity(z) / u };
  }),
  interval: { lower: centre - 2 * u, upper: centre + 2 * u },
  estimate: centre,
  specification: { lower: 25.5, upper: 28.5 },
  names,
  ...change,
});

const frame = fc.constantFrom<CurveFrame>('wide', 'narrow');
const level = fc.double({ min: -60, max: 60, noNaN: true });
const uncertainty = fc.double({ min: 1e-4, max: 6, noNaN: true });
const limits = fc.constantFrom(
  { lower: 25.5, upper: 28.5 },
  { ...NONE, upper: 27 },
  { ...NONE, lower: 27 },
  { lower: 26.99, upper: 27.01 },
  NONE,
);
const anyProps = fc
  .tuple(frame, level, uncertainty, limits)
  .map(([of, centre, u, specification]) => bell(centre, u, { frame: of, specification }));

const numbersIn = (path: string): number[] => [...path.matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);

describe('the drawing of a distribution', () => {
  it('stays between the ends of its axis, curve, strip, estimate and limits alike', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        const [first, last] = CURVE[props.frame].axis;
        const drawing = distributionCurveLayout(props);
        const xs = [
          ...numbersIn(drawing.line).filter((_, index) => index % 2 === 0),
          drawing.strip.x,
          drawing.strip.x + drawing.strip.width,
          drawing.estimateX,
          ...drawing.limits.map(({ x }) => x),
          ...drawing.ticks.map(({ x }) => x),
        ];
        for (const x of xs) expect(x >= first - 0.02 && x <= last + 0.02).toBe(true);
      }),
    );
  });

  it('has its estimate within its strip, and its curve between ground and top', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        const { strip, estimateX, line } = distributionCurveLayout(props);
        expect(estimateX).toBeGreaterThanOrEqual(strip.x - 0.02);
        expect(estimateX).toBeLessThanOrEqual(strip.x + strip.width + 0.02);
        const ys = numbersIn(line).filter((_, index) => index % 2 === 1);
        expect(Math.min(...ys)).toBe(CURVE.top);
        expect(Math.max(...ys)).toBeLessThanOrEqual(CURVE.ground);
      }),
    );
  });

  it('tells of every limit, on the axis or beyond its end', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        const { lower, upper } = props.specification;
        const told = distributionCurveLayout(props).limits;
        expect(told.map(({ value }) => value)).toEqual([lower, upper].filter(Number.isFinite));
        for (const { value, beyond } of told)
          if (beyond !== undefined) expect(beyond).toBe(value < props.estimate ? 'left' : 'right');
      }),
    );
  });

  it('turns a coordinate back into its level', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        const { scale } = distributionCurveLayout(props);
        expect(scale.invert(scale(props.estimate))).toBeCloseTo(props.estimate, 9);
      }),
    );
  });

  it('has the middle area inside and those beside it outside', () => {
    const { areas } = distributionCurveLayout(bell(27, 1));
    expect(areas.map(({ inside }) => inside)).toEqual([false, true, false]);
    expect(
      distributionCurveLayout(bell(27, 1, { specification: { ...NONE, upper: 27 } })).areas,
    ).toMatchObject([{ inside: true }, { inside: false }]);
    expect(distributionCurveLayout(bell(40, 0.1)).areas).toMatchObject([{ inside: false }]);
  });

  it('writes the numbers of two limits beyond the same end one above the other, else in one line', () => {
    const loweredOf = (centre: number, u: number, specification = { lower: 25.5, upper: 28.5 }) =>
      distributionCurveLayout(bell(centre, u, { specification })).limits.map(({ lowered }) => lowered);
    expect(loweredOf(10, 0.3)).toEqual([true, false]); // both far above
    expect(loweredOf(40, 0.3)).toEqual([false, true]); // both far below
    expect(loweredOf(24, 0.3)).toEqual([true, false]); // one at the end of the axis, one beyond it
    expect(loweredOf(27.1, 0.34)).toEqual([false, false]);
    expect(loweredOf(27, 0.05)).toEqual([false, false]); // one beyond each end
  });

  it('names no zone where a lowered number stands', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        const { limits: drawn, areas } = distributionCurveLayout(props);
        expect(drawn.filter(({ lowered }) => lowered).length).toBeLessThanOrEqual(1);
        const lowered = drawn.find((limit) => limit.lowered);
        if (lowered?.beyond !== undefined || lowered === undefined) return;
        for (const { named, wordX } of areas)
          if (named) expect(Math.abs(wordX - lowered.x)).toBeGreaterThan(20);
      }),
    );
  });

  it('needs a curve of two points or more', () => {
    expect(() => distributionCurveLayout(bell(27, 1, { curve: [{ x: 27, density: 1 }] }))).toThrow(
      /two points/,
    );
  });
});

const STATES: Readonly<Record<string, CurveProps>> = {
  'inside two limits': bell(27.1, 0.34),
  'across the upper limit, narrow': bell(28.3, 0.34, { frame: 'narrow' }),
  'a maximum only': bell(27, 0.5, { specification: { ...NONE, upper: 27.5 } }),
  'a limit beyond the drawing': bell(27, 0.05),
  'limits closer than their numbers, narrow': bell(27, 1, {
    frame: 'narrow',
    specification: { lower: 26.95, upper: 27.05 },
  }),
};
const words = { name: 'The distribution', description: 'What it shows' };
const draw = (props: CurveProps): string => render(<DistributionCurve {...props} {...words} />);

describe('the figure of a distribution', () => {
  it.each(Object.entries(STATES))('is drawn as it was before: %s', (_, props) => {
    expect(draw(props).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('draws finite numbers only, and asks for no style of its own', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        expect(draw(props)).not.toMatch(/NaN|Infinity|undefined| style=/);
      }),
      { numRuns: 40 },
    );
  });

  it('has a name, a description and the unit of its axis', () => {
    const markup = draw(bell(27, 1));
    expect(markup).toContain('>The distribution</title>');
    expect(markup).toContain('>What it shows</desc>');
    expect(markup).toContain('>dBm</text>');
  });

  it('says inside and outside in words and by hatching', () => {
    const markup = draw(bell(27, 1));
    expect([...markup.matchAll(/>(inside|outside)</g)].map(([, word]) => word)).toEqual([
      'outside',
      'inside',
      'outside',
    ]);
    expect([...markup.matchAll(/fill="url\(#/g)]).toHaveLength(2);
  });
});
