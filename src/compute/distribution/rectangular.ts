import { middleOf } from './interval.ts';
import { type Member, memberOf } from './standard.ts';
import { trapezoidShape } from './trapezoid-shape.ts';

/**
 * Equally likely anywhere from lower to upper (GUM 4.3.7): limits, and nothing else known. Standard deviation
 * (upper - lower)/sqrt(12). Unit: the quantity's. @throws RangeError unless both are finite and lower < upper.
 */
export function rectangular(limits: { lower: number; upper: number }): Member {
  return memberOf(trapezoidShape('rectangular', 1), middleOf('rectangular', limits));
}
