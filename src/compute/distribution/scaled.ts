import { finite } from '../quantity.ts';
import { constant } from './constant.ts';
import type { Distribution } from './distribution.ts';
import { isMember, memberOf } from './standard.ts';
import { transformed } from './transformed.ts';

/**
 * Distribution of factor x + shift, of any sign of factor. Symmetric shapes keep their family, a factor of 0 leaves a
 * constant, and what has been transformed keeps the name of its shape. Unit: that of factor x.
 * @throws RangeError unless factor and shift are finite.
 */
export function scaled(of: Distribution, { factor, shift }: { factor: number; shift: number }): Distribution {
  finite('scaled', 'factor', factor);
  finite('scaled', 'shift', shift);
  if (factor === 0) return constant(shift);
  if (factor === 1 && shift === 0) return of;
  if (of.shape === 'constant') return constant(factor * of.limits.lower + shift);
  if (isMember(of))
    return memberOf(of.standard, {
      location: factor * of.location + shift,
      scale: Math.abs(factor) * of.scale,
    });
  return lopsided(of, { factor, shift });
}

function lopsided(of: Distribution, { factor, shift }: { factor: number; shift: number }): Distribution {
  const moved = transformed({
    of,
    forward: (x) => factor * x + shift,
    inverse: (y) => (y - shift) / factor,
    slope: () => factor,
  });
  return Object.defineProperties(moved, {
    shape: { value: of.shape },
    mean: { get: () => (of.mean === undefined ? undefined : factor * of.mean + shift) },
    standardDeviation: {
      get: () => (of.standardDeviation === undefined ? undefined : Math.abs(factor) * of.standardDeviation),
    },
  });
}
