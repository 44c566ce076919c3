import { constant } from '../distribution/constant.ts';
import type { Distribution } from '../distribution/distribution.ts';
import { scaled } from '../distribution/scaled.ts';
import { isMember, type Member } from '../distribution/standard.ts';
import { student } from '../distribution/student.ts';
import { finite } from '../quantity.ts';
import { centreOf, spreadOf } from './extent.ts';

/** Narrower than this a square falls below the smallest double: the part is a constant for every purpose. */
const LEAST_SPREAD = 1e-150;

/** One term of a sum: a quantity and the factor that it enters with. */
export interface Term {
  readonly distribution: Distribution;
  readonly sensitivity: number;
}

/** A sum with its constants gathered: what is left are independent quantities of some width. */
export interface Gathered {
  readonly constant: number;
  readonly parts: readonly Distribution[];
}

function isCauchy(part: Distribution): part is Member {
  return isMember(part) && part.standard.degreesOfFreedom === 1;
}

/** Sums of t with one degree of freedom are of their kind again: locations and scales add. */
function mergeCauchy(parts: readonly Distribution[]): readonly Distribution[] {
  const heavy = parts.filter(isCauchy);
  if (heavy.length < 2) return parts;
  const location = heavy.reduce((sum, part) => sum + part.location, 0);
  const scale = heavy.reduce((sum, part) => sum + part.scale, 0);
  return [...parts.filter((part) => !isCauchy(part)), student({ location, scale, degreesOfFreedom: 1 })];
}

/** Applies the sensitivities and gathers what is constant. @throws RangeError unless constant and sensitivities are finite. */
export function gather(start: number, terms: readonly Term[]): Gathered {
  let sum = finite('wholeDistribution', 'constant', start);
  const parts: Distribution[] = [];
  for (const { distribution, sensitivity } of terms) {
    finite('wholeDistribution', 'sensitivity', sensitivity);
    const part = sensitivity === 0 ? constant(0) : scaled(distribution, { factor: sensitivity, shift: 0 });
    if (part.shape === 'constant') sum += part.limits.lower;
    else if (spreadOf(part) < LEAST_SPREAD) sum += centreOf(part);
    else parts.push(part);
  }
  return { constant: sum, parts: mergeCauchy(parts) };
}
