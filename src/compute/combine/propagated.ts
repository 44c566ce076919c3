import type { Model } from '../model.ts';
import type { BudgetRow, Propagation } from '../result.ts';
import { combine } from './combined-variance.ts';
import { type CoverageWish, coverageOf } from './coverage-factor.ts';
import { standardUncertaintyOf } from './input.ts';

/** The propagation of a model that was checked, from its sensitivities and the output at the centres of its inputs. */
export function propagated(
  { inputs, correlations }: Pick<Model, 'inputs' | 'correlations'>,
  { sensitivities, estimate, ...wish }: { sensitivities: readonly number[]; estimate: number } & CoverageWish,
): Propagation {
  const uncertainties = inputs.map(standardUncertaintyOf);
  const weights = sensitivities.map((value, i) => value * (uncertainties[i] ?? 0));
  const { standardUncertainty, degreesOfFreedom, shares } = combine({
    inputs,
    weights,
    correlations,
  });
  const { coverageProbability, coverageFactor } = coverageOf({ ...wish, degreesOfFreedom });
  const expanded = coverageFactor * standardUncertainty;
  const budget: BudgetRow[] = inputs.map((input, i) => ({
    id: input.id,
    standardUncertainty: uncertainties[i] ?? 0,
    sensitivity: sensitivities[i] ?? 0,
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
