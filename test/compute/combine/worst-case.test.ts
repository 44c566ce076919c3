import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { worstCaseOf } from '../../../src/compute/combine/worst-case.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import { rayleigh } from '../../../src/compute/distribution/rayleigh.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import type { FunctionModel, Input, SumModel } from '../../../src/compute/model.ts';
import { limited, quantity } from './published-models.ts';

const sum = (inputs: Input[], sensitivities = inputs.map(() => 1), start = 0): SumModel => ({
  kind: 'sum',
  constant: start,
  inputs,
  sensitivities,
});
const worst = (model: SumModel | FunctionModel) => worstCaseOf({ model });
const between = (id: string, lower: number, upper: number): Input => ({
  id,
  distribution: rectangular({ lower, upper }),
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

describe('the worst case of a sum', () => {
  test('limits add up whatever their shape and sign', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            halfWidth: fc.double({ min: 0.01, max: 5, noNaN: true }),
            shape: fc.constantFrom('rectangular' as const, 'triangular' as const, 'arcsine' as const),
            sign: fc.constantFrom(1, -1),
          }),
          { maxLength: 8 },
        ),
        fc.double({ min: -50, max: 50, noNaN: true }),
        (parts, start) => {
          const inputs = parts.map(({ halfWidth, shape }, i) => limited(`p${i}`, halfWidth, { shape }));
          const { interval, unlimited } = worst(
            sum(
              inputs,
              parts.map(({ sign }) => sign),
              start,
            ),
          );
          const total = parts.reduce((all, { halfWidth }) => all + halfWidth, 0);
          expect(interval.lower).toBeCloseTo(start - total, 10);
          expect(interval.upper).toBeCloseTo(start + total, 10);
          expect(unlimited).toEqual([]);
        },
      ),
    );
  });

  test('two pads into a receiver reach 3.3 dB, and 0.8 dB once calibrated', () => {
    const chain = (pads: number, receiver: number, cable: number, mismatch: number) =>
      sum(
        [
          limited('pad 1', pads),
          limited('pad 2', pads),
          limited('receiver', receiver),
          limited('cable', cable),
          limited('mismatch', mismatch, { shape: 'arcsine' }),
        ],
        undefined,
        26.8,
      );
    expect(worst(chain(0.5, 2, 0.1, 0.2)).interval.upper).toBeCloseTo(30.1, 12);
    expect(worst(chain(0.5, 2, 0.1, 0.2)).interval.lower).toBeCloseTo(23.5, 12);
    expect(worst(chain(0.1, 0.3, 0.1, 0.2)).interval.upper).toBeCloseTo(27.6, 12);
  });

  test('a negative sensitivity turns lopsided limits round', () => {
    expect(worst(sum([between('a', -1, 3)], [-2])).interval).toEqual({ lower: -6, upper: 2 });
    expect(worst(sum([between('a', -1, 3)], [2])).interval).toEqual({ lower: -2, upper: 6 });
  });

  test('a part limited on one side alone stays at its mean and is named', () => {
    const length = rayleigh({ scale: 1 });
    const input: Input = { id: 'length', distribution: length, degreesOfFreedom: Number.POSITIVE_INFINITY };
    const { interval, unlimited } = worst(sum([input], [2]));
    expect(unlimited).toEqual(['length']);
    expect(interval.lower).toBeCloseTo(2 * Math.sqrt(Math.PI / 2), 14);
    expect(interval.upper).toBe(interval.lower);
    const f = ([x = 0]: readonly number[]) => 2 * x;
    expect(worst({ kind: 'function', inputs: [input], f })).toEqual({ interval, unlimited });
  });

  test('a model that cannot be is refused in the name of the worst case', () => {
    expect(() => worst(sum([between('a', -1, 1)], []))).toThrow(/^worstCaseOf: /);
  });

  test('a part without limits stays at its centre and is named', () => {
    const model = sum([limited('pad', 0.5), quantity('certificate', 0.2, 0.1)], [1, -1]);
    expect(worst(model).unlimited).toEqual(['certificate']);
    expect(worst(model).interval.lower).toBeCloseTo(-0.7, 12);
    expect(worst(model).interval.upper).toBeCloseTo(0.3, 12);
    expect(worst(sum([quantity('certificate', 0.2, 0.1)], [0])).unlimited).toEqual([]);
  });

  test('one cause on both sides of a ratio cancels, even without limits', () => {
    const ratio = (make: (id: string) => Input) => sum([make('a'), make('b')], [1, -1], 5);
    const boxed = worst(ratio((id) => limited(id, 0.4, { cause: 'meter' })));
    expect(boxed).toEqual({ interval: { lower: 5, upper: 5 }, unlimited: [] });
    const bells = worst(ratio((id) => ({ ...quantity(id, 0, 0.4), cause: 'meter' })));
    expect(bells).toEqual({ interval: { lower: 5, upper: 5 }, unlimited: [] });
    const cascade = sum([limited('a', 0.4, { cause: 'meter' }), limited('b', 0.4, { cause: 'meter' })]);
    expect(worst(cascade).interval.upper).toBeCloseTo(0.8, 12);
  });

  test('two shapes under one cause reach both limits together, or the largest gap between them', () => {
    const parts = [limited('box', 1, { cause: 'x' }), limited('u', 1, { cause: 'x', shape: 'arcsine' })];
    const adding = worst(sum(parts)).interval;
    expect(adding.lower).toBeCloseTo(-2, 12);
    expect(adding.upper).toBeCloseTo(2, 12);
    // Box less U at rank p: 2p - 1 + cos(pi p), widest where sin(pi p) = 2/pi.
    const p = Math.asin(2 / Math.PI) / Math.PI;
    const gap = Math.abs(2 * p - 1 + Math.cos(Math.PI * p));
    const against = worst(sum(parts, [1, -1])).interval;
    expect(against.upper).toBeCloseTo(gap, 4);
    expect(against.lower).toBeCloseTo(-gap, 4);
  });

  test('all parts of a cause of mixed shapes are named if one has no limit', () => {
    const parts = [limited('box', 1, { cause: 'x' }), { ...quantity('bell', 0, 1), cause: 'x' }];
    expect(worst(sum(parts)).unlimited).toEqual(['box', 'bell']);
    expect(worst(sum(parts)).interval.lower).toBeCloseTo(0, 12);
  });

  test('a constant moves both ends', () => {
    const model = sum([{ id: 'c', distribution: constant(2), degreesOfFreedom: 1 }, limited('a', 1)], [3, 1]);
    expect(worst(model).interval).toEqual({ lower: 5, upper: 7 });
  });
});

