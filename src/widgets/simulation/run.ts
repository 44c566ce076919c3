import { randomFrom, simulate } from '#compute';
import { sheetAt } from '../../sheet/at-point.ts';
import { COVERAGE_PROBABILITY } from '../../sheet/coverage.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { toModel } from '../../sheet/to-model.ts';
import type { Simulable, SimulatedSheet, SimulationNews, SimulationOrder } from './messages.ts';

const sheetOf = (of: Simulable): Sheet => ('sheet' in of ? of.sheet : sheetAt(of.measurement, of.point));

/**
 * Simulates a sheet step by step: yields how far it has come, returns the result. The worker runs this, and so do the tests,
 * in one process.
 * @throws RangeError for a sheet without readings, a point that the measurement has not, a method out of range, or a rule that
 * `simulate` refuses.
 */
export function* runSimulation(
  order: SimulationOrder,
): Generator<Extract<SimulationNews, { kind: 'progress' }>, SimulatedSheet> {
  const steps = simulate({
    model: toModel(sheetOf(order)),
    coverageProbability: COVERAGE_PROBABILITY,
    random: randomFrom(order.seed),
    stop: order.stop,
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
