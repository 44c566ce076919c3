import { describe, expect, it } from 'vitest';
import { type NumberedPoint, pointResult } from '../../src/bench/results/point-result.ts';
import { simulationWords, withinNoise } from '../../src/bench/words/simulation-words.ts';
import { measurementOf } from '../../src/sheet/at-point.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import type { Measurement, StatedLink } from '../../src/sheet/measurement.ts';
import { METHODS, type MethodKind } from '../../src/sheet/method.ts';
import type { SimulatedSheet, SimulationOrder } from '../../src/widgets/simulation/messages.ts';
import { runSimulation } from '../../src/widgets/simulation/run.ts';
import { SETUPS } from './check-question.ts';

const TRIALS = 100_000;

/** Runs an order after it has travelled, as it does to a worker. */
function finish(order: SimulationOrder): SimulatedSheet {
  const steps = runSimulation(structuredClone(order));
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const order = (measurement: Measurement, seed = 1): SimulationOrder => ({
  measurement,
  point: 'point1',
  seed,
  stop: { kind: 'trials', trials: TRIALS },
});

function numbered(measurement: Measurement): NumberedPoint {
  const shown = pointResult(measurement, 'point1');
  if (!shown.inRange) throw new Error(shown.reason.code);
  return shown;
}

const READINGS: Readonly<Record<MethodKind, readonly number[]>> = {
  padsIntoMeter: [7, 7.05, 6.98, 7.02],
  oscilloscope: [14.1, 14.2, 14.15, 14.2, 14.0],
  peakDetector: [6.8, 6.81, 6.79, 6.8],
  inLine: [10, 10.1, 9.9, 10],
  dcSubstitution: [14.2, 14.3, 14.1, 14.2],
};

/** Two links under one cause, one of them against the other, and a mismatch of two SWRs. */
const tied = (links: readonly StatedLink[]): readonly StatedLink[] =>
  links.map((link) => {
    if (link.id === 'meter') return { ...link, cause: 'the room' };
    if (link.id === 'pad') return { ...link, cause: 'the room', sensitivity: -1 };
    return link.id === 'mismatch' ? { ...link, stated: { form: 'swr', sourceSwr: 2, loadSwr: 1.5 } } : link;
  });

function measured(method: MethodKind): Measurement {
  const club = measurementOf(clubSheet());
  const columns = {
    readings: READINGS[method],
    reflected: [0.01],
    riseDc: [14, 14.1, 14, 13.9],
    volts: [10],
    amperes: [0.05],
  };
  return {
    ...club,
    setup: SETUPS[method],
    links: tied(club.links),
    points: club.points.map((point) => ({ ...point, frequencyHz: 3.58e6, columns })),
  };
}

describe('one point of a measurement by trials', () => {
  it('comes to what the whole distribution says, by every method, shared causes and exact mismatch included', () => {
    for (const method of METHODS) {
      const measurement = measured(method);
      const shown = numbered(measurement);
      const { whole, propagation } = shown.result.chain.result;
      if ('unavailable' in whole) throw new Error(whole.unavailable);
      const simulated = finish(order(measurement));
      const coverage = propagation.coverageProbability;
      const shareBelow = (x: number) => whole.shareBelow(x);
      expect(
        withinNoise({ simulated: simulated.symmetric, shareBelow, coverage, trials: TRIALS }),
        method,
      ).toBe(true);
    }
  });

  it('is not what it would be without the shared cause, or with the mismatch by its limits', () => {
    const measurement = measured('padsIntoMeter');
    const plain = { ...measurement, links: measurement.links.map(({ cause: _, ...link }) => link) };
    const { whole, propagation } = numbered(plain).result.chain.result;
    if ('unavailable' in whole) throw new Error(whole.unavailable);
    const { symmetric: simulated } = finish(order(measurement));
    const coverage = propagation.coverageProbability;
    const shareBelow = (x: number) => whole.shareBelow(x);
    expect(withinNoise({ simulated, shareBelow, coverage, trials: TRIALS })).toBe(false);
  });

  it('is the same for the same seed, and the same as of its own sheet', () => {
    const measurement = measured('oscilloscope');
    const { sheet } = numbered(measurement);
    const result = finish(order(measurement, 5));
    expect(finish(order(measurement, 5))).toEqual(result);
    expect(finish({ sheet, seed: 5, stop: { kind: 'trials', trials: TRIALS } })).toEqual(result);
    expect(finish(order(measurement, 6)).symmetric).not.toEqual(result.symmetric);
  });

  it('of a point that is not there is refused', () => {
    const { measurement } = { measurement: measured('inLine') };
    expect(() => finish({ ...order(measurement), point: 'gone' } as SimulationOrder)).toThrow('sheetAt');
  });
});

describe('what a simulation says, in words', () => {
  const shown = numbered(measurementOf(clubSheet()));
  const simulated = finish(order(measurementOf(clubSheet())));

  it('is that both computed ways stand, as far as they do', () => {
    const [whole, propagation] = simulationWords('ascii', simulated, shown);
    expect(whole).toMatch(
      /^Simulation and whole distribution differ by 0\.0\d\d dB at most at their ends: no more/,
    );
    expect(propagation).toMatch(/^Propagation differs from it by 0\.\d{3} dB at most\. 0\.050 dB is allowed/);
  });

  it('is that they do not, where the trials were of something else', () => {
    const { lower, upper } = simulated.symmetric;
    const moved = { ...simulated, symmetric: { lower: lower + 0.2, upper: upper + 0.2 } };
    const [whole, propagation] = simulationWords('ascii', moved, shown);
    expect(whole).toContain('more than the noise');
    expect(propagation).toContain('not propagation');
  });
});
