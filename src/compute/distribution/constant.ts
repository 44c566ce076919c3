import { finite } from '../quantity.ts';
import { shareWithin } from '../special/share.ts';
import type { Distribution } from './distribution.ts';

/** A quantity known without doubt: one value, in its own unit. @throws RangeError unless finite. */
export function constant(value: number): Distribution {
  finite('constant', 'value', value);
  return {
    shape: 'constant',
    mean: value,
    standardDeviation: 0,
    limits: { lower: value, upper: value },
    density: (x) => (x === value ? Number.POSITIVE_INFINITY : 0),
    shareBelow: (x) => (x >= value ? 1 : 0),
    quantile: (share) => {
      shareWithin('quantile', share);
      return value;
    },
    sample: () => value,
  };
}
