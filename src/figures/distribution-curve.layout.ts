import type { Interval } from '#compute';
import { levelText } from '../text/quantity-text.ts';
import { CURVE } from './distribution-curve.frame.ts';
import type { CurveArea, CurveDrawing, CurveLimit, CurveProps } from './distribution-curve.types.ts';
import { levelAxis } from './level-axis.ts';
import { limitDecimals } from './limit-decimals.ts';
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
  const limits = apart(limitsOf(specification, within, scale));
  return {
    width: measures.width,
    height: measures.height,
    line: `M${traced(points, scale, y)}`,
    areas: areasOf({ points, within, scale, y, props, lowered: limits.filter(({ lowered }) => lowered) }),
    limits,
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
  /** Limits whose numbers stand in the line of the words. */
  readonly lowered: readonly CurveLimit[];
}

/** The areas below, between and above the limits, as far as the axis has them. */
function areasOf({ points, within, scale, y, props, lowered }: AreaContext): CurveArea[] {
  const { specification, names } = props;
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
    const wordX = coordinate((scale(from) + scale(to)) / 2);
    const half = (word.length * WIDTH_PER_LETTER) / 2;
    const isFree = !lowered.some((limit) =>
      touch(extentOf(limit), { lower: wordX - half, upper: wordX + half }),
    );
    return [{ inside, path, wordX, named: isFree && scale(to) - scale(from) >= 2 * half }];
  });
}

type PlacedLimit = Omit<CurveLimit, 'lowered'>;

/** Ends of a limit's number as it is drawn. */
function extentOf({ value, x, beyond, anchor }: PlacedLimit): Interval {
  const text = levelText('shown', { levelDbm: value, decimals: limitDecimals(value) });
  const width = (text.length + (beyond === undefined ? 0 : 2)) * WIDTH_PER_LETTER;
  const lower = x - width * { start: 0, middle: 0.5, end: 1 }[anchor];
  return { lower, upper: lower + width };
}

const touch = (a: Interval, b: Interval): boolean => a.lower < b.upper && b.lower < a.upper;

/** Where two numbers would be written into each other, one goes a line down: the one that no line of the other crosses there. */
function apart(limits: readonly PlacedLimit[]): CurveLimit[] {
  const [first, second] = limits;
  const isTouched = first && second && touch(extentOf(first), extentOf(second));
  const one = isTouched ? (second.anchor === 'end' ? first : second) : undefined;
  return limits.map((limit) => ({ ...limit, lowered: limit === one }));
}

function limitsOf({ lower, upper }: Interval, within: Interval, scale: LinearScale): PlacedLimit[] {
  const finite = [lower, upper].filter(Number.isFinite);
  const room = 4 * WIDTH_PER_LETTER;
  const [first, last] = [scale(within.lower), scale(within.upper)];
  const isTight = finite.length === 2 && scale(upper) - scale(lower) < 2 * room;
  return finite.map((value): PlacedLimit => {
    if (value < within.lower) return { value, x: coordinate(first), beyond: 'left', anchor: 'start' };
    if (value > within.upper) return { value, x: coordinate(last), beyond: 'right', anchor: 'end' };
    const x = scale(value);
    const tight = isTight && (value === lower ? 'end' : 'start');
    const anchor = x - first < room ? 'start' : last - x < room ? 'end' : tight || 'middle';
    return { value, x: coordinate(x), beyond: undefined, anchor };
  });
}
