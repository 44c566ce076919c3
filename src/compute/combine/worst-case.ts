import type { Model } from '../model.ts';
import type { WorstCase } from '../result.ts';
import { checkModel } from './check-model.ts';
import { extremesOf } from './extremes.ts';
import { isLimited } from './input.ts';
import { sensitivitiesOf } from './sensitivities.ts';
import { worstOfSum } from './worst-sum.ts';

/**
 * The ends that the output reaches when every limited input sits at its unfavourable limit; inputs under one cause move
 * together, so that what cancels in a ratio does not count. Inputs without a limit on both sides stay at their centre and
 * are named in `unlimited`: the ends then guarantee nothing. Correlation coefficients are ignored, as a limit knows none.
 * Exact for a sum. For a function exact if it is monotone in each input between its limits (middles are tried too, so
 * that a single bend there is seen in part only).
 * @throws RangeError for a model that cannot be evaluated (see `checkModel`).
 * Source: common practice ("adding the limits").
 */
export function worstCaseOf({ model }: { model: Model }): WorstCase {
  checkModel('worstCaseOf', model);
  if (model.kind === 'sum') return worstOfSum(model);
  const slopes = sensitivitiesOf({ model }).map(({ value }) => value);
  return {
    interval: extremesOf(model, slopes),
    unlimited: model.inputs.filter((input, i) => !isLimited(input) && slopes[i] !== 0).map(({ id }) => id),
  };
}
