import { finite, positive, rangeError } from './quantity.ts';
import { type Specification, toleranceOf } from './specification.ts';

/** The uncertainty that a verdict would take. */
export interface TargetUncertainty {
  /** Largest expanded uncertainty (half-width, symmetric) that still decides; infinite where a limit is infinitely far. */
  readonly expanded: number;
  readonly verdict: 'inside' | 'outside';
}

/**
 * How uncertain may the measurement be at most, to decide about this estimate with a guard band of `multiplier` x U? On a
 * limit nothing is small enough: 0.
 * @throws RangeError for an estimate not finite, a multiplier not above zero, or a specification without limit or in wrong order.
 * Source: JCGM 106, 8.3; VIM 2.34 (target measurement uncertainty).
 */
export function targetForVerdict({
  specification,
  estimate,
  multiplier = 1,
}: {
  specification: Specification;
  estimate: number;
  multiplier?: number;
}): TargetUncertainty {
  const { lower, upper } = toleranceOf('targetForVerdict', specification);
  finite('targetForVerdict', 'estimate', estimate);
  positive('targetForVerdict', 'multiplier', multiplier);
  const room = Math.min(estimate - lower, upper - estimate);
  return { expanded: Math.abs(room) / multiplier, verdict: room >= 0 ? 'inside' : 'outside' };
}

/**
 * The expanded uncertainty (k = 2) that a specification with two limits asks for, wherever the value lies: width over twice the
 * capability index C_m. 3 is asked for in legal metrology; at 1 only the very middle can be shown to conform.
 * @throws RangeError for a specification without two limits or a capability not above zero.
 * Source: JCGM 106, 7.6.3.
 */
export function targetForSpecification({
  specification,
  capability = 3,
}: {
  specification: Specification;
  capability?: number;
}): number {
  const { lower, upper } = toleranceOf('targetForSpecification', specification);
  positive('targetForSpecification', 'capability', capability);
  if (!Number.isFinite(upper - lower))
    throw rangeError({
      where: 'targetForSpecification',
      wish: 'specification must have two limits',
      got: [lower, upper],
    });
  return (upper - lower) / (2 * capability);
}
