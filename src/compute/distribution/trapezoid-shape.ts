import type { Shape } from './distribution.ts';
import type { Standard } from './standard.ts';

/**
 * Symmetric trapezoid of base half-width 1 and top half-width `topRatio`, 0 (triangle) to 1 (rectangle): the sum of two
 * uniform values of half-widths (1 + topRatio)/2 and (1 - topRatio)/2 (JCGM 101, 6.4.4).
 */
export function trapezoidShape(shape: Shape, topRatio: number): Standard {
  const peak = 1 / (1 + topRatio);
  const slope = 1 - topRatio;
  const rampShare = 0.5 * peak * slope;
  const wide = (1 + topRatio) / 2;
  const narrow = slope / 2;
  return {
    shape,
    hasMean: true,
    standardDeviation: Math.sqrt((1 + topRatio * topRatio) / 6),
    limit: 1,
    topRatio,
    density: (z) => (Math.abs(z) <= topRatio ? peak : (peak * (1 - Math.abs(z))) / slope),
    lowerShare: (z) => (z >= -topRatio ? 0.5 + peak * z : (0.5 * peak * (1 + z) * (1 + z)) / slope),
    lowerQuantile: (share) =>
      share >= rampShare ? (share - 0.5) / peak : Math.sqrt((2 * share * slope) / peak) - 1,
    sample: (random) =>
      narrow === 0 ? 2 * random() - 1 : wide * (2 * random() - 1) + narrow * (2 * random() - 1),
  };
}
