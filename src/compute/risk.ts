import type { Distribution, Interval } from './distribution/distribution.ts';
import { positive, rangeError } from './quantity.ts';
import { unitNodes } from './special/integrate.ts';
import { normalShareBelow } from './special/normal.ts';
import { type Specification, toleranceOf } from './specification.ts';

/** What becomes of items of one kind, measured and sorted. Probabilities of one item, 0 to 1. */
export interface Risks {
  /** Conforming, before anything is measured. */
  readonly conforming: number;
  readonly accepted: number;
  /** Consumer's risk: accepted and not conforming. */
  readonly consumer: number;
  /** Producer's risk: rejected although conforming. */
  readonly producer: number;
  /** Of those rejected the part that conforms; 0 if none is rejected. */
  readonly conformingAmongRejected: number;
}

/** Shares of the prior left out at either end where it has no limit. */
const TAIL = 1e-15;
/** Shares of the prior at which its pieces part: a prior that is narrow beside them would fall between the nodes. */
const PARTS = [1e-9, 1e-4, 0.1, 0.5, 0.9, 1 - 1e-4, 1 - 1e-9] as const;
/** So many measurement uncertainties either side of an acceptance limit it is not yet certain what happens. */
const BLUR = 8;

/** Integral of g over a finite piece; where g is infinite at an end, a node that falls on it is left out. */
function integral(g: (y: number) => number, { lower, upper }: Interval): number {
  const width = upper - lower;
  return unitNodes().reduce((sum, { u, weight }) => {
    const part = weight * width * g(lower + width * u);
    return Number.isFinite(part) ? sum + part : sum;
  }, 0);
}

/** Pieces between neighbouring breaks, inside the reach of the prior. */
function piecesOf(reach: Interval, breaks: readonly number[]): Interval[] {
  const inside = breaks.filter((y) => y > reach.lower && y < reach.upper);
  const ends = [reach.lower, ...new Set(inside.sort((a, b) => a - b)), reach.upper];
  return ends.slice(1).map((upper, i) => ({ lower: ends[i] ?? upper, upper }));
}

function reachOf({ limits, quantile }: Distribution): Interval {
  return {
    lower: Number.isFinite(limits.lower) ? limits.lower : quantile(TAIL),
    upper: Number.isFinite(limits.upper) ? limits.upper : quantile(1 - TAIL),
  };
}

/**
 * Consumer's and producer's risk when items whose values spread as `prior` are measured with a normal error and accepted
 * inside `acceptance`. Right to about 1e-9 for a smooth prior, to 1e-7 for one whose density is infinite somewhere (U-shaped).
 * @param measurementUncertainty standard uncertainty of one measurement, > 0, in the unit of the prior.
 * @throws RangeError for specification or acceptance without limit or in wrong order, or an uncertainty not above zero.
 * Source: JCGM 106, 9.5.
 */
export function risksOf({
  prior,
  measurementUncertainty,
  specification,
  acceptance,
}: {
  prior: Distribution;
  measurementUncertainty: number;
  specification: Specification;
  acceptance: Specification;
}): Risks {
  const u = positive('risksOf', 'measurementUncertainty', measurementUncertainty);
  const tolerance = toleranceOf('risksOf', specification);
  const accept = toleranceOf('risksOf', acceptance);
  if (prior.limits.lower === prior.limits.upper)
    throw rangeError({ where: 'risksOf', wish: 'prior must have a width', got: prior.limits.lower });
  const passes = (y: number) =>
    normalShareBelow((accept.upper - y) / u) - normalShareBelow((accept.lower - y) / u);
  const edges = [accept.lower, accept.upper].flatMap((edge) => [edge - BLUR * u, edge, edge + BLUR * u]);
  const parts = PARTS.map((share) => prior.quantile(share));
  const pieces = piecesOf(reachOf(prior), [tolerance.lower, tolerance.upper, ...edges, ...parts]);
  let [accepted, consumer] = [0, 0];
  for (const piece of pieces) {
    const passing = integral((y) => prior.density(y) * passes(y), piece);
    const middle = (piece.lower + piece.upper) / 2;
    accepted += passing;
    if (middle < tolerance.lower || middle > tolerance.upper) consumer += passing;
  }
  const conforming = prior.shareBelow(tolerance.upper) - prior.shareBelow(tolerance.lower);
  const producer = Math.max(0, conforming - (accepted - consumer));
  return {
    conforming,
    accepted,
    consumer,
    producer,
    conformingAmongRejected: accepted < 1 ? producer / (1 - accepted) : 0,
  };
}
