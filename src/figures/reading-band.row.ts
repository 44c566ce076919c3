import type { Interval } from '#compute';
import { coordinate, type LinearScale } from './linear-scale.ts';
import type { BandMeasures } from './reading-band.frame.ts';
import type { BandRow, Bar, Magnifier, RowDrawing } from './reading-band.types.ts';

/** Thinner than this and the eye cannot see that there is a band: a magnified copy is drawn beside it. */
const LEAST_VISIBLE_WIDTH = 12;
/** What a magnified copy may fill of the axis. */
const MAGNIFIED_SHARE = 0.28;
/** Between a hair-thin strip and its magnified copy. */
const MAGNIFIER_GAP = 26;

interface RowContext {
  readonly row: BandRow;
  readonly y: number;
  readonly measures: BandMeasures;
  readonly scale: LinearScale;
  readonly within: Interval;
}

/** Coordinates of one rung. */
export function drawRow({ row, y, measures, scale, within }: RowContext): RowDrawing {
  const bar = row.strip && barOf(row.strip, scale, within);
  const drawing: RowDrawing = {
    row,
    y: coordinate(y),
    ...(bar && { bar }),
    ...(row.ghost && { ghost: barOf(row.ghost, scale, within) }),
    ...(row.limits && reachesOut(row.limits, row.strip) && { marks: marksOf(row.limits, scale, within) }),
    ...(row.curve && row.curve.length > 1 && { curve: curveOf({ row, y, measures, scale, within }) }),
    ...(row.handle && {
      handleX: coordinate(bar ? bar.x + bar.width : scale((within.lower + within.upper) / 2)),
    }),
  };
  const magnifier = bar && magnifierOf(bar, measures);
  return magnifier ? { ...drawing, magnifier } : drawing;
}

/** An open end mark inside the strip would say nothing: the strip already reaches further than the limits guarantee. */
const reachesOut = (limits: Interval & { open: boolean }, strip: Interval | undefined): boolean =>
  !limits.open || strip === undefined || limits.upper > strip.upper || limits.lower < strip.lower;

const clamp = (value: number, { lower, upper }: Interval): number => Math.min(upper, Math.max(lower, value));

function barOf(interval: Interval, scale: LinearScale, within: Interval): Bar {
  const x = scale(clamp(interval.lower, within));
  return { x: coordinate(x), width: coordinate(scale(clamp(interval.upper, within)) - x) };
}

function marksOf(limits: Interval & { open: boolean }, scale: LinearScale, within: Interval) {
  return {
    lower: coordinate(scale(clamp(limits.lower, within))),
    upper: coordinate(scale(clamp(limits.upper, within))),
    open: limits.open,
  };
}

/** A copy of a hair-thin strip, wider by a power of ten, to its left: below the strip hangs its knob, above stands its curve. */
function magnifierOf(bar: Bar, measures: BandMeasures): Magnifier | undefined {
  if (bar.width >= LEAST_VISIBLE_WIDTH || bar.width <= 0) return undefined;
  const room = (measures.axis[1] - measures.axis[0]) * MAGNIFIED_SHARE;
  const factor = 10 ** Math.floor(Math.log10(room / bar.width));
  if (factor < 10) return undefined;
  const width = coordinate(bar.width * factor);
  return { factor, from: bar, x: coordinate(bar.x - MAGNIFIER_GAP - width), width };
}

/**
 * Each curve is drawn to the same height: its shape and width are what it shows. Straight pieces need no library of curves,
 * which would be the largest part of the page.
 */
function curveOf({ row, y, measures, scale, within }: RowContext): { line: string; area: string } {
  const points = (row.curve ?? []).filter(({ x }) => x >= within.lower && x <= within.upper);
  const peak = Math.max(...points.map(({ density }) => density));
  const floor = y + measures.stripY - measures.stripHeight / 2 - 1;
  const line = points
    .map(
      ({ x, density }) =>
        `${coordinate(scale(x))} ${coordinate(floor - (measures.curveHeight * density) / peak)}`,
    )
    .join('L');
  const ends = [points[0], points.at(-1)].map((point) => (point ? coordinate(scale(point.x)) : 0));
  const ground = coordinate(floor);
  return { line: `M${line}`, area: `M${ends[0]} ${ground}L${line}L${ends[1]} ${ground}Z` };
}
