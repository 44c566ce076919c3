import fc from 'fast-check';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { curvilinear } from '../../../src/compute/distribution/curvilinear.ts';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { scaled } from '../../../src/compute/distribution/scaled.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { transformed } from '../../../src/compute/distribution/transformed.ts';
import { trapezoidal } from '../../../src/compute/distribution/trapezoidal.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';

/** factor x lg(1 + x), where 1 + x > 0: a relative deviation in decibels. */
export function inDecibels(of: Distribution, factor = 20): Distribution {
  return transformed({
    of,
    forward: (x) => factor * Math.log10(1 + x),
    inverse: (y) => 10 ** (y / factor) - 1,
    slope: (x) => factor / (Math.LN10 * (1 + x)),
    domain: { lower: -1, upper: Number.POSITIVE_INFINITY },
  });
}

const centre = fc.double({ min: -50, max: 50, noNaN: true });
const width = fc.double({ min: 0.01, max: 20, noNaN: true });
const ratio = fc.double({ min: 0, max: 1, noNaN: true });
const bounded = fc
  .tuple(centre, width)
  .map(([middle, half]) => ({ lower: middle - half, upper: middle + half }));

/** Any symmetric shape, anywhere, of any width. */
export const anySymmetric: fc.Arbitrary<Distribution> = fc.oneof(
  bounded.map(rectangular),
  bounded.map(triangular),
  fc.tuple(bounded, ratio).map(([limits, topRatio]) => trapezoidal({ ...limits, topRatio })),
  fc
    .tuple(bounded, fc.double({ min: 0.01, max: 1, noNaN: true }))
    .map(([limits, part]) =>
      curvilinear({ ...limits, limitHalfWidth: (part * (limits.upper - limits.lower)) / 2 }),
    ),
  fc.tuple(centre, width).map(([middle, halfWidth]) => arcsine({ centre: middle, halfWidth })),
  fc.tuple(centre, width).map(([mean, standardDeviation]) => normal({ mean, standardDeviation })),
  fc
    .tuple(centre, width, fc.double({ min: 1, max: 60, noNaN: true }))
    .map(([location, scale, degreesOfFreedom]) => student({ location, scale, degreesOfFreedom })),
);

const small = fc.double({ min: 0.002, max: 0.3, noNaN: true });

/** Shapes turned into decibels: lopsided. */
export const anyLopsided: fc.Arbitrary<Distribution> = fc.oneof(
  small.map((half) => inDecibels(rectangular({ lower: -half, upper: half }))),
  small.map((half) => inDecibels(arcsine({ centre: 0, halfWidth: half }), -10)),
  small.map((half) => inDecibels(triangular({ lower: -half, upper: half }), 10)),
  fc
    .double({ min: 0.002, max: 0.1, noNaN: true })
    .map((standardDeviation) => inDecibels(normal({ mean: 0, standardDeviation }))),
);

/** Any shape at all, stretched, mirrored and moved. */
export const anyShape: fc.Arbitrary<Distribution> = fc
  .tuple(fc.oneof(anySymmetric, anyLopsided), fc.constantFrom(-2, -1, 0.5, 1, 3), centre)
  .map(([of, factor, shift]) => scaled(of, { factor, shift }));
