import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { PointsChart } from '../../src/figures/PointsChart.tsx';
import { CHART, type ChartFrame } from '../../src/figures/points-chart.frame.ts';
import { pointsChartLayout } from '../../src/figures/points-chart.layout.ts';
import type { ChartPoint, ChartProps } from '../../src/figures/points-chart.types.ts';
import { ShareBar } from '../../src/figures/ShareBar.tsx';
import { SHARE_BAR, shareBarLayout } from '../../src/figures/share-bar.layout.ts';

const point = (id: string, change: Partial<ChartPoint> = {}): ChartPoint => ({
  id,
  label: `Point ${id}`,
  word: 'inside',
  band: { lower: 26.4, upper: 27.8, estimate: 27.1 },
  specification: { lower: 25.5, upper: 28.5 },
  ...change,
});
const withoutNumber = (id: string): ChartPoint => {
  const { band: _, ...rest } = point(id, { word: 'out of range' });
  return rest;
};

const frame = fc.constantFrom<ChartFrame>('wide', 'narrow');
const anyPoint = fc
  .record({
    label: fc.string({ maxLength: 60 }),
    word: fc.constantFrom('inside', 'outside', 'can’t tell', 'out of range', 'being worked out'),
    estimate: fc.double({ min: -40, max: 50, noNaN: true }),
    half: fc.double({ min: 0, max: 6, noNaN: true }),
    lower: fc.option(fc.double({ min: -60, max: 60, noNaN: true })),
    numbered: fc.boolean(),
  })
  .map(
    ({ label, word, estimate, half, lower, numbered }): ChartPoint => ({
      id: '',
      label,
      word,
      ...(numbered && { band: { lower: estimate - half, upper: estimate + half, estimate } }),
      specification: {
        lower: lower ?? Number.NEGATIVE_INFINITY,
        upper: lower === null ? 30 : lower + 3,
      },
    }),
  );
const anyProps: fc.Arbitrary<ChartProps> = fc
  .tuple(frame, fc.array(anyPoint, { minLength: 1, maxLength: 40 }))
  .map(([of, points]) => ({
    frame: of,
    points: points.map((one, index) => ({ ...one, id: `point${index}` })),
  }));

describe('the chart over points', () => {
  it('has a row a point, in their order and not over each other, between its two axes', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        const { rows, axisTop, axisBottom, height } = pointsChartLayout(props);
        expect(rows.map(({ id }) => id)).toEqual(props.points.map(({ id }) => id));
        const { rowPitch } = CHART[props.frame];
        rows.forEach(({ y }, index) => {
          expect(y).toBe(CHART[props.frame].head + index * rowPitch);
          expect(y).toBeGreaterThan(axisTop);
          expect(y + rowPitch).toBeLessThanOrEqual(axisBottom + 6);
        });
        expect(height).toBeGreaterThan(axisBottom);
      }),
    );
  });

  it('keeps every strip, mark, limit and hatching on the axis', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        const [first, last] = CHART[props.frame].axis;
        for (const row of pointsChartLayout(props).rows) {
          const xs = [
            ...(row.strip ? [row.strip.x, row.strip.x + row.strip.width] : []),
            ...(row.estimateX === undefined ? [] : [row.estimateX]),
            ...row.limits,
            ...row.outside.flatMap(({ x, width }) => [x, x + width]),
          ];
          for (const x of xs) expect(x >= first - 1.1 && x <= last + 1.1).toBe(true);
        }
      }),
    );
  });

  it('draws a strip for each point with a number and none for one without', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        const { rows } = pointsChartLayout(props);
        rows.forEach((row, index) => {
          const band = props.points[index]?.band;
          expect(row.strip === undefined).toBe(band === undefined);
          expect(row.estimateX === undefined).toBe(band === undefined);
          if (row.strip && row.estimateX !== undefined) {
            expect(row.estimateX).toBeGreaterThanOrEqual(row.strip.x - 0.02);
            expect(row.estimateX).toBeLessThanOrEqual(row.strip.x + row.strip.width + 0.02);
          }
        });
      }),
    );
  });

  it('hatches what lies outside the limits, never what lies between them', () => {
    const [row] = pointsChartLayout({ frame: 'wide', points: [point('1')] }).rows;
    const [low, high] = row?.limits ?? [];
    expect(row?.outside).toHaveLength(2);
    expect((row?.outside[0]?.x ?? 0) + (row?.outside[0]?.width ?? 0)).toBeCloseTo(low ?? 0, 1);
    expect(row?.outside[1]?.x).toBeCloseTo(high ?? 0, 1);
    const oneSided = point('1', { specification: { lower: Number.NEGATIVE_INFINITY, upper: 28.5 } });
    expect(pointsChartLayout({ frame: 'wide', points: [oneSided] }).rows[0]?.outside).toHaveLength(1);
  });

  it('leaves out a limit that would squeeze every band to a hair', () => {
    const far = point('1', { specification: { lower: -40, upper: 28.5 } });
    expect(pointsChartLayout({ frame: 'wide', points: [far] }).rows[0]?.limits).toHaveLength(1);
  });

  it('cuts a label before it reaches the word beside it, and keeps the word whole', () => {
    const long = point('1', { label: 'A name much longer than a row has room for', word: 'out of range' });
    const [row] = pointsChartLayout({ frame: 'narrow', points: [long] }).rows;
    expect(row?.label).toMatch(/^A name much .*…$/);
    expect(row?.word).toBe('out of range');
    expect(pointsChartLayout({ frame: 'narrow', points: [point('1')] }).rows[0]?.label).toBe('Point 1');
  });

  it('needs a point with a band or a limit', () => {
    expect(() => pointsChartLayout({ frame: 'wide', points: [] })).toThrow(/a band or a limit/);
  });
});

