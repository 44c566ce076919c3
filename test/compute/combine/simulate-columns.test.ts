import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { columnsOf } from '../../../src/compute/combine/columns.ts';
import type { SimulationRequest, StopRule } from '../../../src/compute/combine/simulation.ts';
import { checkRequest, planOf, toleranceOf } from '../../../src/compute/combine/simulation-plan.ts';
import { sourceOf } from '../../../src/compute/combine/source.ts';
import { comonotone } from '../../../src/compute/combine/tied-columns.ts';
import { trialsOf } from '../../../src/compute/combine/trials.ts';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import { curvilinear } from '../../../src/compute/distribution/curvilinear.ts';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { trapezoidal } from '../../../src/compute/distribution/trapezoidal.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';
import type { FunctionModel, Input, SumModel } from '../../../src/compute/model.ts';
import { randomFrom } from '../../../src/compute/random.ts';
import { anyShape, inDecibels } from '../distribution/shapes.ts';

const ROWS = 4000;
const limits = { lower: 2, upper: 6 };

function inputOf(id: string, distribution: Distribution, cause?: string): Input {
  const input = { id, distribution, degreesOfFreedom: Number.POSITIVE_INFINITY };
  return cause === undefined ? input : { ...input, cause };
}

function sumOf(inputs: readonly Input[], more: Partial<SumModel> = {}): SumModel {
  return { kind: 'sum', constant: 0, inputs, sensitivities: inputs.map(() => 1), ...more };
}

/** Values of every input over many trials, in the order of the inputs. */
function drawn(model: SumModel | FunctionModel, { seed = 1, draws = 5 } = {}): number[][] {
  const { columns, draw } = columnsOf(model, ROWS, randomFrom(seed));
  const values: number[][] = columns.map(() => []);
  for (let k = 0; k < draws; k++) {
    draw();
    columns.forEach(({ z, location, scale }, i) => {
      for (const value of z) values[i]?.push(location + scale * value);
    });
  }
  return values;
}

const shareOf = (values: readonly number[], upTo: number) =>
  values.filter((x) => x <= upTo).length / values.length;

function correlationOf(a: readonly number[], b: readonly number[]): number {
  const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length;
  const [ma, mb] = [mean(a), mean(b)];
  let [ab, aa, bb] = [0, 0, 0];
  a.forEach((x, k) => {
    const y = b[k] as number;
    ab += (x - ma) * (y - mb);
    aa += (x - ma) ** 2;
    bb += (y - mb) ** 2;
  });
  return ab / Math.sqrt(aa * bb);
}

