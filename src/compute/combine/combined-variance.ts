import type { Correlation, Input } from '../model.ts';
import { choleskyFactor, correlatedGroups, correlationMatrix } from './correlation.ts';
import { checkedDegreesOfFreedom } from './input.ts';
import { type IndependentPart, welchSatterthwaite } from './welch-satterthwaite.ts';

/** Combined standard uncertainty of one output. */
export interface Combined {
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /** Signed share of the variance by input, covariances split evenly; they sum to 1, or are all 0. */
  readonly shares: readonly number[];
}

/**
 * Degrees of freedom of inputs that are tied to one another. They are estimated together as a rule and have the same
 * number; where they have not, the smallest stands for all, so that the interval is never too narrow for it.
 */
function degreesOfGroup(members: readonly { input: Input; weight: number }[]): number {
  const counting = members.filter(({ weight }) => weight !== 0);
  return counting.reduce(
    (least, { input }) => Math.min(least, checkedDegreesOfFreedom('combine', input)),
    Number.POSITIVE_INFINITY,
  );
}

/**
 * Law of propagation of uncertainty for one output: u_c^2 = sum over i, j of w_i w_j r_ij with w = sensitivity x standard
 * uncertainty (signed), and Welch-Satterthwaite over the groups that correlation leaves independent.
 * @param weights in the order of the inputs, in the unit of the output.
 * @throws RangeError for correlations that cannot be together.
 * Source: GUM 5.2.2, formula (16); G.4.1.
 */
export function combine({
  inputs,
  weights,
  correlations,
}: {
  inputs: readonly Input[];
  weights: readonly number[];
  correlations?: readonly Correlation[] | undefined;
}): Combined {
  const matrix = correlationMatrix({ inputs, correlations });
  const factor = choleskyFactor(matrix);
  const groups = correlatedGroups(matrix);
  // Column k of the factor belongs to the group of input k alone: u_c^2 is the sum of squares of these.
  const columns = matrix.map((_, k) =>
    weights.reduce((sum, weight, i) => sum + weight * (factor[i]?.[k] ?? 0), 0),
  );
  const standardUncertainty = Math.hypot(...columns);
  const parts: IndependentPart[] = [...new Set(groups)].map((group) => ({
    contribution: Math.hypot(...columns.filter((_, k) => groups[k] === group)),
    degreesOfFreedom: degreesOfGroup(
      inputs.map((input, i) => ({ input, weight: groups[i] === group ? (weights[i] ?? 0) : 0 })),
    ),
  }));
  const shares = weights.map((weight, i) => {
    const covariance = weights.reduce((sum, other, j) => sum + other * (matrix[i]?.[j] ?? 0), 0);
    return standardUncertainty === 0
      ? 0
      : (weight / standardUncertainty) * (covariance / standardUncertainty);
  });
  return { standardUncertainty, degreesOfFreedom: welchSatterthwaite(parts), shares };
}
