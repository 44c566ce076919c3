import { rangeError } from '../quantity.ts';
import { middleOf } from './interval.ts';
import { type Member, memberOf } from './standard.ts';
import { trapezoidShape } from './trapezoid-shape.ts';

/**
 * Symmetric trapezoid from lower to upper whose top is topRatio (beta, 0 to 1) times as wide as its base (GUM 4.3.9).
 * Standard deviation a sqrt((1 + beta^2)/6) with a the half-width; beta 1 is the rectangle, 0 the triangle. Unit: the
 * quantity's. @throws RangeError unless the ends are finite, lower < upper and 0 <= topRatio <= 1.
 */
export function trapezoidal({
  topRatio,
  ...limits
}: {
  lower: number;
  upper: number;
  topRatio: number;
}): Member {
  if (!(topRatio >= 0 && topRatio <= 1))
    throw rangeError({ where: 'trapezoidal', wish: 'topRatio must be 0 to 1', got: topRatio });
  return memberOf(trapezoidShape('trapezoidal', topRatio), middleOf('trapezoidal', limits));
}
