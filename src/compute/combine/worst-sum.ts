import type { SumModel } from '../model.ts';
import type { WorstCase } from '../result.ts';
import { mergeCauses } from './merge-causes.ts';
import { together } from './together.ts';

/** The worst case of a sum that was checked: the limits of its independent terms, those under one cause together. */
export function worstOfSum(model: SumModel): WorstCase {
  const merged = mergeCauses(model, together);
  let [lower, upper] = [merged.constant, merged.constant];
  const unlimited = new Set<string>();
  for (const { ids, distribution, sensitivity } of merged.terms) {
    const { limits } = distribution;
    const ends = [sensitivity * limits.lower, sensitivity * limits.upper];
    if (ends.every((end) => Number.isFinite(end))) {
      lower += Math.min(...ends);
      upper += Math.max(...ends);
      continue;
    }
    const centre = sensitivity * (distribution.mean ?? distribution.quantile(0.5));
    lower += centre;
    upper += centre;
    for (const id of ids) unlimited.add(id);
  }
  return {
    interval: { lower, upper },
    unlimited: model.inputs.filter(({ id }) => unlimited.has(id)).map(({ id }) => id),
  };
}
