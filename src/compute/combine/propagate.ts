import type { Model } from '../model.ts';
import type { Propagation } from '../result.ts';
import { checkModel } from './check-model.ts';
import type { CoverageWish } from './coverage-factor.ts';
import { estimateOf } from './estimate.ts';
import { propagated } from './propagated.ts';
import { sensitivitiesOf } from './sensitivities.ts';

/**
 * Combined and expanded uncertainty of a model's output, with its budget, by the law of propagation of uncertainty:
 * sensitivities (exact for a sum, else numerical), correlations and shared causes, effective degrees of freedom on
 * unrounded values, t at the real-valued degrees of freedom.
 * Inputs with one cause are correlated as far as moving together by rank makes them: fully, if of one shape.
 * @param coverageProbability above 0 and below 1, 0.95 if nothing is given; or else `coverageFactor`, above 0.
 * @throws RangeError for a model that cannot be evaluated (see `checkModel`), correlations that are impossible together,
 * an input without a standard uncertainty, or a function that is not finite about the estimate.
 * Source: GUM 5.1, 5.2, G.4, G.6.4.
 */
export function propagate({ model, ...wish }: { model: Model } & CoverageWish): Propagation {
  checkModel('propagate', model);
  const sensitivities = sensitivitiesOf({ model }).map(({ value }) => value);
  return propagated(model, { sensitivities, estimate: estimateOf(model), ...wish });
}
