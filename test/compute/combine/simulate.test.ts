import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { simulate, simulateAtOnce } from '../../../src/compute/combine/simulate.ts';
import type { StopRule } from '../../../src/compute/combine/simulation.ts';
import { wholeDistribution } from '../../../src/compute/combine/whole-distribution.ts';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import { curvilinear } from '../../../src/compute/distribution/curvilinear.ts';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import type { Correlation, FunctionModel, Input, Model, SumModel } from '../../../src/compute/model.ts';
import { randomFrom } from '../../../src/compute/random.ts';
import { anyShape, inDecibels } from '../distribution/shapes.ts';

const within = (half: number) => rectangular({ lower: -half, upper: half });
const gauss = (standardDeviation: number, mean = 0) => normal({ mean, standardDeviation });

function inputsOf(parts: readonly Distribution[], cause?: string): Input[] {
  return parts.map((distribution, i) => ({
    id: `x${i}`,
    distribution,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    ...(cause === undefined ? {} : { cause }),
  }));
}

function sumOf(parts: readonly Distribution[], more: Partial<SumModel> = {}): SumModel {
  return { kind: 'sum', constant: 0, inputs: inputsOf(parts), sensitivities: parts.map(() => 1), ...more };
}

interface Wishes {
  seed?: number;
  trials?: number;
  p?: number;
  stop?: StopRule;
  mostKept?: number;
}

function run(model: Model, { seed = 1, trials = 50000, p = 0.95, stop, mostKept }: Wishes = {}) {
  return simulateAtOnce({
    model,
    coverageProbability: p,
    random: randomFrom(seed),
    stop: stop ?? { kind: 'trials', trials },
    ...(mostKept === undefined ? {} : { mostKept }),
  });
}