const STATES: Readonly<Record<string, ChartProps>> = {
  'three points': {
    frame: 'wide',
    points: [point('1'), point('2', { word: 'can’t tell' }), withoutNumber('3')],
  },
  'three points, narrow': {
    frame: 'narrow',
    points: [
      point('1'),
      point('2', { band: { lower: 28, upper: 29.4, estimate: 28.7 }, word: 'can’t tell' }),
      withoutNumber('3'),
    ],
  },
  'no point with a number': { frame: 'narrow', points: [withoutNumber('1'), withoutNumber('2')] },
};
const words = { name: 'All points', description: 'What they show' };
const draw = (props: ChartProps): string => render(<PointsChart {...props} {...words} />);

describe('the figure over points', () => {
  it.each(Object.entries(STATES))('is drawn as it was before: %s', (_, props) => {
    expect(draw(props).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('draws finite numbers only, from one point to forty, and asks for no style of its own', () => {
    fc.assert(
      fc.property(anyProps, (props) => {
        expect(draw(props)).not.toMatch(/NaN|Infinity|undefined| style=/);
      }),
      { numRuns: 30 },
    );
  });

  it('names both units once, and says in words which point has no number', () => {
    const markup = draw({ frame: 'wide', points: [point('1'), withoutNumber('2')] });
    expect([...markup.matchAll(/>(dBm|mW|W)</g)].map(([, unit]) => unit).toSorted()).toEqual(['dBm', 'mW']);
    expect(markup).toContain('>out of range</text>');
    expect([...markup.matchAll(/class="band-strip"/g)]).toHaveLength(1);
  });
});

describe('the bar of a share', () => {
  const room = SHARE_BAR.width - 2 * SHARE_BAR.line;

  it('is as long as the share, and never leaves its frame', () => {
    fc.assert(
      fc.property(fc.double({ min: -2, max: 3, noNaN: true }), (share) => {
        const { width } = shareBarLayout(share);
        expect(width).toBeCloseTo(room * Math.min(1, Math.max(0, share)), 1);
      }),
    );
    expect(() => shareBarLayout(Number.NaN)).toThrow(/share must be finite/);
  });

  it('is for the eye alone: its number stands beside it', () => {
    expect(render(<ShareBar share={0.701} />)).toMatchSnapshot();
    expect(render(<ShareBar share={0.7} />)).toContain('aria-hidden="true"');
  });
});
