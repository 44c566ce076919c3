/** Normal distributions about 0: shares, of either sign, and variances. */
export interface Normals {
  readonly weight: Float64Array;
  readonly variance: Float64Array;
}

/** Steps from one exact value to the next: between them rounding grows with the square of their number. */
const BLOCK = 32;
/** exp(-40) is 4e-18. */
const FADED = 40;

/** Adds the values of one normal at the steps of a block: exp(-a j^2), each from the one before by two products. */
function addNormal(block: Float64Array, from: number, weight: number, a: number): void {
  if (a * from * from > FADED) return;
  const count = Math.min(BLOCK, Math.ceil(Math.sqrt(FADED / a)) - from + 1);
  const bend = Math.exp(-2 * a);
  let ratio = Math.exp(-a * (2 * from + 1));
  let value = weight * Math.exp(-a * from * from);
  for (let i = 0; i < count; i++) {
    block[i] = (block[i] as number) + value;
    value *= ratio;
    ratio *= bend;
  }
}

/**
 * Characteristic function of a mixture of normals at whole multiples of `step` (1/unit of the variance's root), as a function of
 * the multiple, 0 or more: quick where neighbours are asked for in turn. Absolute error below 1e-12 of the sum of the weights.
 */
export function normalsAlong({ weight, variance }: Normals, step: number): (multiple: number) => number {
  const block = new Float64Array(BLOCK);
  let from = Number.NEGATIVE_INFINITY;
  return (multiple) => {
    if (multiple < from || multiple >= from + BLOCK) {
      from = multiple;
      block.fill(0);
      for (let k = 0; k < weight.length; k++)
        addNormal(block, from, weight[k] as number, 0.5 * step * step * (variance[k] as number));
    }
    return block[multiple - from] as number;
  };
}
