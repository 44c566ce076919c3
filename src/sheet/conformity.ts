import {
  type Judgement,
  judge,
  normal,
  type Result,
  type Risks,
  type Rule,
  risksOf,
  type Specification,
} from '#compute';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from './coverage.ts';

/** A measured value held against a specification by a rule; every number in one unit. */
export interface HeldAgainst {
  readonly estimate: number;
  readonly standardUncertainty: number;
  readonly specification: Specification;
  readonly rule: Rule;
  /** How far such things spread about the middle of their tolerance, as one standard deviation; not said where nobody knows. */
  readonly spread?: number | undefined;
}

/** The result of a measurement that is a bell about its estimate: with nothing to combine, it is its own propagation. */
function bellAbout(estimate: number, standardUncertainty: number): Result {
  const expanded = COVERAGE_FACTOR * standardUncertainty;
  const interval = { lower: estimate - expanded, upper: estimate + expanded };
  return {
    estimate,
    worstCase: { interval, unlimited: ['value'] },
    propagation: {
      standardUncertainty,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      coverageProbability: COVERAGE_PROBABILITY,
      coverageFactor: COVERAGE_FACTOR,
      expanded,
      interval,
      budget: [],
    },
    // Not asked for: the whole distribution of one bell is that bell.
    whole: { unavailable: 'not-a-sum' },
  };
}

/** The verdict on a value that is known as a bell about its estimate. @throws RangeError as `judge`. */
export const judgedBy = ({ estimate, standardUncertainty, specification, rule }: HeldAgainst): Judgement =>
  judge({
    result: bellAbout(estimate, standardUncertainty),
    specification,
    rule,
    decidingInterval: 'propagation',
  });

/** From the estimate to the nearer limit in standard uncertainties, positive while the limit is kept: the z of JCGM 106. */
export function distanceInU({ estimate, standardUncertainty, specification }: HeldAgainst): number {
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = specification;
  return Math.min(estimate - lower, upper - estimate) / standardUncertainty;
}

/** The largest chance that a value called inside is not: that of an estimate on the edge of what is accepted. None where nothing is. */
export function riskAtEdge(held: HeldAgainst): number | undefined {
  const { acceptance } = judgedBy(held);
  if (acceptance === undefined) return undefined;
  const risks = [acceptance.lower, acceptance.upper]
    .filter(Number.isFinite)
    .map((estimate) => 1 - (judgedBy({ ...held, estimate }).probabilityOfConformity ?? 0));
  return Math.max(...risks);
}

/**
 * What becomes of many such things, measured one by one and sorted by the rule: what it does not call inside counts as sent back.
 * Undefined with one limit only, or where nobody knows how they spread.
 */
export function sortedBy(held: HeldAgainst): Risks | undefined {
  const { spread, standardUncertainty, specification } = held;
  const { lower, upper } = specification;
  if (spread === undefined || lower === undefined || upper === undefined) return undefined;
  const prior = normal({ mean: (lower + upper) / 2, standardDeviation: spread });
  const { acceptance } = judgedBy(held);
  // One single accepted reading, where the guard bands just meet, is never met.
  if (acceptance && acceptance.lower < acceptance.upper)
    return risksOf({ prior, measurementUncertainty: standardUncertainty, specification, acceptance });
  const conforming = prior.shareBelow(upper) - prior.shareBelow(lower);
  return {
    conforming,
    accepted: 0,
    consumer: 0,
    producer: conforming,
    conformingAmongRejected: conforming,
  };
}

/** The club's hidden transmitter on the evening of its third battery, by the usual rule. Every value is invented. */
export const clubHeld = (rule: Rule = { kind: 'guardBand', multiplier: 1 }): HeldAgainst => ({
  estimate: 28.2,
  standardUncertainty: 0.345,
  specification: { lower: 25.5, upper: 28.5 },
  rule,
  spread: 0.8,
});
