import { positive, rangeError } from '../quantity.ts';
import { solveRising } from '../special/solve.ts';
import { middleOf } from './interval.ts';
import { type Member, memberOf, type Standard } from './standard.ts';

/**
 * A rectangle whose half-width is itself uniform from `near` to 2 - near (JCGM 101, 6.4.3), in units of the half-width
 * stated; 0 <= near < 1. The edges fall as a logarithm.
 */
function curvilinearShape(near: number): Standard {
  const limit = 2 - near;
  const width = limit - near;
  const logEdge = Math.log(limit / near);
  const density = (z: number) => Math.log(limit / Math.max(Math.abs(z), near)) / (2 * width);
  /** Share beyond r, for r >= near: the integral of the logarithm. */
  const beyond = (r: number) => (limit - r - r * Math.log(limit / r)) / (2 * width);
  const lowerShare = (z: number) => {
    if (z === 0) return 0.5;
    return -z >= near ? beyond(-z) : 0.5 + (z * logEdge) / (2 * width);
  };
  return {
    shape: 'curvilinear',
    hasMean: true,
    standardDeviation: Math.sqrt(1 / 3 + (1 - near) ** 2 / 9),
    limit,
    density,
    lowerShare,
    lowerQuantile: (share) =>
      solveRising((z) => ({ value: lowerShare(z), slope: density(z) }), {
        wanted: share,
        lower: -limit,
        upper: 0,
      }),
    sample: (random) => (near + width * random()) * (2 * random() - 1),
  };
}

/**
 * Curvilinear trapezoid (JCGM 101, 6.4.3): within lower and upper, limits that are themselves only known to
 * +-limitHalfWidth (d). The middle is fixed and the half-width a is uniform from a - d to a + d, so that
 * variance = a^2/3 + d^2/9. Unit: the quantity's. With d = 0 it is the rectangle.
 * @throws RangeError unless the ends are finite, lower < upper and 0 < limitHalfWidth <= (upper - lower)/2.
 */
export function curvilinear({
  limitHalfWidth,
  ...limits
}: {
  lower: number;
  upper: number;
  limitHalfWidth: number;
}): Member {
  const middle = middleOf('curvilinear', limits);
  positive('curvilinear', 'limitHalfWidth', limitHalfWidth);
  if (limitHalfWidth > middle.scale)
    throw rangeError({
      where: 'curvilinear',
      wish: `limitHalfWidth must be <= half the width, ${middle.scale}`,
      got: limitHalfWidth,
    });
  return memberOf(curvilinearShape(1 - limitHalfWidth / middle.scale), middle);
}
