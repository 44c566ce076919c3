import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clubSheet } from '../../src/sheet/club.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import type { SimulationOrder } from '../../src/widgets/simulation/messages.ts';
import { runSimulation } from '../../src/widgets/simulation/run.ts';
import { idle, reduceSimulation, type SimulationAction } from '../../src/widgets/simulation/state.ts';

function finish(order: SimulationOrder) {
  const steps = runSimulation(order);
  const progress: number[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done) return { result: step.value, progress };
    progress.push(step.value.trials);
  }
}

const order = (seed: number): SimulationOrder => ({
  sheet: twoPadsSheet(),
  seed,
  stop: { kind: 'trials', trials: 200_000 },
});

describe('a simulated sheet', () => {
  it('is the same for the same seed and another for another', () => {
    expect(finish(order(1)).result).toEqual(finish(order(1)).result);
    expect(finish(order(2)).result.symmetric).not.toEqual(finish(order(1)).result.symmetric);
  });

  it('lies about the whole distribution, as near as so many trials can be', () => {
    for (const sheet of [clubSheet(), twoPadsSheet()]) {
      const { whole } = chainOf(sheet).result;
      if ('unavailable' in whole) throw new Error(whole.unavailable);
      const { result } = finish({ ...order(3), sheet });
      // Six standard deviations of a quantile from 200 000 trials: sqrt(p (1 - p) / n) over the density at the end.
      const end = whole.quantile(0.02275);
      const density = (whole.shareBelow(end + 1e-3) - whole.shareBelow(end - 1e-3)) / 2e-3;
      const noise = (6 * Math.sqrt((0.02275 * 0.97725) / 200_000)) / density;
      expect(Math.abs(result.symmetric.lower - whole.symmetric.lower)).toBeLessThan(noise);
      expect(Math.abs(result.symmetric.upper - whole.symmetric.upper)).toBeLessThan(noise);
    }
  });

  it('reports more and more trials on its way', () => {
    const { progress, result } = finish(order(1));
    expect(progress.length).toBeGreaterThan(1);
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
    expect(result.trials).toBe(200_000);
  });
});

const action: fc.Arbitrary<SimulationAction> = fc.oneof(
  fc.constant({ kind: 'start' } as const),
  fc.constant({ kind: 'cancel' } as const),
  fc.record({ kind: fc.constant('progress' as const), trials: fc.nat(), wanted: fc.constant(undefined) }),
  fc.constant({
    kind: 'done',
    result: finish({ ...order(1), stop: { kind: 'trials', trials: 1000 } }).result,
  } as const),
  fc.constant({ kind: 'failed', message: 'no' } as const),
);

describe('the state of a simulation under any sequence of news', () => {
  it('ends only what runs, and shows nothing of what was cancelled', () => {
    fc.assert(
      fc.property(fc.array(action), (actions) => {
        let running = false;
        let state = idle;
        for (const each of actions) {
          const next = reduceSimulation(state, each);
          if (!running && each.kind !== 'start') expect(next).toBe(state);
          running = next.kind === 'running';
          state = next;
        }
      }),
    );
  });
});
