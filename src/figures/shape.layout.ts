import type { Interval } from '#compute';
import { levelTicks, spaced, tickDecimals } from './axis-ticks.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';
import { type ShapeFrame, type ShapeMeasures, shapeMeasures } from './shape.frame.ts';

/** A point of a density. */
export interface DensityPoint {
  readonly x: number;
  readonly density: number;
}

/** An interval under the curves, with its words: a filled strip, a dashed outline, or two end marks. */
export interface ShapeLane {
  readonly id: string;
  readonly kind: 'strip' | 'outline' | 'marks';
  readonly label: string;
  readonly number: string;
  /** Absent where there is none to draw. */
  readonly interval?: Interval | undefined;
}

/** What is drawn, in the unit of the axis. */
export interface ShapeProps {
  readonly frame: ShapeFrame;
  readonly domain: Interval;
  /** The distribution itself: filled. Empty while it is not known. */
  readonly curve: readonly DensityPoint[];
  /** The one that it is compared with: dashed. */
  readonly compared: readonly DensityPoint[];
  /** One part of the sum alone: a thin line. */
  readonly part?: readonly DensityPoint[];
  readonly lanes: readonly ShapeLane[];
  /** Where the knob on the axis is, if there is one. */
  readonly handle?: number;
}

/** A lane with its coordinates. */
export interface LaneDrawing {
  readonly lane: ShapeLane;
  readonly y: number;
  readonly x: number;
  readonly width: number;
}

/** Coordinates of everything. */
export interface ShapeDrawing {
  readonly measures: ShapeMeasures;
  readonly height: number;
  readonly scale: LinearScale;
  readonly area: string;
  readonly line: string;
  readonly compared: string;
  readonly part: string;
  readonly lanes: readonly LaneDrawing[];
  readonly axisY: number;
  readonly ticks: readonly { readonly x: number; readonly value: number; readonly named: boolean }[];
  readonly decimals: number;
  readonly handleX: number | undefined;
}

/** A curve is cut off where it rises above this many times the one that it is compared with: a U shape has no top. */
const TALLEST = 1.7;

/** The density that the top of the drawing stands for. */
function tallestOf({ curve, compared }: ShapeProps): number {
  const peak = (points: readonly DensityPoint[]): number =>
    points.reduce((most, { density }) => Math.max(most, density), 0);
  const beside = peak(compared);
  const own = peak(curve);
  return (beside > 0 ? Math.min(Math.max(own, beside), TALLEST * beside) : own) || 1;
}

/** @throws RangeError if the domain has no width. */
export function shapeLayout(props: ShapeProps): ShapeDrawing {
  const { domain, lanes, handle } = props;
  const measures = shapeMeasures(props.frame);
  const { across, down, lanesDrop, lanePitch, axisDrop } = measures;
  const [top, ground] = down;
  const scale = linearScale({ domain: [domain.lower, domain.upper], range: across });
  const tallest = tallestOf(props);
  const within = (x: number): number => Math.min(domain.upper, Math.max(domain.lower, x));
  const traced = (points: readonly DensityPoint[]): string =>
    points
      .map(({ x, density }) => {
        const y = ground - ((ground - top) * Math.min(density, tallest)) / tallest;
        return `${coordinate(scale(within(x)))} ${coordinate(y)}`;
      })
      .join('L');
  const path = (points: readonly DensityPoint[]): string => (points.length === 0 ? '' : `M${traced(points)}`);
  const axisY = ground + lanesDrop + lanes.length * lanePitch + axisDrop;
  const values = levelTicks({ ...domain, count: measures.tickCount });
  return {
    measures,
    height: axisY + measures.wordsDrop + measures.foot,
    scale,
    area: downTo(traced(props.curve), ground, 'Z'),
    line: downTo(traced(props.curve), ground),
    compared: path(props.compared),
    part: path(props.part ?? []),
    lanes: lanes.map((lane, index) => {
      const { lower, upper } = lane.interval ?? domain;
      const x = coordinate(scale(within(lower)));
      return {
        lane,
        y: ground + lanesDrop + index * lanePitch,
        x,
        width: coordinate(scale(within(upper)) - x),
      };
    }),
    axisY,
    ticks: spaced(
      values.map((value) => ({ x: coordinate(scale(value)), value })),
      measures.tickRoom,
    ),
    decimals: tickDecimals(values),
    handleX: handle === undefined ? undefined : coordinate(scale(within(handle))),
  };
}

/** A traced line with both its ends brought down to the ground. */
function downTo(traced: string, ground: number, closed = ''): string {
  if (traced === '') return '';
  const places = traced.split('L');
  const [first = ''] = (places[0] ?? '').split(' ');
  const [last = ''] = (places.at(-1) ?? '').split(' ');
  return `M${first} ${ground}L${traced}L${last} ${ground}${closed}`;
}
