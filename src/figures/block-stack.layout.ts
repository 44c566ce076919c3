import { levelTicks, tickDecimals } from './axis-ticks.ts';
import { type BlockFrame, type BlockMeasures, blockMeasures } from './block-stack.frame.ts';
import type { Bar, BlockClaim, BlockLane, ClaimDrawing, LaneDrawing } from './block-stack.types.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';

export interface BlockStackProps {
  readonly frame: BlockFrame;
  /** The axis reaches this far to both sides of nothing, in micrometres. */
  readonly span: number;
  readonly lanes: readonly BlockLane[];
  readonly claim: BlockClaim;
}

/** Coordinates of everything. */
export interface BlockDrawing {
  readonly measures: BlockMeasures;
  readonly height: number;
  readonly scale: LinearScale;
  /** How many times larger the right part is than the left one. */
  readonly magnification: number;
  readonly zeroX: number;
  readonly axisY: number;
  readonly ticks: readonly { readonly x: number; readonly value: number; readonly named: boolean }[];
  readonly decimals: number;
  readonly lanes: readonly LaneDrawing[];
  readonly claim: ClaimDrawing;
}

/** Round spans of the axis, in micrometres, so that small changes do not rescale the figure. */
const SPANS = [0.5, 1, 2, 4, 6, 8, 12, 16, 24, 32, 48] as const;
/** Room beyond what is drawn. */
const ROOM = 1.15;
const UM_PER_MM = 1000;
/** How far an end mark reaches beyond the strip, and how far the barbs of an open one point outwards. */
const MARK = 5;
const BARB = 7;

/** The smallest round span that holds everything up to `reachUm`, with a little room. */
export const blockSpanFor = (reachUm: number): number =>
  SPANS.find((span) => span >= ROOM * reachUm) ?? Math.ceil((ROOM * reachUm) / 10) * 10;

const barOf = (from: number, to: number): Bar => ({
  x: coordinate(Math.min(from, to)),
  width: coordinate(Math.abs(to - from)),
});

/** @throws RangeError if the span has no width. */
export function blockStackLayout({ frame, span, lanes, claim }: BlockStackProps): BlockDrawing {
  const measures = blockMeasures(frame);
  const { head, pitch, foot, zone, scaled } = measures;
  const scale = linearScale({ domain: [-span, span], range: zone });
  // What lies beyond the axis, as while a handle is held, is drawn at its end.
  const within = (value: number): number => scale(Math.min(span, Math.max(-span, value)));
  const lengthMm = (lanes[0]?.lengthsMm ?? []).reduce((sum, length) => sum + length, 0);
  const perMm = (scaled[1] - scaled[0]) / lengthMm;
  const axisY = head + 3 * pitch + 4;
  const values = levelTicks({ lower: -span, upper: span, count: measures.tickCount });
  return {
    measures,
    height: axisY + foot,
    scale,
    magnification: ((zone[1] - zone[0]) / (2 * span) / perMm) * UM_PER_MM,
    zeroX: coordinate(scale(0)),
    axisY,
    ticks: ticksOf(values, scale, measures.tickRoom),
    decimals: tickDecimals(values),
    lanes: lanes.map((lane, index) => laneOf(lane, { y: head + index * pitch, perMm, measures, within })),
    claim: claimOf(claim, { y: head + 2 * pitch, measures, within, span }),
  };
}

/** Ticks with as many of them named as there is room for, nothing among them. */
function ticksOf(values: readonly number[], scale: LinearScale, room: number): BlockDrawing['ticks'] {
  const middle = values.indexOf(0);
  const spacing = scale(values[middle] ?? 0) - scale(values[middle - 1] ?? 0);
  const every = Math.max(1, Math.ceil(room / spacing));
  return values.map((value, index) => ({
    x: coordinate(scale(value)),
    value,
    named: (index - middle) % every === 0,
  }));
}

interface Ground {
  readonly y: number;
  readonly measures: BlockMeasures;
  readonly within: (value: number) => number;
}

function laneOf(lane: BlockLane, ground: Ground & { readonly perMm: number }): LaneDrawing {
  const { y, perMm, measures, within } = ground;
  let from = measures.scaled[0];
  const blocks = lane.lengthsMm.map((length) => {
    const bar = barOf(from, from + length * perMm);
    from += length * perMm;
    return bar;
  });
  const [end, cold] = [within(lane.end), within(lane.cold)];
  return {
    lane,
    y,
    blocks,
    films: blocks.slice(1).map(({ x }) => x),
    solid: barOf(measures.zone[0], Math.min(end, cold)),
    warm: barOf(cold, end),
    grown: lane.end >= lane.cold,
    endX: coordinate(end),
    ghostX: lane.ghost === undefined ? undefined : coordinate(within(lane.ghost)),
  };
}

function claimOf(claim: BlockClaim, ground: Ground & { readonly span: number }): ClaimDrawing {
  const { y, measures, within, span } = ground;
  const middle = y + measures.barY;
  const half = measures.barHeight / 4 + MARK;
  const strip = barOf(within(claim.strip.lower), within(claim.strip.upper));
  const [lower, upper] = [within(claim.limits.lower), within(claim.limits.upper)];
  const mark = (x: number, outwards: number): string => {
    const at = coordinate(x);
    const back = coordinate(x - outwards * BARB);
    return claim.limits.open
      ? `M${back} ${middle - half}L${at} ${middle}L${back} ${middle + half}`
      : `M${at} ${middle - half}V${middle + half}`;
  };
  // Marks of a sum that guarantees nothing are left out inside the strip, as in the reading band.
  const isHidden = claim.limits.open && lower > strip.x && upper < strip.x + strip.width;
  return {
    claim,
    y,
    strip,
    marks: isHidden ? '' : `${mark(lower, -1)}${mark(upper, 1)}`,
    reach: isHidden ? '' : `M${coordinate(lower)} ${middle}H${coordinate(upper)}`,
    curve: curveOf(
      claim.curve.filter(({ x }) => Math.abs(x) <= span),
      { within, floor: middle - measures.barHeight / 4 - 1, height: measures.curveHeight },
    ),
    there: { x: coordinate(within(claim.there)), y: middle },
  };
}

function curveOf(
  points: BlockClaim['curve'],
  { within, floor, height }: { within: (value: number) => number; floor: number; height: number },
): ClaimDrawing['curve'] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || first === last) return undefined;
  const peak = Math.max(...points.map(({ density }) => density));
  const line = points
    .map(({ x, density }) => `${coordinate(within(x))} ${coordinate(floor - (height * density) / peak)}`)
    .join('L');
  const ground = coordinate(floor);
  return {
    line: `M${line}`,
    area: `M${coordinate(within(first.x))} ${ground}L${line}L${coordinate(within(last.x))} ${ground}Z`,
  };
}
