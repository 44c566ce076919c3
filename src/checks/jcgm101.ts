import type { CheckSource } from './check.ts';
import { curvilinearExample } from './divisors.ts';
import { additive } from './jcgm101-additive.ts';
import { comparisonLoss } from './jcgm101-loss.ts';
import { lossDistributions } from './jcgm101-loss-whole.ts';
import { mass } from './jcgm101-mass.ts';
import { numerics } from './jcgm101-numerics.ts';

/** JCGM 101, Supplement 1 to the GUM. */
export function jcgm101(): CheckSource {
  return {
    id: 'jcgm101',
    name: 'JCGM 101:2008',
    citation:
      'JCGM 101:2008, Evaluation of measurement data – Supplement 1 to the GUM: propagation of distributions using a Monte Carlo method',
    checks: [
      curvilinearExample(),
      ...additive(),
      ...mass(),
      ...comparisonLoss(),
      ...lossDistributions(),
      ...numerics(),
    ],
  };
}
