import { finite, positive, rangeError } from './quantity.ts';

/** A correction found at one level or frequency, with its own uncertainty: without what all points have in common. */
export interface CorrectionPoint {
  readonly at: number;
  readonly correction: number;
  readonly standardUncertainty: number;
}

/** A line of corrections: about its weighted middle, where height and slope are uncorrelated. */
export interface CorrectionLine {
  readonly middle: number;
  readonly correction: number;
  readonly slope: number;
  /** Of the height at the middle. */
  readonly correctionUncertainty: number;
  readonly slopeUncertainty: number;
  /** sqrt(chi-square / (n - 2)); above 1 the points scatter more than they say. 1 for two points, which cannot tell. */
  readonly birgeRatio: number;
  /** Infinite while the stated uncertainties hold; n - 2 where the scatter about the line replaced them. */
  readonly degreesOfFreedom: number;
  readonly range: { readonly lower: number; readonly upper: number };
}

function checkPoints(points: readonly CorrectionPoint[]): void {
  if (new Set(points.map(({ at }) => at)).size < 2)
    throw rangeError({
      where: 'correctionLine',
      wish: 'there must be points at 2 or more places',
      got: points.length,
    });
  for (const { at, correction, standardUncertainty } of points) {
    finite('correctionLine', 'at', at);
    finite('correctionLine', 'correction', correction);
    positive('correctionLine', 'standardUncertainty', standardUncertainty);
  }
}

/**
 * A straight line through corrections of unequal uncertainty, weights 1/u^2. Where the points scatter more than their
 * uncertainties allow (Birge ratio above 1) the scatter takes their place; it is never used to shrink them.
 * What all points have in common (the lender's uncertainty) must not be in their uncertainties: it is added when the line
 * is read, and neither fitting nor averaging shrinks it.
 * @throws RangeError for points at fewer than two places, a number not finite, or an uncertainty not above zero.
 * Sources: GUM H.3; R. T. Birge, Phys. Rev. 40 (1932) 207.
 */
export function correctionLine(points: readonly CorrectionPoint[]): CorrectionLine {
  checkPoints(points);
  const weights = points.map(({ standardUncertainty }) => standardUncertainty ** -2);
  const weighted = (of: (point: CorrectionPoint) => number) =>
    points.reduce((sum, point, i) => sum + (weights[i] ?? 0) * of(point), 0);
  const total = weighted(() => 1);
  const middle = weighted(({ at }) => at) / total;
  const correction = weighted((point) => point.correction) / total;
  const across = weighted(({ at }) => (at - middle) ** 2);
  const slope = weighted((point) => (point.at - middle) * (point.correction - correction)) / across;
  const chiSquare = weighted((point) => (point.correction - correction - slope * (point.at - middle)) ** 2);
  const free = points.length - 2;
  const birgeRatio = free === 0 ? 1 : Math.sqrt(chiSquare / free);
  const widened = Math.max(1, birgeRatio);
  const places = points.map(({ at }) => at);
  return {
    middle,
    correction,
    slope,
    correctionUncertainty: widened / Math.sqrt(total),
    slopeUncertainty: widened / Math.sqrt(across),
    birgeRatio,
    degreesOfFreedom: birgeRatio > 1 ? free : Number.POSITIVE_INFINITY,
    range: { lower: Math.min(...places), upper: Math.max(...places) },
  };
}
