import { expect } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { triedOf } from '../../src/sheet/tried.ts';
import { orderOf, triesSpec } from '../../src/widgets/tries/spec.ts';

/**
 * Trials in the state of an address, and propagation beside them: `lower end` and `upper end` are those of the interval that the state
 * shows. `noise` is how far lots may carry a number: two hundredths of the uncertainty for a million trials, the ends of a shortest
 * interval included.
 */
export function triesFigures(address: string): Readonly<Record<string, number>> & { readonly noise: number } {
  const { state, problems } = decode(triesSpec, address);
  expect(problems).toEqual([]);
  const tried = triedOf(orderOf(state));
  const { propagated } = tried;
  const shown = tried[state.interval];
  return {
    noise: 0.02 * tried.standardUncertainty,
    mean: tried.mean,
    deviation: tried.mean,
    'deviation from 100 g': tried.mean,
    u: tried.standardUncertainty,
    'lower end': shown.lower,
    'upper end': shown.upper,
    '99 % interval, lower end': shown.lower,
    'shortest interval, upper end': tried.shortest.upper,
    'symmetric interval, lower end': tried.symmetric.lower,
    'symmetric interval, upper end': tried.symmetric.upper,
    'propagated u': propagated.standardUncertainty,
    'propagated deviation from 100 g': propagated.estimate,
    'propagated 95 % interval, lower end': propagated.interval.lower,
    'propagated upper end': propagated.interval.upper,
  };
}
