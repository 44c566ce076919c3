import { finite, notNegative, rangeError } from './quantity.ts';
import { compensatedSum, mean } from './readings.ts';

/** A point of a line: y at x. */
export interface FitPoint {
  readonly x: number;
  readonly y: number;
}

/** A straight line y = intercept + slope (x - origin) with what is known of it. */
export interface FittedLine {
  readonly origin: number;
  readonly intercept: number;
  readonly slope: number;
  readonly interceptUncertainty: number;
  readonly slopeUncertainty: number;
  /** Between intercept and slope. */
  readonly covariance: number;
  readonly correlation: number;
  /** Standard deviation of the points about the line. */
  readonly residualDeviation: number;
  /** Number of points less two. */
  readonly degreesOfFreedom: number;
  /** Between which the line has been measured. */
  readonly range: { readonly lower: number; readonly upper: number };
}

/** Numbers from which every property of the line follows; sums about the means, so that no digits are lost. */
function sumsOf(points: readonly FitPoint[]) {
  const [xMean, yMean] = [mean(points.map(({ x }) => x)), mean(points.map(({ y }) => y))];
  const across = points.map(({ x }) => x - xMean);
  const up = points.map(({ y }) => y - yMean);
  const xx = compensatedSum(across.map((d) => d * d));
  const xy = compensatedSum(across.map((d, i) => d * (up[i] ?? 0)));
  return { xMean, yMean, across, up, xx, slope: xy / xx };
}

function checkPoints(points: readonly FitPoint[]): void {
  if (points.length < 3)
    throw rangeError({ where: 'fitLine', wish: 'there must be 3 or more points', got: points.length });
  for (const { x, y } of points) {
    finite('fitLine', 'x', x);
    finite('fitLine', 'y', y);
  }
  if (points.every(({ x }) => x === points[0]?.x))
    throw rangeError({ where: 'fitLine', wish: 'x must not all be equal', got: points[0]?.x });
}

/**
 * Straight line through points of equal scatter in y, by least squares, with the uncertainties of intercept and slope from
 * the scatter about the line and the covariance between them.
 * @param origin the x at which the intercept is taken, 0 if not said.
 * @throws RangeError for fewer than three points, a coordinate not finite, or all x equal.
 * Source: GUM H.3.
 */
export function fitLine({
  points,
  origin = 0,
}: {
  points: readonly FitPoint[];
  origin?: number;
}): FittedLine {
  checkPoints(points);
  finite('fitLine', 'origin', origin);
  const { xMean, yMean, across, up, xx, slope } = sumsOf(points);
  const squares = compensatedSum(across.map((d, i) => ((up[i] ?? 0) - slope * d) ** 2));
  const degreesOfFreedom = points.length - 2;
  const residualDeviation = Math.sqrt(squares / degreesOfFreedom);
  const arm = origin - xMean;
  const interceptUncertainty = residualDeviation * Math.sqrt(1 / points.length + arm ** 2 / xx);
  const slopeUncertainty = residualDeviation / Math.sqrt(xx);
  return {
    origin,
    intercept: yMean + slope * arm,
    slope,
    interceptUncertainty,
    slopeUncertainty,
    covariance: (residualDeviation ** 2 * arm) / xx,
    correlation: arm / Math.sqrt(xx / points.length + arm ** 2),
    residualDeviation,
    degreesOfFreedom,
    range: {
      lower: points.reduce((least, { x }) => Math.min(least, x), Number.POSITIVE_INFINITY),
      upper: points.reduce((most, { x }) => Math.max(most, x), Number.NEGATIVE_INFINITY),
    },
  };
}

/** A value read off a line. */
export interface Prediction {
  readonly value: number;
  /** Of the line at this x. */
  readonly standardUncertainty: number;
  /** Of a single new reading at this x: the scatter about the line added. */
  readonly ofReading: number;
  readonly degreesOfFreedom: number;
  /** Whether x lies outside the points, where nothing has been measured. */
  readonly extrapolated: boolean;
}

/**
 * What a line says at x, with the covariance of intercept and slope counted: far from the points the uncertainty grows,
 * and without the covariance it would come out wrong (0.0041 against 0.0073 in the GUM's example).
 * @throws RangeError unless x is finite.
 * Source: GUM H.3.4.
 */
export function readLine({ line, at }: { line: FittedLine; at: number }): Prediction {
  const arm = finite('readLine', 'at', at) - line.origin;
  const variance =
    line.interceptUncertainty ** 2 + arm ** 2 * line.slopeUncertainty ** 2 + 2 * arm * line.covariance;
  const standardUncertainty = Math.sqrt(notNegative('readLine', 'variance', Math.max(0, variance)));
  return {
    value: line.intercept + line.slope * arm,
    standardUncertainty,
    ofReading: Math.hypot(standardUncertainty, line.residualDeviation),
    degreesOfFreedom: line.degreesOfFreedom,
    extrapolated: at < line.range.lower || at > line.range.upper,
  };
}
