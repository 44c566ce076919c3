import type { Correlation, Input } from '../model.ts';
import { rangeError } from '../quantity.ts';
import { comonotoneCorrelation } from './comonotone.ts';

/** A square matrix, row by row. */
export type Matrix = readonly (readonly number[])[];

/** What a pivot may miss zero by before a set of coefficients counts as impossible: their rounding in print. */
const ROUNDING = 1e-9;

/**
 * Correlation matrix of the inputs: what is stated, and for inputs under one cause what moving together by rank means.
 * Expects a model already checked.
 */
export function correlationMatrix({
  inputs,
  correlations = [],
}: {
  inputs: readonly Input[];
  correlations?: readonly Correlation[] | undefined;
}): Matrix {
  const stated = new Map(correlations.map(({ a, b, r }) => [JSON.stringify([a, b].sort()), r]));
  const rows = inputs.map((_, i) => inputs.map((_, j) => (i === j ? 1 : 0)));
  inputs.forEach((a, i) => {
    inputs.slice(0, i).forEach((b, j) => {
      const shared = a.cause !== undefined && a.cause === b.cause;
      const r = shared
        ? comonotoneCorrelation(a.distribution, b.distribution)
        : (stated.get(JSON.stringify([a.id, b.id].sort())) ?? 0);
      (rows[i] as number[])[j] = r;
      (rows[j] as number[])[i] = r;
    });
  });
  return rows;
}

/**
 * The lower triangular L with L Lt = the matrix. Coefficients of +-1 are allowed: their column of L is zero. With it the
 * variance of a weighted sum is a sum of squares, which is never negative and cancels exactly under a shared cause.
 * @throws RangeError if no set of quantities can have these coefficients.
 */
export function choleskyFactor(matrix: Matrix): Matrix {
  const l = matrix.map((row) => row.map(() => 0));
  const at = (m: Matrix, i: number, j: number) => m[i]?.[j] ?? 0;
  for (let k = 0; k < matrix.length; k++) {
    const rest = (i: number) => {
      let left = at(matrix, i, k);
      for (let j = 0; j < k; j++) left -= at(l, i, j) * at(l, k, j);
      return left;
    };
    const pivot = rest(k);
    const root = pivot > ROUNDING ? Math.sqrt(pivot) : 0;
    for (let i = k; i < matrix.length; i++) {
      const left = rest(i);
      if (root === 0 && Math.abs(left) > Math.sqrt(ROUNDING))
        throw rangeError({
          where: 'choleskyFactor',
          wish: 'correlations must be possible together',
          got: matrix,
        });
      (l[i] as number[])[k] = root === 0 ? 0 : left / root;
    }
  }
  return l;
}

/** For each input the number of its group: inputs tied by a coefficient other than 0, directly or through others. */
export function correlatedGroups(matrix: Matrix): number[] {
  const group = matrix.map((_, i) => i);
  matrix.forEach((row, i) => {
    row.forEach((r, j) => {
      const [mine, theirs] = [group[i] ?? i, group[j] ?? j];
      if (r === 0 || mine === theirs) return;
      for (const [k, g] of group.entries()) if (g === theirs) group[k] = mine;
    });
  });
  return group;
}
