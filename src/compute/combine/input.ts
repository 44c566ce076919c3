import type { Input } from '../model.ts';
import { finite, notNegative, rangeError } from '../quantity.ts';

/** Where an input is centred: its mean, or its median where no mean exists (Student t with one degree of freedom). */
export function centreOf({ distribution }: Input): number {
  return distribution.mean ?? distribution.quantile(0.5);
}

/**
 * The standard uncertainty that the budget counts: the stated one, or the standard deviation of the shape.
 * @throws RangeError where neither exists, or a negative one is stated.
 */
export function standardUncertaintyOf({ id, distribution, standardUncertainty }: Input): number {
  const u = standardUncertainty ?? distribution.standardDeviation;
  if (u === undefined)
    throw rangeError({
      where: 'standardUncertaintyOf',
      wish: 'input must state a standardUncertainty, its shape having no standard deviation',
      got: id,
    });
  return notNegative('standardUncertaintyOf', `standardUncertainty of ${id}`, u);
}

/**
 * Degrees of freedom as a number above zero, Infinity allowed.
 * @throws RangeError otherwise.
 */
export function checkedDegreesOfFreedom(where: string, { id, degreesOfFreedom }: Input): number {
  if (!(degreesOfFreedom > 0))
    throw rangeError({
      where,
      wish: `degreesOfFreedom of ${id} must be > 0`,
      got: degreesOfFreedom,
    });
  return degreesOfFreedom;
}

/** Whether a shape ends on both sides. */
export function isLimited({ distribution: { limits } }: Input): boolean {
  return Number.isFinite(limits.lower) && Number.isFinite(limits.upper);
}

/** The values at which a model is evaluated for its estimate. @throws RangeError unless all are finite. */
export function centresOf(inputs: readonly Input[]): number[] {
  return inputs.map((input) => finite('centresOf', `centre of ${input.id}`, centreOf(input)));
}
