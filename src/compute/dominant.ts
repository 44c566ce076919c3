import type { Propagation } from './result.ts';

/** Shares that differ by less than this part of them are level: the rest is rounding. */
const LEVEL_WITHIN = 1e-9;

/**
 * Ids of the inputs that bring most of the variance, in their order: several where their shares are level, to a part in a thousand
 * million, and none where nothing adds any.
 */
export function dominantInputs({ budget }: Pick<Propagation, 'budget'>): readonly string[] {
  const most = Math.max(...budget.map(({ share }) => share));
  return budget.flatMap(({ id, share }) => (share > 0 && share >= most * (1 - LEVEL_WITHIN) ? [id] : []));
}
