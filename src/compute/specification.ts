import { finite, positive, rangeError } from './quantity.ts';

/** What is demanded of the quantity: one or two limits, in the unit of the result. On a limit counts as within. */
export interface Specification {
  readonly lower?: number;
  readonly upper?: number;
}

/** How a result is judged; chosen before the first reading. */
export type Rule =
  /** The estimate alone decides: no uncertainty is taken off, and nothing is ever undecided (JCGM 106, 8.2). */
  | { readonly kind: 'simple' }
  /** The interval about the estimate decides, drawn `multiplier` times as wide: a guard band w = r U (JCGM 106, 8.3). */
  | { readonly kind: 'guardBand'; readonly multiplier: number }
  /** Inside if the probability of conformity is at least `required`, outside if that of nonconformity is. */
  | { readonly kind: 'probability'; readonly required: number };

/** A specification with both ends, infinite where there is no limit. */
export interface Tolerance {
  readonly lower: number;
  readonly upper: number;
}

/** Both ends of a specification. @throws RangeError without any limit, with one not finite, or with lower >= upper. */
export function toleranceOf(where: string, { lower, upper }: Specification): Tolerance {
  if (lower === undefined && upper === undefined)
    throw rangeError({ where, wish: 'specification must have a limit', got: {} });
  if (lower !== undefined) finite(where, 'specification.lower', lower);
  if (upper !== undefined) finite(where, 'specification.upper', upper);
  const tolerance = { lower: lower ?? Number.NEGATIVE_INFINITY, upper: upper ?? Number.POSITIVE_INFINITY };
  if (tolerance.lower >= tolerance.upper)
    throw rangeError({ where, wish: 'specification.lower must be < upper', got: [lower, upper] });
  return tolerance;
}

/** Returns a rule unchanged. @throws RangeError unless multiplier is > 0, or required is above 1/2 and below 1. */
export function checkedRule(where: string, rule: Rule): Rule {
  if (rule.kind === 'guardBand') positive(where, 'multiplier', rule.multiplier);
  if (rule.kind === 'probability' && !(rule.required > 0.5 && rule.required < 1))
    throw rangeError({ where, wish: 'required must be above 0.5 and below 1', got: rule.required });
  return rule;
}
