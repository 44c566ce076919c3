import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { lineBandMeasures } from '../../src/figures/line-band.frame.ts';
import { Residuals } from '../../src/figures/Residuals.tsx';
import { type ResidualsProps, residualsLayout } from '../../src/figures/residuals.layout.ts';

const number = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const half = fc.double({ min: 0, max: 2, noNaN: true });

const anyResiduals: fc.Arbitrary<ResidualsProps> = fc
  .record({
    frame: fc.constantFrom('wide' as const, 'narrow' as const, 'stage' as const),
    whole: fc.boolean(),
    lower: number(50),
    width: fc.double({ min: 0.5, max: 60, noNaN: true }),
    ys: fc.array(fc.tuple(number(3), half), { minLength: 1, maxLength: 12 }),
    band: half,
  })
  .map(({ frame, whole, lower, width, ys, band }) => {
    const x = (index: number): number => lower + (width * (index + 0.5)) / ys.length;
    return {
      frame,
      whole,
      domain: { lower, upper: lower + width },
      band: [lower, lower + width].map((at) => ({ x: at, lower: -band, upper: band })),
      points: ys.map(([y, of], index) => ({ x: x(index), y, half: of })),
      dots: ys.map(([y], index) => ({ x: x(index), y: y / 2 })),
    };
  });

const rounds: ResidualsProps = {
  frame: 'wide',
  domain: { lower: 0.5, upper: 3.5 },
  whole: true,
  band: [
    { x: 0.5, lower: -0.05, upper: 0.05 },
    { x: 3.5, lower: -0.05, upper: 0.05 },
  ],
  points: [
    { x: 1, y: 0.06, half: 0.1 },
    { x: 2, y: -0.06, half: 0.03 },
    { x: 3, y: 0, half: 0 },
  ],
  dots: [],
};

describe('what a correction leaves over', () => {
  it('lies on the plot, whatever it is', () => {
    fc.assert(
      fc.property(anyResiduals, (props) => {
        const { measures, points, dots, along, up } = residualsLayout(props);
        const [left, right] = measures.across;
        const [top, bottom] = measures.down;
        for (const { x, y } of [
          ...points,
          ...dots.map((dot) => ({ ...dot, x: dot.x - 2 * measures.dotRadius })),
        ]) {
          expect(x).toBeGreaterThanOrEqual(left - 0.01);
          expect(x).toBeLessThanOrEqual(right + 0.01);
          expect(y).toBeGreaterThanOrEqual(top - 0.01);
          expect(y).toBeLessThanOrEqual(bottom + 0.01);
        }
        for (const { place } of along) expect(place >= left - 0.01 && place <= right + 0.01).toBe(true);
        for (const { place } of up) expect(place >= top - 0.01 && place <= bottom + 0.01).toBe(true);
      }),
    );
  });

  it('stands above nothing where it is positive, and the more so the larger it is', () => {
    fc.assert(
      fc.property(anyResiduals, (props) => {
        const { points, zeroY } = residualsLayout(props);
        points.forEach(({ y }, index) => {
          const value = props.points[index]?.y ?? 0;
          if (value > 0) expect(y).toBeLessThanOrEqual(zeroY);
          if (value < 0) expect(y).toBeGreaterThanOrEqual(zeroY);
        });
      }),
    );
  });

  it('has its bars as far up as down, and none where there is no drift', () => {
    const { points } = residualsLayout(rounds);
    const [top, bottom] = [...(points[0]?.bar.matchAll(/M[\d.]+ ([\d.]+)H/g) ?? [])].map(([, y]) =>
      Number(y),
    );
    expect((top ?? 0) + (bottom ?? 0)).toBeCloseTo(2 * (points[0]?.y ?? 0), 1);
    expect(points[2]?.bar).toBe('');
  });

  it('counts rounds in whole numbers only', () => {
    const { along, decimals } = residualsLayout(rounds);
    expect(along.map(({ value }) => value)).toEqual([1, 2, 3]);
    expect(decimals.along).toBe(0);
    const places = residualsLayout({ ...rounds, whole: false });
    expect(places.along.map(({ value }) => value)).toContain(1.5);
  });

  it('closes its strip, and draws none where there is none', () => {
    const { down } = lineBandMeasures('wide');
    const { band } = residualsLayout(rounds);
    expect(band).toMatch(/^M[\d. L]+Z$/);
    const ys = [...band.matchAll(/[ML][\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y));
    expect(ys[0]).toBeCloseTo(down[0] + down[1] - (ys[3] ?? 0), 1);
    expect(residualsLayout({ ...rounds, band: [] }).band).toBe('');
  });

  it('needs a domain with a width', () => {
    expect(() => residualsLayout({ ...rounds, domain: { lower: 1, upper: 1 } })).toThrow('need a width');
  });
});

describe('its figure', () => {
  const words = { up: 'dB: left over', along: 'round' };
  const draw = (props: ResidualsProps): string =>
    render(<Residuals {...props} words={words} name="Left over" description="Three rounds" />);

  it.each([
    ['wide', rounds],
    ['narrow', { ...rounds, frame: 'narrow' as const }],
    [
      'places with single rounds',
      {
        ...rounds,
        whole: false,
        dots: [
          { x: 1.2, y: 0.02 },
          { x: 2.2, y: -0.03 },
        ],
      },
    ],
  ])('is drawn as it was before: %s', (_, props) => {
    expect(draw(props).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('has a circle a point, a dot a value, and names both axes once', () => {
    fc.assert(
      fc.property(anyResiduals, (props) => {
        const markup = draw(props);
        expect(markup.match(/class="plot-point"/g)).toHaveLength(props.points.length);
        expect(markup.match(/class="plot-dot"/g)).toHaveLength(props.dots.length);
        expect(markup.match(/dB: left over/g)).toHaveLength(1);
        expect(markup).not.toMatch(/NaN|Infinity|undefined| style=/);
      }),
      { numRuns: 40 },
    );
  });
});