describe('a simulated sum', () => {
  test('has the ends that the calculation gives, whatever its parts', () => {
    fc.assert(
      fc.property(
        fc.array(anyShape, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 1e6 }),
        (parts, seed) => {
          const terms = parts.map((distribution, i) => ({ distribution, sensitivity: i % 2 === 0 ? 1 : -2 }));
          const whole = wholeDistribution({ constant: 5, terms, coverageProbability: 0.9 });
          const sensitivities = terms.map(({ sensitivity }) => sensitivity);
          const trials = 20000;
          const { symmetric } = run(sumOf(parts, { constant: 5, sensitivities }), { seed, trials, p: 0.9 });
          // Five standard deviations of a share of 5 % among so many trials.
          const slack = 5 * Math.sqrt((0.05 * 0.95) / trials);
          expect(Math.abs(whole.shareBelow(symmetric.lower) - 0.05)).toBeLessThan(slack);
          expect(Math.abs(whole.shareBelow(symmetric.upper) - 0.95)).toBeLessThan(slack);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('brings the curve of its values: an area of one, as high as the density', () => {
    const { curve } = run(sumOf([within(1)]));
    const bin = (curve[1]?.x ?? 0) - (curve[0]?.x ?? 0);
    expect(curve.reduce((sum, { density }) => sum + density * bin, 0)).toBeCloseTo(1, 2);
    const middle = curve.filter(({ x }) => Math.abs(x) < 0.5).map(({ density }) => density);
    expect(middle.reduce((sum, density) => sum + density, 0) / middle.length).toBeCloseTo(0.5, 1);
  });

  test('repeats itself for one seed and differs for another', () => {
    const model = sumOf([gauss(1), within(1)]);
    const [one, same, other] = [run(model), run(model), run(model, { seed: 2 })];
    expect(same).toEqual(one);
    expect(other.symmetric).not.toEqual(one.symmetric);
  });

  test('has the mean and standard deviation of its parts', () => {
    const { mean, standardDeviation } = run(sumOf([gauss(0.3, 2), within(0.6)], { constant: 10 }));
    expect(mean).toBeCloseTo(12, 2);
    expect(standardDeviation).toBeCloseTo(Math.sqrt(0.09 + 0.12), 2);
  });

  test('of four rectangles reaches to 3.88 (JCGM 101, 9.2.3)', () => {
    const { symmetric } = run(sumOf([1, 2, 3, 4].map(() => within(Math.sqrt(3)))), { trials: 100_000 });
    expect(symmetric.upper).toBeCloseTo(3.88, 1);
    expect(Math.abs(symmetric.upper - 3.879406741)).toBeLessThan(0.02);
  });

  test('of a constant alone has no width', () => {
    const result = run(sumOf([constant(3)]), { trials: 100 });
    expect(result.mean).toBe(3);
    expect(result.standardDeviation).toBe(0);
    expect(result.symmetric).toEqual({ lower: 3, upper: 3 });
  });

  test('without inputs is its constant', () => {
    expect(run(sumOf([], { constant: 4 }), { trials: 10 }).mean).toBe(4);
  });

  test('follows t of less than one degree too', () => {
    const d = student({ location: 0, scale: 1, degreesOfFreedom: 0.7 });
    const { symmetric } = run(sumOf([d]), { p: 0.5 });
    expect(Math.abs(d.shareBelow(symmetric.upper) - 0.75)).toBeLessThan(0.005);
    expect(Math.abs(d.shareBelow(symmetric.lower) - 0.25)).toBeLessThan(0.005);
  });

  test('leaves out what does not exist: mean and standard deviation of t', () => {
    const t = (degreesOfFreedom: number) => student({ location: 0, scale: 1, degreesOfFreedom });
    expect(run(sumOf([t(1)]), { trials: 1000 }).mean).toBeUndefined();
    expect(run(sumOf([t(2)]), { trials: 1000 }).standardDeviation).toBeUndefined();
    expect(run(sumOf([t(2)]), { trials: 1000 }).mean).toBeDefined();
    expect(run(sumOf([t(3)]), { trials: 1000 }).standardDeviation).toBeDefined();
  });
});

describe('a simulated function', () => {
  const product: FunctionModel = {
    kind: 'function',
    inputs: inputsOf([gauss(0.1, 2), within(0.5)]),
    f: ([a = 0, b = 0]) => a * a + b,
  };

  test('gets the values in the order of the inputs', () => {
    const { mean } = run(product);
    expect(mean).toBeCloseTo(4.01, 2);
  });

  test('gives the comparison loss of JCGM 101, 9.4: 0 to 0.000150, u = 0.000050', () => {
    const loss: FunctionModel = {
      kind: 'function',
      inputs: inputsOf([gauss(0.005), gauss(0.005)]),
      f: ([a = 0, b = 0]) => a * a + b * b,
    };
    const { mean, standardDeviation, shortest } = run(loss, { trials: 100_000 });
    expect((mean as number) * 1e6).toBeCloseTo(50, 0);
    expect(Math.abs((standardDeviation as number) * 1e6 - 50)).toBeLessThan(0.5);
    expect(shortest.lower * 1e6).toBeLessThan(0.1);
    expect(Math.abs(shortest.upper * 1e6 - 149.787)).toBeLessThan(1.5);
  });

  test('gives the mass calibration of JCGM 101, 9.3, where propagation misses a third of the uncertainty', () => {
    const uniform = (lower: number, upper: number) => rectangular({ lower, upper });
    const calibration: FunctionModel = {
      kind: 'function',
      inputs: inputsOf([
        gauss(0.05, 100000),
        gauss(0.02, 1.234),
        uniform(1.1, 1.3),
        uniform(7000, 9000),
        uniform(7950, 8050),
      ]),
      f: ([m = 0, dm = 0, air = 0, w = 0, r = 0]) => (m + dm) * (1 + (air - 1.2) * (1 / w - 1 / r)) - 100000,
    };
    const { mean, standardDeviation, symmetric } = run(calibration, { trials: 100_000 });
    // Four standard deviations of the mean of so many trials.
    expect(Math.abs((mean as number) - 1.234)).toBeLessThan((4 * 0.0755) / Math.sqrt(100_000));
    expect(standardDeviation).toBeCloseTo(0.0755, 3);
    expect(symmetric.lower).toBeCloseTo(1.0845, 2);
    expect(symmetric.upper).toBeCloseTo(1.3836, 2);
  });

  test('of lopsided, curvilinear and U-shaped inputs averages to their means', () => {
    const parts = [
      inDecibels(within(0.2)),
      curvilinear({ lower: -1, upper: 3, limitHalfWidth: 0.5 }),
      arcsine({ centre: 2, halfWidth: 1 }),
    ];
    const { mean } = run({
      kind: 'function',
      inputs: inputsOf(parts),
      f: ([a = 0, b = 0, c = 0]) => a + 10 * b + 100 * c,
    });
    const wanted = (parts[0]?.mean as number) + 10 + 200;
    expect(Math.abs((mean as number) - wanted)).toBeLessThan(1);
  });

  test('that gives no number is refused', () => {
    const model: FunctionModel = { ...product, f: () => Number.NaN };
    expect(() => run(model)).toThrow(new RangeError('simulate: f must give finite numbers, got NaN'));
  });
});

describe('inputs that belong together', () => {
  const pair = (r: number, parts = [gauss(3), gauss(4)]): SumModel => {
    const correlations: Correlation[] = [{ a: 'x0', b: 'x1', r }];
    return sumOf(parts, { correlations });
  };

  test('correlated normal inputs widen or narrow the sum', () => {
    expect(run(pair(0)).standardDeviation).toBeCloseTo(5, 1);
    expect(run(pair(1)).standardDeviation).toBeCloseTo(7, 1);
    expect(run(pair(-1)).standardDeviation).toBeCloseTo(1, 1);
    expect(run(pair(0.5)).standardDeviation).toBeCloseTo(Math.sqrt(37), 1);
  });

  test('JCGM 101, 9.4 with r = 0.9: u = 2 u sqrt(x1^2 + (1 + r^2) u^2)', () => {
    const loss: FunctionModel = {
      kind: 'function',
      inputs: inputsOf([gauss(0.005, 0.05), gauss(0.005)]),
      correlations: [{ a: 'x0', b: 'x1', r: 0.9 }],
      f: ([a = 0, b = 0]) => a * a + b * b,
    };
    const wanted = 2 * 0.005 * Math.sqrt(0.05 ** 2 + 1.81 * 0.005 ** 2);
    expect((run(loss, { trials: 100000 }).standardDeviation as number) / wanted).toBeCloseTo(1, 2);
  });

  test('three of them together, and one apart', () => {
    const correlations = [
      { a: 'x0', b: 'x1', r: 0.5 },
      { a: 'x1', b: 'x3', r: -0.4 },
    ];
    const model = sumOf([gauss(1, 7), gauss(2), gauss(3), gauss(4)], { correlations });
    const { mean, standardDeviation } = run(model);
    expect(mean).toBeCloseTo(7, 1);
    expect((standardDeviation as number) / Math.sqrt(1 + 4 + 9 + 16 + 2 * 0.5 * 2 - 2 * 0.4 * 8)).toBeCloseTo(
      1,
      2,
    );
  });

  test('correlated inputs that are not normal are refused, unless r is 0', () => {
    const parts = [gauss(3), within(4)];
    expect(() => run(pair(0.5, parts))).toThrow(
      new RangeError('simulate: correlated inputs must be normal, got "x1"'),
    );
    expect(run(pair(0, parts)).standardDeviation).toBeCloseTo(Math.sqrt(9 + 16 / 3), 1);
  });

  test('inputs under one cause add in full and cancel in a ratio', () => {
    const inputs = inputsOf([within(1), within(2)], 'one meter');
    const cascade: SumModel = { kind: 'sum', constant: 0, inputs, sensitivities: [1, 1] };
    expect(run(cascade).symmetric.upper).toBeCloseTo(0.95 * 3, 2);
    expect(run({ ...cascade, sensitivities: [2, -1] }).standardDeviation).toBeCloseTo(0, 12);
  });

  test('inputs of different shape under one cause move together by rank', () => {
    const inputs = inputsOf([within(1), gauss(1)], 'heat');
    const { symmetric } = run({ kind: 'sum', constant: 0, inputs, sensitivities: [1, 1] });
    expect(symmetric.upper).toBeCloseTo(0.95 + 1.96, 1);
  });

  test('an input with both a cause and a coefficient is refused', () => {
    const inputs = [...inputsOf([gauss(1)], 'heat'), { ...(inputsOf([gauss(1)])[0] as Input), id: 'y' }];
    const model: SumModel = {
      kind: 'sum',
      constant: 0,
      inputs,
      sensitivities: [1, 1],
      correlations: [{ a: 'x0', b: 'y', r: 0.5 }],
    };
    expect(() => run(model)).toThrow(
      new RangeError('simulate: an input must not have both a cause and an r, got "x0"'),
    );
  });
});

describe('steps', () => {
  const request = {
    model: sumOf([gauss(1)]),
    coverageProbability: 0.95,
    stop: { kind: 'trials', trials: 20000 },
  } as const;

  test('report how far it has come, and the last one brings the result', () => {
    const steps = simulate({ ...request, random: randomFrom(1) });
    const seen: number[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) {
      expect(step.value.wanted).toBe(20000);
      seen.push(step.value.trials);
    }
    expect(seen).toEqual([4000, 8000, 12000, 16000, 20000]);
    expect(step.value.trials).toBe(20000);
    expect(step.value.blocks).toBe(1);
    expect(step.value.settled).toBe(true);
    expect(step.value.tolerance).toBeUndefined();
  });

  test('may be left off at any time', () => {
    const steps = simulate({ ...request, random: randomFrom(1) });
    expect(steps.next().done).toBe(false);
    expect(steps.return(undefined as never).done).toBe(true);
    expect(steps.next().done).toBe(true);
  });

  test('taken at once or one by one give the same', () => {
    const steps = simulate({ ...request, random: randomFrom(4) });
    let step = steps.next();
    while (!step.done) step = steps.next();
    expect(step.value).toEqual(simulateAtOnce({ ...request, random: randomFrom(4) }));
  });
});

describe('more trials than are kept', () => {
  test('are made in blocks of equal size whose intervals are averaged', () => {
    const result = run(sumOf([gauss(1)]), { trials: 95_000, mostKept: 20_000 });
    expect(result.blocks).toBe(5);
    expect(result.trials).toBe(95_000);
    expect(Math.abs(result.symmetric.upper - 1.959964)).toBeLessThan(0.03);
    expect(Math.abs(result.symmetric.lower + 1.959964)).toBeLessThan(0.03);
    expect(Math.abs(result.shortest.upper - result.shortest.lower - 3.919928)).toBeLessThan(0.05);
    expect(result.standardDeviation).toBeCloseTo(1, 2);
  });

  test('cannot have the ends of one row, so that the averages are those of the blocks', () => {
    const whole = run(sumOf([gauss(1)]), { trials: 40_000 });
    const halves = run(sumOf([gauss(1)]), { trials: 40_000, mostKept: 20_000 });
    // The same seed and rows of the same size: the same values, once together and once by halves.
    expect(halves.mean).toBeCloseTo(whole.mean as number, 12);
    expect(halves.symmetric.upper).not.toBe(whole.symmetric.upper);
    expect(Math.abs(halves.symmetric.upper - whole.symmetric.upper)).toBeLessThan(0.01);
  });
});

describe('until settled (JCGM 101, 7.9)', () => {
  const settle = (
    model: Model,
    more: { mostTrials?: number; part?: number } = {},
    significantDigits: 1 | 2 = 2,
  ) => run(model, { stop: { kind: 'settled', significantDigits, ...more } });

  test('half a unit of the last digit is reached', () => {
    const result = settle(sumOf([gauss(1), gauss(1), gauss(1), gauss(1)]));
    expect(result.settled).toBe(true);
    expect(result.tolerance).toBe(0.05);
    expect(result.trials).toBe(result.blocks * 10000);
    expect(Math.abs(result.symmetric.upper - 3.92)).toBeLessThan(0.1);
    expect(Math.abs((result.mean as number) - 0)).toBeLessThan(0.05);
  });

  test('one digit takes fewer trials than two, a fifth of the tolerance more', () => {
    const model = sumOf([gauss(1), within(1)]);
    const trials = (more: { part?: number }, digits: 1 | 2) => settle(model, more, digits).trials;
    expect(trials({}, 1)).toBeLessThanOrEqual(trials({}, 2));
    expect(trials({ part: 0.2 }, 2)).toBeGreaterThan(trials({}, 2));
    expect(settle(model, { part: 0.2 }).tolerance).toBeCloseTo(0.01, 15);
  });

  test('progress cannot say how many trials are wanted', () => {
    const steps = simulate({
      model: sumOf([gauss(1)]),
      coverageProbability: 0.95,
      random: randomFrom(1),
      stop: { kind: 'settled', significantDigits: 1 },
    });
    expect(steps.next().value).toEqual({ trials: 3334, wanted: undefined });
  });

  test('it gives up at the most trials allowed and says so', () => {
    const result = settle(sumOf([gauss(1)]), { mostTrials: 30000, part: 0.001 });
    expect(result.settled).toBe(false);
    expect(result.trials).toBe(30000);
    expect(result.blocks).toBe(3);
  });

  test('while all values are kept the interval is that of all, beyond that the average of the blocks', () => {
    const stop = { kind: 'settled', significantDigits: 2, mostTrials: 40_000, part: 0.0001 } as const;
    const model = sumOf([gauss(1)]);
    const [all, some] = [run(model, { stop }), run(model, { stop, mostKept: 20_000 })];
    expect(some.trials).toBe(40_000);
    expect(some.mean).toBe(all.mean);
    expect(some.symmetric.upper).not.toBe(all.symmetric.upper);
    expect(Math.abs(some.symmetric.upper - all.symmetric.upper)).toBeLessThan(0.01);
    expect(run(model, { stop, mostKept: 40_000 }).symmetric).toEqual(all.symmetric);
  });

  test('what does not vary has settled at once', () => {
    const result = settle(sumOf([constant(2)]));
    expect(result.settled).toBe(true);
    expect(result.tolerance).toBe(0);
    expect(result.blocks).toBe(2);
  });

  test('an input without standard deviation can never settle', () => {
    const t = student({ location: 0, scale: 1, degreesOfFreedom: 2 });
    expect(() => settle(sumOf([t]))).toThrow(
      new RangeError('simulate: to settle, every input must have a standard deviation, got "x0"'),
    );
  });
});

describe('refusals', () => {
  test('coverage outside 0 to 1', () => {
    for (const p of [0, 1, Number.NaN])
      expect(() => run(sumOf([gauss(1)]), { p })).toThrow(
        new RangeError(`simulate: coverageProbability must be between 0 and 1, got ${p}`),
      );
  });

  test('fewer than two trials, or no whole number of them', () => {
    for (const trials of [1, 0, 2.5, Number.POSITIVE_INFINITY])
      expect(() => run(sumOf([gauss(1)]), { trials })).toThrow(
        new RangeError(`simulate: trials must be a whole number >= 2, got ${trials}`),
      );
  });

  test('a model that cannot be evaluated', () => {
    expect(() => run(sumOf([gauss(1)], { sensitivities: [] }))).toThrow(/^simulate: /);
  });
});