describe('columns of inputs', () => {
  test('follow each shape, moved and stretched', () => {
    const shapes = [
      rectangular(limits),
      triangular(limits),
      trapezoidal({ ...limits, topRatio: 0.3 }),
      curvilinear({ ...limits, limitHalfWidth: 0.5 }),
      arcsine({ centre: -3, halfWidth: 2 }),
      normal({ mean: 7, standardDeviation: 0.5 }),
      student({ location: 1, scale: 3, degreesOfFreedom: 4 }),
      student({ location: 1, scale: 3, degreesOfFreedom: 0.8 }),
      inDecibels(rectangular({ lower: -0.5, upper: 0.5 })),
      constant(9),
    ];
    const values = drawn(sumOf(shapes.map((shape, i) => inputOf(`x${i}`, shape))));
    expect(new Set(values.at(-1))).toEqual(new Set([9]));
    shapes.slice(0, -1).forEach((shape, i) => {
      for (const p of [0.1, 0.25, 0.5, 0.9])
        expect(Math.abs(shareOf(values[i] as number[], shape.quantile(p)) - p)).toBeLessThan(0.02);
    });
  });

  test('of any inputs are independent of one another', () => {
    fc.assert(
      fc.property(anyShape, anyShape, fc.integer({ min: 0, max: 1e6 }), (one, other, seed) => {
        const [a = [], b = []] = drawn(sumOf([inputOf('a', one), inputOf('b', other)]), { seed, draws: 1 });
        // By ranks, since some shapes have no variance: both above their medians a quarter of the time.
        const [ma, mb] = [one.quantile(0.5), other.quantile(0.5)];
        const both = a.filter((x, k) => x > ma && (b[k] as number) > mb).length / a.length;
        expect(Math.abs(both - 0.25)).toBeLessThan(0.05);
      }),
      { numRuns: 30 },
    );
  });

  test('take whole rows of bits where the shape has a quick form, else one number after the other', () => {
    const callsFor = (shape: Distribution) => {
      const random = randomFrom(1);
      let calls = 0;
      const counted = Object.assign(
        () => {
          calls++;
          return random();
        },
        { fill: random.fill },
      );
      columnsOf(sumOf([inputOf('x', shape)]), 100, counted).draw();
      return calls;
    };
    const t = (degreesOfFreedom: number) => student({ location: 0, scale: 1, degreesOfFreedom });
    const quick = [
      rectangular(limits),
      triangular(limits),
      curvilinear({ ...limits, limitHalfWidth: 0.5 }),
      arcsine({ centre: 0, halfWidth: 1 }),
      normal({ mean: 0, standardDeviation: 1 }),
      t(1),
      t(4),
    ];
    // Sines and powers, which differ from engine to engine, are for what is drawn number by number.
    expect(quick.map(callsFor)).toEqual(quick.map(() => 0));
    for (const shape of [t(0.8), trapezoidal({ ...limits, topRatio: 0.3 })])
      expect(callsFor(shape)).toBeGreaterThanOrEqual(100);
  });

  test('are drawn anew each time', () => {
    const { columns, draw } = columnsOf(sumOf([inputOf('a', rectangular(limits))]), 10, randomFrom(1));
    draw();
    const first = [...(columns[0]?.z ?? [])];
    draw();
    expect([...(columns[0]?.z ?? [])]).not.toEqual(first);
  });

  test('of correlated normal inputs have their coefficients, in the order of the inputs', () => {
    const inputs = [
      inputOf('free', rectangular(limits)),
      inputOf('a', normal({ mean: 1, standardDeviation: 2 })),
      inputOf('b', normal({ mean: -1, standardDeviation: 3 })),
      inputOf('c', normal({ mean: 0, standardDeviation: 1 })),
    ];
    const correlations = [
      { a: 'a', b: 'b', r: 0.8 },
      { a: 'b', b: 'c', r: -0.3 },
    ];
    const [free = [], a = [], b = [], c = []] = drawn(sumOf(inputs, { correlations }));
    expect(Math.abs(correlationOf(a, b) - 0.8)).toBeLessThan(0.02);
    expect(Math.abs(correlationOf(b, c) + 0.3)).toBeLessThan(0.03);
    expect(Math.abs(correlationOf(a, c))).toBeLessThan(0.03);
    expect(Math.abs(correlationOf(free, a))).toBeLessThan(0.03);
    expect(Math.abs(shareOf(b, 2) - 0.8413)).toBeLessThan(0.02);
    expect(Math.abs(shareOf(a, 1) - 0.5)).toBeLessThan(0.02);
  });

  test('under one cause stay finite where the generator gives 0', () => {
    const inputs = [
      inputOf('a', normal({ mean: 0, standardDeviation: 1 })),
      inputOf('b', rectangular(limits)),
    ];
    const zero = Object.assign(() => 0, { fill: (words: Int32Array) => words.fill(0) });
    const { columns, draw } = comonotone(inputs, 3, sourceOf(zero, 3));
    draw();
    // The rank taken instead is below that of any other value, 2^-53: eight standard deviations down.
    expect(columns[0]?.z.every((z) => z < -8 && z > -9)).toBe(true);
    expect(columns[1]?.z.every((z) => z >= limits.lower && z < limits.lower + 1e-12)).toBe(true);
  });

  test('under one cause rise and fall together, others do not', () => {
    const inputs = [
      inputOf('a', rectangular(limits), 'heat'),
      inputOf('b', normal({ mean: 0, standardDeviation: 1 }), 'heat'),
      inputOf('c', normal({ mean: 0, standardDeviation: 1 }), 'meter'),
      inputOf('d', arcsine({ centre: 0, halfWidth: 1 }), 'meter'),
    ];
    const [a = [], b = [], c = [], d = []] = drawn(sumOf(inputs));
    const order = a.map((_, k) => k).sort((i, j) => (a[i] as number) - (a[j] as number));
    expect(order.every((k, i) => i === 0 || (b[k] as number) >= (b[order[i - 1] as number] as number))).toBe(
      true,
    );
    expect(correlationOf(c, d)).toBeGreaterThan(0.9);
    expect(Math.abs(correlationOf(a, c))).toBeLessThan(0.03);
  });
});

