import type { FunctionModel } from '../model.ts';
import { checkModel } from './check-model.ts';
import { choleskyFactor, correlationMatrix } from './correlation.ts';
import { centresOf, standardUncertaintyOf } from './input.ts';

/** What the curvature of a model adds to the law of propagation. Unit: the output's. */
export interface SecondOrder {
  /** To be added to u_c^2; may be negative where a third derivative opposes the first. */
  readonly variance: number;
  /** Half of the sum of second derivatives times variances: what the mean of the output lies above f at the means. */
  readonly estimateShift: number;
  /**
   * The mixed term of each pair as an uncertainty, |d2f/dx_i dx_j| u_i u_j, largest first, those without effect left out.
   * Only where inputs are independent.
   */
  readonly pairs: readonly { readonly a: string; readonly b: string; readonly uncertainty: number }[];
}

/** Steps in standard uncertainties; the second is extrapolated from, so that fourth derivatives do no harm. */
const STEP = 0.5;

type Along = (steps: readonly number[]) => number;

/** f over independent inputs of unit uncertainty: x = centre + u L z, with L from the correlations. */
function standardised(model: FunctionModel, correlations: FunctionModel['correlations']): Along {
  const centres = centresOf(model.inputs);
  const uncertainties = model.inputs.map(standardUncertaintyOf);
  const factor = choleskyFactor(correlationMatrix({ inputs: model.inputs, correlations }));
  return (z) =>
    model.f(
      centres.map((centre, i) => {
        const along = z.reduce((sum, step, k) => sum + (factor[i]?.[k] ?? 0) * step, 0);
        return centre + (uncertainties[i] ?? 0) * along;
      }),
    );
}

/** One Richardson step for a difference whose error falls with the square of h. */
const extrapolated = (difference: (h: number) => number) => (4 * difference(STEP) - difference(2 * STEP)) / 3;

/** First, pure second, mixed second and third derivatives about z = 0, all by central differences. */
function derivativesOf(f: Along, n: number) {
  const at = (...moves: (readonly [number, number])[]) => {
    const z: number[] = Array.from({ length: n }, () => 0);
    for (const [i, step] of moves) z[i] = (z[i] ?? 0) + step;
    return f(z);
  };
  const here = at();
  return {
    first: (i: number) => extrapolated((h) => (at([i, h]) - at([i, -h])) / (2 * h)),
    second: (i: number, j: number) =>
      extrapolated((h) =>
        i === j
          ? (at([i, h]) - 2 * here + at([i, -h])) / h ** 2
          : (at([i, h], [j, h]) - at([i, h], [j, -h]) - at([i, -h], [j, h]) + at([i, -h], [j, -h])) /
            (4 * h ** 2),
      ),
    /** d3f / dz_i dz_j^2. */
    third: (i: number, j: number) =>
      extrapolated((h) => {
        const bend = (side: number) => at([i, side], [j, h]) - 2 * at([i, side]) + at([i, side], [j, -h]);
        return (bend(h) - bend(-h)) / (2 * h ** 3);
      }),
  };
}

/**
 * Second-order terms of the law of propagation: sum over i, j of [(d2f/dx_i dx_j)^2 / 2 + df/dx_i d3f/dx_i dx_j^2] u_i^2 u_j^2,
 * with correlations too. For normal inputs; others of the same variance differ in the pure terms (i = j). For smooth
 * models right to about 1e-4 of themselves; functions of degree three or less: to rounding.
 * @throws RangeError as `propagate`.
 * Source: GUM 5.1.2, note; H.1.7. JCGM 101, 9.4.3 has a correlated example.
 */
export function secondOrder({ model }: { model: FunctionModel }): SecondOrder {
  checkModel('secondOrder', model);
  const n = model.inputs.length;
  const { first, second, third } = derivativesOf(standardised(model, model.correlations), n);
  let [variance, estimateShift] = [0, 0];
  for (let i = 0; i < n; i++) {
    estimateShift += second(i, i) / 2;
    for (let j = 0; j < n; j++) variance += second(i, j) ** 2 / 2 + first(i) * third(i, j);
  }
  return { variance, estimateShift, pairs: pairsOf(model, second) };
}

function pairsOf(model: FunctionModel, second: (i: number, j: number) => number): SecondOrder['pairs'] {
  const matrix = correlationMatrix(model);
  const independent = matrix.every((row, i) => row.every((r, j) => i === j || r === 0));
  if (!independent) return [];
  const all = model.inputs.flatMap((a, i) =>
    model.inputs.slice(0, i).map((b, j) => ({ a: b.id, b: a.id, uncertainty: Math.abs(second(j, i)) })),
  );
  return all
    .filter(({ uncertainty }) => uncertainty > 0)
    .sort((one, other) => other.uncertainty - one.uncertainty);
}
