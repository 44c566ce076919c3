import type { Correlation, Input } from '../model.ts';
import { rangeError } from '../quantity.ts';
import { comonotoneCorrelation } from './comonotone.ts';

/** A square matrix, row by row. */
export type Matrix = readonly (readonly number[])[];

/** Inputs with the coefficients that are stated between them. */
export interface Tied {
  readonly inputs: readonly Input[];
  readonly correlations?: readonly Correlation[] | undefined;
}

/** What a pivot may miss zero by before a set of coefficients counts as impossible: their rounding in print. */
const ROUNDING = 1e-9;

/** For each input the number of its group: inputs tied by a cause or a coefficient other than 0, directly or through others. */
export function tiedGroups({ inputs, correlations = [] }: Tied): number[] {
  const group = inputs.map((_, i) => i);
  const join = (i: number, j: number) => {
    const [mine, theirs] = [group[i] ?? i, group[j] ?? j];
    if (mine !== theirs)
      group.forEach((g, k) => {
        if (g === theirs) group[k] = mine;
      });
  };
  const place = new Map(inputs.map(({ id }, i) => [id, i]));
  for (const { a, b, r } of correlations) if (r !== 0) join(place.get(a) ?? 0, place.get(b) ?? 0);
  const firstOf = new Map<string, number>();
  inputs.forEach(({ cause }, i) => {
    if (cause === undefined) return;
    const first = firstOf.get(cause);
    if (first === undefined) firstOf.set(cause, i);
    else join(first, i);
  });
  return group;
}

/**
 * Correlation matrix of the inputs: what is stated, and for inputs under one cause what moving together by rank means.
 * Coefficients of inputs that are not among them do not count. Expects a model already checked.
 */
export function correlationMatrix({ inputs, correlations = [] }: Tied): Matrix {
  const place = new Map(inputs.map(({ id }, i) => [id, i]));
  const rows = inputs.map((_, i) => inputs.map((__, j) => (i === j ? 1 : 0)));
  const set = (i: number | undefined, j: number | undefined, r: number) => {
    if (i === undefined || j === undefined) return;
    (rows[i] as number[])[j] = r;
    (rows[j] as number[])[i] = r;
  };
  for (const { a, b, r } of correlations) set(place.get(a), place.get(b), r);
  inputs.forEach((a, i) => {
    if (a.cause === undefined) return;
    inputs.slice(0, i).forEach((b, j) => {
      if (a.cause === b.cause) set(i, j, comonotoneCorrelation(a.distribution, b.distribution));
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