describe('trials', () => {
  test('of a sum are constant + sensitivity x value', () => {
    const inputs = [inputOf('a', constant(2)), inputOf('b', constant(5)), inputOf('c', rectangular(limits))];
    const make = trialsOf(sumOf(inputs, { constant: 100, sensitivities: [3, -1, 0] }), 50, randomFrom(1));
    const out = new Float64Array(50);
    make(out);
    expect(new Set(out)).toEqual(new Set([101]));
  });

  test('of a function get each input by its place', () => {
    const inputs = [inputOf('a', constant(2)), inputOf('b', normal({ mean: 7, standardDeviation: 1e-9 }))];
    const model: FunctionModel = { kind: 'function', inputs, f: ([a = 0, b = 0]) => 10 * a + b };
    const out = new Float64Array(20);
    trialsOf(model, 20, randomFrom(1))(out);
    expect(out.every((y) => Math.abs(y - 27) < 1e-6)).toBe(true);
  });

  test('may fill less than a whole row', () => {
    const out = new Float64Array(7);
    trialsOf(sumOf([inputOf('a', rectangular(limits))]), 100, randomFrom(1))(out);
    expect(out.every((y) => y >= 2 && y <= 6)).toBe(true);
  });
});

describe('the plan', () => {
  const request = (stop: StopRule, p = 0.95): SimulationRequest => ({
    model: sumOf([inputOf('a', rectangular(limits))]),
    coverageProbability: p,
    random: randomFrom(1),
    stop,
  });

  test('a million trials or fewer are one block, more are equal blocks', () => {
    const plan = (trials: number) => planOf(request({ kind: 'trials', trials }));
    expect(plan(1000)).toEqual({ block: 1000, most: 1, kept: 1 });
    expect(plan(1_000_000)).toEqual({ block: 1_000_000, most: 1, kept: 1 });
    expect(plan(1_000_001)).toEqual({ block: 500_001, most: 2, kept: 1 });
    expect(plan(3_000_000)).toEqual({ block: 1_000_000, most: 3, kept: 1 });
  });

  test('until settled, blocks of 10 000 as far as 20 million or what is allowed, two at least', () => {
    const plan = (more: { mostTrials?: number }, p?: number) =>
      planOf(request({ kind: 'settled', significantDigits: 2, ...more }, p));
    expect(plan({})).toEqual({ block: 10_000, most: 2000, kept: 100 });
    expect(plan({ mostTrials: 55_000 })).toEqual({ block: 10_000, most: 5, kept: 5 });
    expect(plan({ mostTrials: 100 })).toEqual({ block: 10_000, most: 2, kept: 2 });
    expect(plan({}, 0.9999).block).toBe(1_000_000);
  });

  test('fewer values kept make more and smaller blocks, one at least kept whole', () => {
    const fixed = { ...request({ kind: 'trials', trials: 25_000 }), mostKept: 10_000 };
    expect(planOf(fixed)).toEqual({ block: 8334, most: 3, kept: 1 });
    const open = { ...request({ kind: 'settled', significantDigits: 2 }), mostKept: 25_000 };
    expect(planOf(open).kept).toBe(2);
    expect(planOf({ ...open, mostKept: 500 }).kept).toBe(1);
  });

  test('the tolerance is half a unit of the digit asked for, or a part of it', () => {
    expect(toleranceOf(0.00035, { kind: 'settled', significantDigits: 2 })).toBeCloseTo(0.000005, 12);
    expect(toleranceOf(0.0004, { kind: 'settled', significantDigits: 1 })).toBeCloseTo(0.00005, 12);
    expect(toleranceOf(2, { kind: 'settled', significantDigits: 1, part: 0.2 })).toBeCloseTo(0.1, 12);
    expect(toleranceOf(0, { kind: 'settled', significantDigits: 1 })).toBe(0);
  });

  test('what cannot be simulated is refused before anything is drawn', () => {
    const check = (stop: StopRule, p?: number) => () => checkRequest(request(stop, p));
    expect(check({ kind: 'trials', trials: 2 })).not.toThrow();
    expect(check({ kind: 'trials', trials: 1 })).toThrow(
      new RangeError('simulate: trials must be a whole number >= 2, got 1'),
    );
    expect(check({ kind: 'settled', significantDigits: 1, mostTrials: 0.5 })).toThrow(
      new RangeError('simulate: trials must be a whole number >= 2, got 0.5'),
    );
    expect(() => checkRequest({ ...request({ kind: 'trials', trials: 10 }), mostKept: 2 })).not.toThrow();
    expect(() => checkRequest({ ...request({ kind: 'trials', trials: 10 }), mostKept: 1 })).toThrow(
      new RangeError('simulate: mostKept must be >= 2, got 1'),
    );
    expect(check({ kind: 'trials', trials: 10 }, 1.5)).toThrow(
      new RangeError('simulate: coverageProbability must be between 0 and 1, got 1.5'),
    );
  });
});
