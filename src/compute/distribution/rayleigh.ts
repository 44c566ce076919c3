import { positive } from '../quantity.ts';
import { shareWithin } from '../special/share.ts';
import type { Distribution } from './distribution.ts';

/**
 * Length of a vector whose two components are independent normal values of mean 0 and standard deviation `scale`: the
 * Rayleigh distribution, as of a reflection made of many small ones. Mean scale sqrt(pi/2), standard deviation
 * scale sqrt(2 - pi/2). Unit: that of scale. Closed form. @throws RangeError unless scale > 0.
 */
export function rayleigh({ scale }: { scale: number }): Distribution {
  positive('rayleigh', 'scale', scale);
  return {
    shape: 'rayleigh',
    mean: scale * Math.sqrt(Math.PI / 2),
    standardDeviation: scale * Math.sqrt(2 - Math.PI / 2),
    limits: { lower: 0, upper: Number.POSITIVE_INFINITY },
    density: (x) => (x > 0 ? (x / scale ** 2) * Math.exp(-((x / scale) ** 2) / 2) : 0),
    shareBelow: (x) => (x > 0 ? -Math.expm1(-((x / scale) ** 2) / 2) : 0),
    quantile: (share) => scale * Math.sqrt(-2 * Math.log1p(-shareWithin('quantile', share))),
    sample: (random) => scale * Math.sqrt(-2 * Math.log1p(-random())),
  };
}
