import type { Model } from '../model.ts';
import type { BudgetRow, Propagation } from '../result.ts';
import { checkModel } from './check-model.ts';
import { combine } from './combined-variance.ts';
import { type CoverageWish, coverageOf } from './coverage-factor.ts';
import { standardUncertaintyOf } from './input.ts';
import { estimateOf, sensitivitiesOf } from './sensitivities.ts';

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
  const sensitivities = sensitivitiesOf({ model });
  const uncertainties = model.inputs.map(standardUncertaintyOf);
  const weights = sensitivities.map(({ value }, i) => value * (uncertainties[i] ?? 0));
  const { standardUncertainty, degreesOfFreedom, shares } = combine({
    inputs: model.inputs,
    weights,
    correlations: model.correlations,
  });
  const { coverageProbability, coverageFactor } = coverageOf({ ...wish, degreesOfFreedom });
  const expanded = coverageFactor * standardUncertainty;
  const estimate = estimateOf(model);
  const budget: BudgetRow[] = model.inputs.map((input, i) => ({
    id: input.id,
    standardUncertainty: uncertainties[i] ?? 0,
    sensitivity: sensitivities[i]?.value ?? 0,
    contribution: Math.abs(weights[i] ?? 0),
    share: shares[i] ?? 0,
    degreesOfFreedom: input.degreesOfFreedom,
  }));
  return {
    standardUncertainty,
    degreesOfFreedom,
    coverageProbability,
    coverageFactor,
    expanded,
    interval: { lower: estimate - expanded, upper: estimate + expanded },
    budget,
  };
}
