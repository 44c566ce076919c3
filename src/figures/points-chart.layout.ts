import type { Interval } from '#compute';
import { cutText } from './cut-text.ts';
import { levelAxis, powerAxis } from './level-axis.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';
import { CHART, type ChartFrame } from './points-chart.frame.ts';
import type { ChartDrawing, ChartPoint, ChartProps } from './points-chart.types.ts';

/** Room on both sides of everything, as a share of its width, and least width of the axis in dB. */
const MARGIN = 0.05;
const LEAST_SPAN_DB = 0.4;
/** A limit farther than this from what its row measured would squeeze every band to a hair: it is not drawn. */
const FARTHEST_LIMIT_DB = 12;
/** Room that a small letter takes where text is spaced widely, and that is left between a label and the word beside it. */
const WIDTH_PER_LETTER = 8.4;
const GAP = 10;
/** Labels are bold, and so this much wider than words. */
const BOLDER = 1.1;
/** A strip is never thinner than this. */
const LEAST_STRIP = 2;

/** All coordinates. @throws RangeError without any point. */
export function pointsChartLayout({ frame, points }: ChartProps): ChartDrawing {
  const measures = CHART[frame];
  const within = domainOf(points);
  const scale = linearScale({ domain: [within.lower, within.upper], range: measures.axis });
  const height = measures.head + points.length * measures.rowPitch + measures.foot;
  const { tickCount, tickRoom } = measures;
  const axis = { within, scale, tickCount, tickRoom };
  return {
    width: measures.width,
    height,
    axisTop: measures.head - 6,
    axisBottom: height - measures.foot + 4,
    rows: points.map((point, index) => ({
      ...rowOf(point, scale, within),
      ...wordsOf(point, frame),
      y: measures.head + index * measures.rowPitch,
    })),
    levels: levelAxis(axis),
    powers: powerAxis(axis),
    scale,
  };
}

/** The limits of a point that are drawn: those near what was measured, or all of a point without a number. */
function nearLimits({ specification, band }: ChartPoint): number[] {
  return [specification.lower, specification.upper].filter(
    (limit) =>
      Number.isFinite(limit) &&
      (band === undefined ||
        Math.abs(limit - band.estimate) <= FARTHEST_LIMIT_DB + (band.upper - band.lower)),
  );
}

function domainOf(points: readonly ChartPoint[]): Interval {
  const measured = points.flatMap(({ band }) => (band ? [band.lower, band.upper, band.estimate] : []));
  const numbered = points.filter(({ band }) => band !== undefined);
  // A point without a number stretches the axis only where none has one.
  const limits = (numbered.length > 0 ? numbered : points).flatMap(nearLimits);
  const values = [...measured, ...limits];
  if (values.length === 0)
    throw new RangeError(
      `pointsChartLayout: points must have a band or a limit, got ${points.length} points`,
    );
  const [lower, upper] = [Math.min(...values), Math.max(...values)];
  const missing = Math.max(0, LEAST_SPAN_DB - (upper - lower)) / 2;
  const margin = MARGIN * (upper - lower) + missing;
  return { lower: lower - margin, upper: upper + margin };
}

function rowOf(point: ChartPoint, scale: LinearScale, within: Interval) {
  const { band, id } = point;
  const drawn = nearLimits(point).filter((limit) => limit >= within.lower && limit <= within.upper);
  const isDrawn = (limit: number): boolean => drawn.includes(limit);
  const { lower, upper } = point.specification;
  const left = scale(within.lower);
  const right = scale(within.upper);
  return {
    id,
    strip: band && stripOf(scale(band.lower), scale(band.upper)),
    estimateX: band && coordinate(scale(band.estimate)),
    outside: [
      ...(isDrawn(lower) ? [span(left, scale(lower))] : []),
      ...(isDrawn(upper) ? [span(scale(upper), right)] : []),
    ],
    limits: drawn.map((limit) => coordinate(scale(limit))),
  };
}

const span = (from: number, to: number) => ({ x: coordinate(from), width: coordinate(to - from) });

function stripOf(from: number, to: number) {
  const missing = Math.max(0, LEAST_STRIP - (to - from)) / 2;
  return span(from - missing, to + missing);
}

/** Label and word, the label cut so that the two never touch. */
function wordsOf({ label, word }: ChartPoint, frame: ChartFrame): { label: string; word: string } {
  const { labelRoom, wordRoom, shared } = CHART[frame];
  const cutTo = (text: string, room: number): string =>
    cutText(text, Math.max(1, Math.floor(room / WIDTH_PER_LETTER)));
  const shownWord = cutTo(word, wordRoom);
  const taken = shared ? [...shownWord].length * WIDTH_PER_LETTER + GAP : 0;
  return { label: cutTo(label, (labelRoom - taken) / BOLDER), word: shownWord };
}