describe('the worst case of a function', () => {
  const power = (inputs: Input[]): FunctionModel => ({
    kind: 'function',
    inputs,
    f: ([read = 0, gain = 0, load = 0]) => ((20.4 + read) * (1 + gain)) ** 2 / (8 * 49.6 * (1 + load)),
  });

  test('oscilloscope across a load: +9.3 and -8.7 % of power', () => {
    // Limits 0.2 V of 20.4 V, 3 % of volts, 1 % of ohms.
    const nominal = 20.4 ** 2 / (8 * 49.6);
    const { interval } = worst(
      power([between('read', -0.2, 0.2), between('gain', -0.03, 0.03), between('load', -0.01, 0.01)]),
    );
    const up = ((20.6 * 1.03) ** 2 / (8 * 49.6 * 0.99) / nominal - 1) * 100;
    const down = ((20.2 * 0.97) ** 2 / (8 * 49.6 * 1.01) / nominal - 1) * 100;
    expect((interval.upper / nominal - 1) * 100).toBeCloseTo(up, 10);
    expect((interval.lower / nominal - 1) * 100).toBeCloseTo(down, 10);
    expect(up).toBeCloseTo(9.3, 0);
    expect(down).toBeCloseTo(-8.7, 0);
  });

  test('no value of a monotone function lies outside', () => {
    fc.assert(
      fc.property(fc.tuple(...[0, 1, 2].map(() => fc.double({ min: 0, max: 1, noNaN: true }))), (ranks) => {
        const model = power([between('read', -3, 2), between('gain', -0.2, 0.3), between('load', -0.1, 0.2)]);
        const { interval } = worst(model);
        const y = model.f(model.inputs.map(({ distribution }, i) => distribution.quantile(ranks[i] ?? 0)));
        expect(y).toBeGreaterThanOrEqual(interval.lower);
        expect(y).toBeLessThanOrEqual(interval.upper);
      }),
    );
  });

  test('a bend in the middle is seen', () => {
    const model: FunctionModel = { kind: 'function', inputs: [between('x', -1, 1)], f: ([x = 0]) => x * x };
    expect(worst(model).interval).toEqual({ lower: 0, upper: 1 });
  });

  test('inputs under one cause move together', () => {
    const inputs = [
      { ...between('a', 9, 11), cause: 'meter' },
      { ...between('b', 9, 11), cause: 'meter' },
    ];
    const ratio: FunctionModel = { kind: 'function', inputs, f: ([a = 0, b = 1]) => a / b };
    expect(worst(ratio).interval).toEqual({ lower: 1, upper: 1 });
    const free: FunctionModel = { ...ratio, inputs: inputs.map(({ cause: _, ...input }) => input) };
    expect(worst(free).interval.upper).toBeCloseTo(11 / 9, 14);
  });

  test('an unlimited input is held at its centre and named, if it counts', () => {
    const inputs = [quantity('bell', 5, 1), between('box', 1, 2), quantity('idle', 0, 1)];
    const model: FunctionModel = { kind: 'function', inputs, f: ([a = 0, b = 0]) => a * b };
    expect(worst(model)).toEqual({ interval: { lower: 5, upper: 10 }, unlimited: ['bell'] });
  });

  test('many inputs are searched by turns and give what trying all would', () => {
    const inputs = Array.from({ length: 9 }, (_, i) => between(`x${i}`, -1 - i / 10, 1 + i / 5));
    const signs = [1, -1, 1, 1, -1, 1, -1, -1, 1];
    const model: FunctionModel = {
      kind: 'function',
      inputs,
      f: (x) => Math.exp(x.reduce((total, value, i) => total + (signs[i] ?? 0) * value, 0) / 9),
    };
    const reach = (sign: 1 | -1) =>
      Math.exp(
        inputs.reduce((total, { distribution: { limits } }, i) => {
          const up = (signs[i] ?? 0) * sign > 0;
          return total + (signs[i] ?? 0) * (up ? limits.upper : limits.lower);
        }, 0) / 9,
      );
    expect(worst(model).interval.upper).toBeCloseTo(reach(1), 10);
    expect(worst(model).interval.lower).toBeCloseTo(reach(-1), 10);
    // Bends too: every term has its least value in the middle, and its largest at the further end.
    const bent: FunctionModel = { ...model, f: (x) => x.reduce((total, value) => total + value * value, 0) };
    const largest = inputs.reduce(
      (t, { distribution: { limits } }) => t + Math.max(limits.lower ** 2, limits.upper ** 2),
      0,
    );
    expect(worst(bent).interval.upper).toBeCloseTo(largest, 10);
  });

  /** Boxes of -1 to 1. */
  const boxes = (count: number) => Array.from({ length: count }, (_, i) => between(`x${i}`, -1, 1));

  test('up to six inputs are tried all together: what counts only in one corner is seen', () => {
    const corner = (x: readonly number[], signs: readonly number[]) =>
      x.every((value, i) => value === (signs[i] ?? 0));
    const f = (x: readonly number[]) =>
      corner(x, [1, 1, 1, 1, 1, 1]) ? 5 : corner(x, [1, -1, 1, -1, 1, -1]) ? -4 : 0;
    expect(worst({ kind: 'function', inputs: boxes(6), f }).interval).toEqual({ lower: -4, upper: 5 });
  });

  test('inputs under two causes move apart', () => {
    const inputs = boxes(2).map((input, i) => ({ ...input, cause: `cause ${i}` }));
    const f = ([a = 0, b = 0]: readonly number[]) => a - b;
    expect(worst({ kind: 'function', inputs, f }).interval).toEqual({ lower: -2, upper: 2 });
  });

  test('the middle of a lopsided shape is its mean', () => {
    const input = limited('gain', 30, { unit: 'percentOfVolts' });
    const mean = input.distribution.mean ?? Number.NaN;
    expect(input.distribution.quantile(0.5)).not.toBeCloseTo(mean, 3);
    const f = ([x = 0]: readonly number[]) => -Math.abs(x - mean);
    expect(worst({ kind: 'function', inputs: [input], f }).interval.upper).toBeCloseTo(0, 14);
  });

  test('more inputs than six cost some hundred evaluations, not tens of thousands', () => {
    let calls = 0;
    const f = (x: readonly number[]) => {
      calls++;
      return x.reduce((total, value) => total + value, 0);
    };
    expect(worst({ kind: 'function', inputs: boxes(10), f }).interval).toEqual({ lower: -10, upper: 10 });
    expect(calls).toBeLessThan(1000);
  });

  test('the search begins at the corners that the slopes at the estimate point to', () => {
    const signs = [1, -1, 1, -1, -1, 1, 1, -1];
    // Each step away from the middle costs, but at the two corners that the slopes point to all of it pays.
    const dip = (along: number) => (Math.abs(along) < 0.6 ? along : -along / 2);
    const f = (x: readonly number[]) => {
      const along = x.map((value, i) => value * (signs[i] ?? 0));
      const peak = along.every((each) => each === 1) ? 100 : along.every((each) => each === -1) ? -100 : 0;
      return along.reduce((total, each) => total + dip(each), peak);
    };
    expect(worst({ kind: 'function', inputs: boxes(8), f }).interval).toEqual({ lower: -96, upper: 96 });
  });

  test('turning goes on as long as a turn gains something', () => {
    // Each input pays only once the next one is up: the first turn raises the last but one, the second the one before it ...
    const f = (x: readonly number[]) =>
      x.reduce((total, value, i) => total + (x[i + 1] === 1 ? Math.max(0, value) : 0), x.at(-1) ?? 0);
    expect(worst({ kind: 'function', inputs: boxes(8), f }).interval).toEqual({ lower: -1, upper: 8 });
  });

  test('a function that breaks off between the limits is refused', () => {
    const model: FunctionModel = {
      kind: 'function',
      inputs: [between('x', 0.5, 1.5)],
      f: ([x = 0]) => (x > 1.2 ? Number.NaN : x),
    };
    expect(() => worst(model)).toThrow('worstCaseOf: f must be finite between the limits, got NaN');
  });
});
