import { acceptedByProbability, narrowestSpan, probabilityWithin } from './acceptance.ts';
import {
  type Belief,
  beliefOf,
  type DecidingInterval,
  decidingIntervalOf,
  usualInterval,
} from './deciding.ts';
import type { Interval } from './distribution/distribution.ts';
import { rangeError } from './quantity.ts';
import type { Result } from './result.ts';
import { checkedRule, type Rule, type Specification, type Tolerance, toleranceOf } from './specification.ts';

/** Three verdicts, not two. */
export type Verdict = 'inside' | 'outside' | 'cant-tell';

/** A verdict with what it rests on. All numbers in the unit of the result, probabilities 0 to 1. */
export interface Judgement {
  readonly verdict: Verdict;
  readonly decidedBy: DecidingInterval;
  /** The interval that decided, as the result has it: a guard band's multiplier is not in it. */
  readonly interval: Interval;
  /** Whether the rule knows a zone in which it cannot tell: simple acceptance has none. */
  readonly hasUndecidedZone: boolean;
  /** Probability that the value lies within the specification, no prior knowledge assumed; none for a worst case. */
  readonly probabilityOfConformity: number | undefined;
  /** Estimates that would be inside, this uncertainty given; undefined where none would. */
  readonly acceptance: Interval | undefined;
  /** Estimates below `lower` or above `upper` would be outside. */
  readonly rejection: Interval;
  /** Where nothing can be inside: the expanded uncertainty (half-width of the deciding interval) that would just allow it. */
  readonly neededExpanded: number | undefined;
}

type Zones = Pick<Judgement, 'acceptance' | 'rejection' | 'neededExpanded'>;

function guarded(result: Result, interval: Interval, tolerance: Tolerance, multiplier: number): Zones {
  const below = multiplier * (result.estimate - interval.lower);
  const above = multiplier * (interval.upper - result.estimate);
  const acceptance = { lower: tolerance.lower + below, upper: tolerance.upper - above };
  const rejection = { lower: tolerance.lower - above, upper: tolerance.upper + below };
  // An interval without ends, from a worst case with an unlimited part: infinity less infinity must not decide.
  const open = !Number.isFinite(below + above);
  const empty = open || acceptance.lower > acceptance.upper;
  return {
    acceptance: empty ? undefined : acceptance,
    rejection: open ? { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY } : rejection,
    neededExpanded:
      empty && Number.isFinite(tolerance.upper - tolerance.lower)
        ? (tolerance.upper - tolerance.lower) / (2 * multiplier)
        : undefined,
  };
}

function probable(result: Result, of: Belief, tolerance: Tolerance, required: number): Zones {
  const accepted = (probability: number) =>
    acceptedByProbability({ of, estimate: result.estimate, tolerance, probability });
  const acceptance = accepted(required);
  return {
    acceptance,
    // Where even the middle of the tolerance reaches less than 1 - required, every estimate is outside.
    rejection: accepted(1 - required) ?? { lower: Number.POSITIVE_INFINITY, upper: Number.NEGATIVE_INFINITY },
    neededExpanded:
      acceptance === undefined
        ? result.propagation.expanded * shareThatFits(of, tolerance, required)
        : undefined,
  };
}

/** How much of its width the narrowest span with that probability may have to fit into the tolerance. */
function shareThatFits(of: Belief, { lower, upper }: Tolerance, probability: number): number {
  const span = narrowestSpan({ of, probability });
  return (upper - lower) / (span.upper - span.lower);
}

function zonesOf(result: Result, by: DecidingInterval, tolerance: Tolerance, rule: Rule): Zones {
  if (rule.kind === 'simple')
    return { acceptance: tolerance, rejection: tolerance, neededExpanded: undefined };
  if (rule.kind === 'guardBand')
    return guarded(result, decidingIntervalOf(result, by), tolerance, rule.multiplier);
  const belief = beliefOf(result, by);
  if (belief === undefined)
    throw rangeError({
      where: 'judge',
      wish: 'a worst case must not be judged by probability',
      got: rule.kind,
    });
  return probable(result, belief, tolerance, rule.required);
}

function verdictOf(estimate: number, { acceptance, rejection }: Zones): Verdict {
  if (acceptance !== undefined && estimate >= acceptance.lower && estimate <= acceptance.upper)
    return 'inside';
  return estimate < rejection.lower || estimate > rejection.upper ? 'outside' : 'cant-tell';
}

/** Nothing is in doubt without uncertainty: an estimate on a limit is then within, where a share below would put all of it outside. */
function conformity({ estimate, propagation }: Result, belief: Belief, tolerance: Tolerance): number {
  if (propagation.standardUncertainty > 0) return probabilityWithin(belief, tolerance);
  return estimate >= tolerance.lower && estimate <= tolerance.upper ? 1 : 0;
}

/**
 * Is the value inside the specification, outside it, or can this measurement not tell? With the acceptance limits, and
 * always with the probability of conformity (both tails counted, no prior knowledge assumed).
 * With two limits and a guard band wider than the room between them nothing can be inside: `acceptance` is then
 * undefined and `neededExpanded` says what uncertainty it would take. That is the method's shortcoming, not the transmitter's.
 * @param decidingInterval chosen with the rule, beforehand; without it the whole distribution, or propagation where
 * there is none.
 * @throws RangeError for a specification without limit or with lower >= upper, a rule out of range, an interval that the
 * result has not, or a required probability with a worst case.
 * Sources: JCGM 106, 7.2 to 8.3; ILAC-G8:09/2019 (guard band w = r U).
 */
export function judge({
  result,
  specification,
  rule,
  decidingInterval = usualInterval(result),
}: {
  result: Result;
  specification: Specification;
  rule: Rule;
  decidingInterval?: DecidingInterval | undefined;
}): Judgement {
  const tolerance = toleranceOf('judge', specification);
  const zones = zonesOf(result, decidingInterval, tolerance, checkedRule('judge', rule));
  const belief = beliefOf(result, decidingInterval);
  return {
    verdict: verdictOf(result.estimate, zones),
    decidedBy: decidingInterval,
    interval: decidingIntervalOf(result, decidingInterval),
    hasUndecidedZone: rule.kind !== 'simple',
    probabilityOfConformity: belief && conformity(result, belief, tolerance),
    ...zones,
  };
}
