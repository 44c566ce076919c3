import type { CheckSource } from './check.ts';
import { curvilinearExample } from './divisors.ts';
import { additive } from './jcgm101-additive.ts';
import { gaugeBlock } from './jcgm101-gauge.ts';
import { comparisonLoss } from './jcgm101-loss.ts';
import { lossDistributions } from './jcgm101-loss-whole.ts';
import { mass } from './jcgm101-mass.ts';
import { massSimulated } from './jcgm101-mass-simulated.ts';
import { numerics } from './jcgm101-numerics.ts';

const citation =
  'JCGM 101:2008, Evaluation of measurement data – Supplement 1 to the GUM: propagation of distributions using a Monte Carlo method';

/** JCGM 101, Supplement 1 to the GUM, by example. */
export function jcgm101(): CheckSource[] {
  const source = (id: string, name: string, checks: CheckSource['checks']): CheckSource => ({
    id: `jcgm101-${id}`,
    name: `JCGM 101: ${name}`,
    citation,
    checks,
  });
  return [
    source('sums', 'sums of quantities', [curvilinearExample(), ...additive()]),
    source('mass', 'a weight', [...mass(), ...massSimulated()]),
    source('loss', 'comparison loss of a power meter', [...comparisonLoss(), ...lossDistributions()]),
    source('gauge', 'an end gauge', gaugeBlock()),
    source('numerics', 'tolerances of a simulation', numerics()),
  ];
}
