import { middleOf } from './interval.ts';
import { type Member, memberOf } from './standard.ts';
import { trapezoidShape } from './trapezoid-shape.ts';

/**
 * Symmetric triangle from lower to upper (GUM 4.3.9): values near the middle likelier. Standard deviation
 * (upper - lower)/sqrt(24). Unit: the quantity's. @throws RangeError unless both are finite and lower < upper.
 */
export function triangular(limits: { lower: number; upper: number }): Member {
  return memberOf(trapezoidShape('triangular', 0), middleOf('triangular', limits));
}
