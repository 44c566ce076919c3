import { finite, positive } from '../quantity.ts';
import { normalDensity, normalQuantile, normalShareBelow } from '../special/normal.ts';
import type { Random } from './distribution.ts';
import { type Member, memberOf, type Standard } from './standard.ts';

/** A uniform value that is never 0, whose quantile would be infinite. */
function aboveZero(random: Random): number {
  const u = random();
  return u > 0 ? u : 2 ** -54;
}

function normalShape(): Standard {
  return {
    shape: 'normal',
    hasMean: true,
    standardDeviation: 1,
    limit: Number.POSITIVE_INFINITY,
    density: normalDensity,
    lowerShare: normalShareBelow,
    lowerQuantile: normalQuantile,
    sample: (random) => normalQuantile(aboveZero(random)),
  };
}

/**
 * Normal distribution (GUM C.2.14). Unit: the quantity's. @throws RangeError unless mean is finite and
 * standardDeviation > 0.
 */
export function normal({ mean, standardDeviation }: { mean: number; standardDeviation: number }): Member {
  return memberOf(normalShape(), {
    location: finite('normal', 'mean', mean),
    scale: positive('normal', 'standardDeviation', standardDeviation),
  });
}
