import type { Interval } from '#compute';
import { levelTicks, spaced, tickDecimals } from './axis-ticks.ts';
import { type LineBandFrame, type LineBandMeasures, lineBandMeasures } from './line-band.frame.ts';
import { type BandPoint, type BarPoint, type LinePoint, type PlotTick, spanFor } from './line-band.layout.ts';
import { coordinate, linearScale } from './linear-scale.ts';

/** What a correction leaves over, in the units of the two axes. */
export interface ResidualsProps {
  readonly frame: LineBandFrame;
  readonly domain: Interval;
  /** Whether only whole numbers make sense along. */
  readonly whole: boolean;
  /** What the correction itself is uncertain by, about nothing. */
  readonly band: readonly BandPoint[];
  readonly points: readonly BarPoint[];
  /** Single values behind the points. */
  readonly dots: readonly LinePoint[];
}

/** Coordinates of everything. */
export interface ResidualsDrawing {
  readonly measures: LineBandMeasures;
  readonly zeroY: number;
  readonly along: readonly (PlotTick & { readonly named: boolean })[];
  readonly up: readonly PlotTick[];
  readonly decimals: { readonly along: number; readonly up: number };
  readonly band: string;
  readonly points: readonly (LinePoint & { readonly bar: string })[];
  readonly dots: readonly LinePoint[];
}

/** Bars shorter than the point itself are not drawn. */
const LEAST_BAR = 0.5;

/** Single values stand this many radii beside their point, whose bar would hide them. */
const BESIDE = 2;

/** How far from nothing anything reaches. */
const reach = ({ band, points, dots }: ResidualsProps): number =>
  Math.max(
    0.02,
    ...band.flatMap(({ lower, upper }) => [-lower, upper]),
    ...points.map(({ y, half }) => Math.abs(y) + half),
    ...dots.map(({ y }) => Math.abs(y)),
  );

/** @throws RangeError if the domain has no width. */
export function residualsLayout(props: ResidualsProps): ResidualsDrawing {
  const measures = lineBandMeasures(props.frame);
  const span = spanFor(reach(props));
  const [top, bottom] = measures.down;
  const scaleX = linearScale({ domain: [props.domain.lower, props.domain.upper], range: measures.across });
  const scaleY = linearScale({ domain: [-span, span], range: [bottom, top] });
  const place = ({ x, y }: LinePoint): LinePoint => ({ x: coordinate(scaleX(x)), y: coordinate(scaleY(y)) });
  const path = (points: readonly LinePoint[]): string =>
    points
      .map(place)
      .map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`)
      .join('');
  const upper = props.band.map(({ x, upper: y }) => ({ x, y }));
  const lower = props.band.map(({ x, lower: y }) => ({ x, y })).toReversed();
  const along = levelTicks({ ...props.domain, count: measures.ticks[0] }).filter(
    (value) => !props.whole || Number.isInteger(value),
  );
  const up = levelTicks({ lower: -span, upper: span, count: measures.ticks[1] });
  return {
    measures,
    zeroY: coordinate(scaleY(0)),
    along: spaced(
      along.map((value) => ({ x: coordinate(scaleX(value)), value })),
      measures.tickRoom,
    ).map(({ x, value, named }) => ({ place: x, value, named })),
    up: up.map((value) => ({ place: coordinate(scaleY(value)), value })),
    decimals: { along: tickDecimals(along), up: tickDecimals(up) },
    band: props.band.length === 0 ? '' : `${path([...upper, ...lower])}Z`,
    points: props.points.map((point) => ({
      ...place(point),
      bar: barOf({
        x: scaleX(point.x),
        top: scaleY(point.y + point.half),
        bottom: scaleY(point.y - point.half),
        foot: measures.dotRadius,
      }),
    })),
    dots: props.dots.map(place).map(({ x, y }) => ({ x: coordinate(x + BESIDE * measures.dotRadius), y })),
  };
}

/** An upright bar with feet at both ends; nothing where it has no length. */
function barOf({ x, top, bottom, foot }: { x: number; top: number; bottom: number; foot: number }): string {
  if (bottom - top < LEAST_BAR) return '';
  const [left, right] = [coordinate(x - foot), coordinate(x + foot)];
  const [high, low] = [coordinate(top), coordinate(bottom)];
  return `M${left} ${high}H${right}M${coordinate(x)} ${high}V${low}M${left} ${low}H${right}`;
}
