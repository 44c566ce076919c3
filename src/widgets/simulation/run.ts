import { randomFrom, simulate } from '#compute';
import { COVERAGE_PROBABILITY } from '../../sheet/chain.ts';
import { toModel } from '../../sheet/to-model.ts';
import type { SimulatedSheet, SimulationNews, SimulationOrder } from './messages.ts';

/**
 * Simulates a sheet step by step: yields how far it has come, returns the result. The worker runs this, and so do the tests,
 * in one process.
 * @throws RangeError for a sheet without readings or a rule that `simulate` refuses.
 */
export function* runSimulation({
  sheet,
  seed,
  stop,
}: SimulationOrder): Generator<Extract<SimulationNews, { kind: 'progress' }>, SimulatedSheet> {
  const steps = simulate({
    model: toModel(sheet),
    coverageProbability: COVERAGE_PROBABILITY,
    random: randomFrom(seed),
    stop,
  });
  for (;;) {
    const step = steps.next();
    if (!step.done) {
      yield { kind: 'progress', ...step.value };
      continue;
    }
    const { mean, standardDeviation, symmetric, trials, settled, tolerance } = step.value;
    return { mean, standardDeviation, symmetric, trials, settled, tolerance };
  }
}
