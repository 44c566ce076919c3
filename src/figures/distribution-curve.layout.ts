import type { Interval } from '#compute';
import { CURVE } from './distribution-curve.frame.ts';
import type { CurveArea, CurveDrawing, CurveLimit, CurveProps } from './distribution-curve.types.ts';
import { levelAxis } from './level-axis.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';

/** A limit farther from the curve than this many of its widths is told beside the drawing, not drawn to scale. */
const FARTHEST_LIMIT = 1.2;
/** Room on both sides of everything, as a share of its width. */
const MARGIN = 0.04;
/** Room that a word takes for each of its letters, and a number for each of its digits. */
const WIDTH_PER_LETTER = 7.5;

type Point = CurveProps['curve'][number];

/** All coordinates. @throws RangeError unless the curve has two points or more. */
export function distributionCurveLayout(props: CurveProps): CurveDrawing {
  const { frame, interval, estimate, specification } = props;
  const measures = CURVE[frame];
  const shown = shownOf(props);
  const within = withLimits(shown, specification);
  const scale = linearScale({ domain: [within.lower, within.upper], range: measures.axis });
  const points = props.curve;
  const peak = Math.max(...points.map(({ density }) => density));
  const y = (density: number): number =>
    coordinate(CURVE.ground - ((CURVE.ground - CURVE.top) * density) / peak);
  const left = scale(Math.max(interval.lower, within.lower));
  const right = scale(Math.min(interval.upper, within.upper));
  const { tickCount, tickRoom } = measures;
  return {
    width: measures.width,
    height: measures.height,
    line: `M${traced(points, scale, y)}`,
    areas: areasOf({ points, within, scale, y, props }),
    limits: limitsOf(specification, within, scale),
    strip: { x: coordinate(left), width: coordinate(right - left) },
    estimateX: coordinate(scale(estimate)),
    ticks: levelAxis({ within, scale, tickCount, tickRoom }),
    scale,
  };
}

/** Everything that the axis must hold but for the limits. */
function shownOf({ curve, interval, estimate }: CurveProps): Interval {
  const [first, last] = [curve[0], curve.at(-1)];
  if (first === undefined || last === undefined || !(last.x > first.x))
    throw new RangeError(`distributionCurveLayout: curve must have two points, got ${curve.length}`);
  const ends = [first.x, last.x, interval.lower, interval.upper].filter(Number.isFinite);
  return { lower: Math.min(estimate, ...ends), upper: Math.max(estimate, ...ends) };
}

/** The axis: the curve, limits that are near enough, and a margin. */
function withLimits(shown: Interval, specification: Interval): Interval {
  const width = shown.upper - shown.lower;
  const near = (limit: number): boolean =>
    limit >= shown.lower - FARTHEST_LIMIT * width && limit <= shown.upper + FARTHEST_LIMIT * width;
  const limits = [specification.lower, specification.upper].filter(near);
  const [lower, upper] = [Math.min(shown.lower, ...limits), Math.max(shown.upper, ...limits)];
  const margin = MARGIN * (upper - lower);
  return { lower: lower - margin, upper: upper + margin };
}

const traced = (points: readonly Point[], scale: LinearScale, y: (density: number) => number): string =>
  points.map((point) => `${coordinate(scale(point.x))} ${y(point.density)}`).join('L');

/** Density at any x, straight between the points, nothing beyond them. */
function densityAt(points: readonly Point[], x: number): number {
  const next = points.findIndex((point) => point.x >= x);
  const [a, b] = [points[next - 1], points[next]];
  if (a === undefined || b === undefined) return b !== undefined && b.x === x ? b.density : 0;
  return a.density + ((b.density - a.density) * (x - a.x)) / (b.x - a.x);
}

interface AreaContext {
  readonly points: readonly Point[];
  readonly within: Interval;
  readonly scale: LinearScale;
  readonly y: (density: number) => number;
  readonly props: CurveProps;
}

/** The areas below, between and above the limits, as far as the axis has them. */
function areasOf({ points, within, scale, y, props: { specification, names } }: AreaContext): CurveArea[] {
  const clamp = (x: number): number => Math.min(within.upper, Math.max(within.lower, x));
  const [low, high] = [clamp(specification.lower), clamp(specification.upper)];
  const zones = [
    { from: within.lower, to: low, inside: false },
    { from: low, to: high, inside: true },
    { from: high, to: within.upper, inside: false },
  ];
  return zones.flatMap(({ from, to, inside }): CurveArea[] => {
    if (!(to > from)) return [];
    const inner = points.filter(({ x }) => x > from && x < to);
    const ends = [from, to].map((x) => ({ x, density: densityAt(points, x) }));
    const outline = [...ends.slice(0, 1), ...inner, ...ends.slice(1)];
    const path = `M${coordinate(scale(from))} ${CURVE.ground}L${traced(outline, scale, y)}L${coordinate(scale(to))} ${CURVE.ground}Z`;
    const word = inside ? names.inside : names.outside;
    const named = scale(to) - scale(from) >= word.length * WIDTH_PER_LETTER;
    return [{ inside, path, wordX: coordinate((scale(from) + scale(to)) / 2), named }];
  });
}

function limitsOf({ lower, upper }: Interval, within: Interval, scale: LinearScale): CurveLimit[] {
  const finite = [lower, upper].filter(Number.isFinite);
  const room = 4 * WIDTH_PER_LETTER;
  const [first, last] = [scale(within.lower), scale(within.upper)];
  const isTight = finite.length === 2 && scale(upper) - scale(lower) < 2 * room;
  return finite.map((value): CurveLimit => {
    if (value < within.lower) return { value, x: coordinate(first), beyond: 'left', anchor: 'start' };
    if (value > within.upper) return { value, x: coordinate(last), beyond: 'right', anchor: 'end' };
    const x = scale(value);
    const tight = isTight && (value === lower ? 'end' : 'start');
    const anchor = x - first < room ? 'start' : last - x < room ? 'end' : tight || 'middle';
    return { value, x: coordinate(x), beyond: undefined, anchor };
  });
}
