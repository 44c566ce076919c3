import type { Input } from '../model.ts';
import { choleskyFactor, correlationMatrix, type Tied, tiedGroups } from './correlation.ts';
import { checkedDegreesOfFreedom } from './input.ts';
import { type IndependentPart, welchSatterthwaite } from './welch-satterthwaite.ts';

/** Combined standard uncertainty of one output. */
export interface Combined {
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /** Signed share of the variance by input, covariances split evenly; they sum to 1, or are all 0. */
  readonly shares: readonly number[];
}

/** An input with its signed sensitivity x standard uncertainty, in the unit of the output. */
interface Weighted {
  readonly input: Input;
  readonly weight: number;
}

/**
 * Degrees of freedom of inputs that are tied to one another. Each contribution is itself doubtful by a part 1/sqrt(2 nu)
 * (GUM E.4.3); the doubts of a group are added as if they too went together. Inputs with one number of degrees, as those
 * estimated from the same readings have, keep it. The GUM leaves this case open; the rule is this project's own.
 */
function degreesOf(members: readonly Weighted[]): number {
  let [size, doubt] = [0, 0];
  for (const { input, weight } of members) {
    size += Math.abs(weight);
    doubt += Math.abs(weight) / Math.sqrt(checkedDegreesOfFreedom('combine', input));
  }
  return doubt === 0 ? Number.POSITIVE_INFINITY : (size / doubt) ** 2;
}

/** A group of tied inputs as one part, and each member's share of its variance times that variance (w_i sum of r_ij w_j). */
function partOf(members: readonly Weighted[], correlations: Tied['correlations']) {
  const matrix = correlationMatrix({ inputs: members.map(({ input }) => input), correlations });
  const factor = choleskyFactor(matrix);
  const columns = matrix.map((_, k) =>
    members.reduce((sum, { weight }, i) => sum + weight * (factor[i]?.[k] ?? 0), 0),
  );
  const part: IndependentPart = {
    contribution: Math.hypot(...columns),
    degreesOfFreedom: degreesOf(members),
  };
  const covariances = members.map(({ weight }, i) => ({
    weight,
    withAll: members.reduce((sum, other, j) => sum + other.weight * (matrix[i]?.[j] ?? 0), 0),
  }));
  return { part, covariances };
}

/**
 * Law of propagation of uncertainty for one output: u_c^2 = sum over i, j of w_i w_j r_ij with w = sensitivity x standard
 * uncertainty (signed), and Welch-Satterthwaite over the groups that correlation leaves independent.
 * @param weights in the order of the inputs, in the unit of the output.
 * @throws RangeError for correlations that cannot be together.
 * Source: GUM 5.2.2, formula (16); G.4.1.
 */
export function combine({ weights, ...tied }: Tied & { weights: readonly number[] }): Combined {
  const groups = new Map<number, number[]>();
  tiedGroups(tied).forEach((group, i) => {
    const members = groups.get(group);
    if (members === undefined) groups.set(group, [i]);
    else members.push(i);
  });
  const shares = weights.map(() => 0);
  const parts = [...groups.values()].map((places) => {
    const members = places.flatMap((i) => {
      const input = tied.inputs[i];
      return input === undefined ? [] : [{ input, weight: weights[i] ?? 0 }];
    });
    return { places, ...partOf(members, tied.correlations) };
  });
  const standardUncertainty = Math.hypot(...parts.map(({ part }) => part.contribution));
  for (const { places, covariances } of parts)
    covariances.forEach(({ weight, withAll }, k) => {
      const share = (weight / standardUncertainty) * (withAll / standardUncertainty);
      shares[places[k] ?? 0] = standardUncertainty === 0 ? 0 : share;
    });
  const degreesOfFreedom = welchSatterthwaite(parts.map(({ part }) => part));
  return { standardUncertainty, degreesOfFreedom, shares };
}
