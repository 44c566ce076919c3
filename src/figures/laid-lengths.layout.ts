import { levelTicks, spaced, tickDecimals } from './axis-ticks.ts';
import { type LaidFrame, type LaidMeasures, laidMeasures } from './laid-lengths.frame.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';
import { boxOf, type Corner, rightAngles } from './right-angles.ts';

/** What has to find room on the axis. */
export interface LaidReach {
  readonly lengths: readonly number[];
  /** The farthest of everything else. */
  readonly farthest: number;
}

export interface LaidProps {
  readonly frame: LaidFrame;
  /** Whether the drawing above the bars is the path at right angles; else it is the curve. */
  readonly angles: boolean;
  /** The lengths, in the order in which they are laid. */
  readonly lengths: readonly number[];
  /** How many of the last lengths have no limit: the row has no end then. */
  readonly endless: number;
  /** Points of half a density, x from nothing upwards; empty as long as it is not known. */
  readonly curve: readonly { readonly x: number; readonly density: number }[];
  /** How far the second bar reaches; nothing as long as it is not known. */
  readonly result: number | undefined;
  /** What somebody says instead. */
  readonly said?: number | undefined;
  /** Where the knob is. */
  readonly knob: number;
  /** By what the axis is chosen: what is drawn, or what was drawn as the knob was taken. */
  readonly reach: LaidReach;
}

export interface LaidDrawing {
  readonly measures: LaidMeasures;
  readonly scale: LinearScale;
  /** The first bar's pieces, and its end. */
  readonly pieces: readonly { readonly x: number; readonly width: number; readonly endless: boolean }[];
  readonly end: number;
  /** Width of the second bar. */
  readonly result: number | undefined;
  readonly saidX: number | undefined;
  readonly knobX: number;
  readonly curve: string;
  readonly path: AnglePath | undefined;
  readonly ticks: readonly { readonly x: number; readonly value: number; readonly named: boolean }[];
  readonly decimals: number;
}

/** The path at right angles, drawn. */
export interface AnglePath {
  readonly lengths: string;
  /** From the start to every corner but the last, and the marks at the right angles. */
  readonly rays: string;
  /** From the start to the last corner, as a thin bar. */
  readonly result: string;
  readonly corners: readonly Corner[];
}

/** Steps of the axis: ten to a decade, so that small changes do not rescale the figure. */
const STEPS = 10;
/** The axis is a little longer than what has to find room. */
const ROOM = 1.02;

/** The axis' length for a reach, in a frame. @throws RangeError unless something has a length. */
function laidSpan(
  { lengths, farthest }: LaidReach,
  { across: [left, right], above: [top, foot] }: LaidMeasures,
  angles: boolean,
): number {
  const sum = lengths.reduce((total, length) => total + length, 0);
  const box = boxOf(rightAngles(lengths));
  const high = angles ? Math.max(box.width, (box.height * (right - left)) / (foot - top)) : 0;
  const least = ROOM * Math.max(sum, farthest, high);
  if (!(least > 0)) throw new RangeError(`laidSpan: something must have a length, got ${least}`);
  return 10 ** (Math.ceil(STEPS * Math.log10(least) - 1e-9) / STEPS);
}

/** @throws RangeError unless something has a length. */
export function laidLayout(props: LaidProps): LaidDrawing {
  const measures = laidMeasures(props.frame);
  const span = laidSpan(props.reach, measures, props.angles);
  const scale = linearScale({ domain: [0, span], range: measures.across });
  const values = levelTicks({ lower: 0, upper: span, count: measures.ticks });
  const ticks = values.map((value) => ({ x: coordinate(scale(value)), value }));
  let at = 0;
  const pieces = props.lengths.map((length, index) => {
    const x = scale(at);
    at += length;
    const endless = index >= props.lengths.length - props.endless;
    return { x: coordinate(x), width: coordinate(scale(at) - x), endless };
  });
  return {
    measures,
    scale,
    pieces,
    end: coordinate(scale(at)),
    result: props.result === undefined ? undefined : coordinate(scale(props.result) - scale(0)),
    saidX: props.said === undefined ? undefined : coordinate(scale(props.said)),
    knobX: coordinate(scale(props.knob)),
    curve: curveOf(props, measures, { scale, span }),
    path: props.angles ? pathOf(props.lengths, measures, scale(1) - scale(0)) : undefined,
    ticks: spaced(ticks, measures.tickRoom),
    decimals: tickDecimals(values),
  };
}

/** Half a density over the axis, as high as the room above the bars. */
function curveOf(
  { angles, curve: whole }: LaidProps,
  { above: [top, foot] }: LaidMeasures,
  { scale, span }: { readonly scale: LinearScale; readonly span: number },
): string {
  const curve = whole.filter(({ x }) => x <= span);
  const [first] = curve;
  const last = curve.at(-1);
  const highest = Math.max(...curve.map(({ density }) => density));
  if (angles || first === undefined || last === undefined || !(highest > 0)) return '';
  const place = (x: number, density: number): string =>
    `L${coordinate(scale(x))} ${coordinate(foot - (density / highest) * (foot - top))}`;
  const line = curve.map(({ x, density }) => place(x, density)).join('');
  return `M${coordinate(scale(0))} ${foot}${place(0, first.density)}${line}L${coordinate(scale(last.x))} ${foot}Z`;
}

const join = (corners: readonly Corner[]): string =>
  corners.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${coordinate(x)} ${coordinate(y)}`).join('');

/** The path at right angles with its foot on the foot of the room above the bars, as large as the axis says. */
function pathOf(lengths: readonly number[], measures: LaidMeasures, perUnit: number): AnglePath {
  const { above, across, lineHalf, corner } = measures;
  const corners = rightAngles(lengths);
  const box = boxOf(corners);
  const placed = corners.map(({ x, y }) => ({
    x: across[0] + (x - box.left) * perUnit,
    y: above[1] - (y - box.bottom) * perUnit,
  }));
  const [start = { x: 0, y: 0 }, ...rest] = placed;
  const last = rest.at(-1) ?? start;
  const inner = rest.slice(0, -1);
  const marks = inner.map((at, index) => markOf(start, at, rest[index + 1] ?? at, corner));
  return {
    lengths: join(placed),
    rays: [...inner.map((at) => join([start, at])), ...marks].join(''),
    result: barOf(start, last, lineHalf),
    corners: rest.map(({ x, y }) => ({ x: coordinate(x), y: coordinate(y) })),
  };
}

const towards = (from: Corner, to: Corner, by: number): Corner => {
  const far = Math.hypot(to.x - from.x, to.y - from.y);
  const share = far === 0 ? 0 : Math.min(by, far / 2) / far;
  return { x: (to.x - from.x) * share, y: (to.y - from.y) * share };
};

/** The mark of a right angle at a corner, between the way back to the start and the next length. */
function markOf(start: Corner, at: Corner, next: Corner, side: number): string {
  const [back, on] = [towards(at, start, side), towards(at, next, side)];
  return join([
    { x: at.x + back.x, y: at.y + back.y },
    { x: at.x + back.x + on.x, y: at.y + back.y + on.y },
    { x: at.x + on.x, y: at.y + on.y },
  ]);
}

/** A straight line as a thin bar. */
function barOf(from: Corner, to: Corner, half: number): string {
  const { x, y } = towards(from, to, half);
  const side = [
    { x: from.x - y, y: from.y + x },
    { x: to.x - y, y: to.y + x },
    { x: to.x + y, y: to.y - x },
    { x: from.x + y, y: from.y - x },
  ];
  return `${join(side)}Z`;
}
