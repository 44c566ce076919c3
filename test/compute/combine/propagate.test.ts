import { describe, expect, test } from 'vitest';
import { propagate } from '../../../src/compute/combine/propagate.ts';
import { componentOf } from '../../../src/compute/component.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import type { Input, Model, SumModel } from '../../../src/compute/model.ts';
import { endGauge, impedanceInputs, impedanceOutputs, limited, quantity } from './published-models.ts';

const sum = (
  inputs: Input[],
  sensitivities = inputs.map(() => 1),
  more: Partial<SumModel> = {},
): SumModel => ({
  kind: 'sum',
  constant: 0,
  inputs,
  sensitivities,
  ...more,
});

describe('published examples of the GUM', () => {
  test('an end gauge has 32 nm, 16.7 degrees of freedom and 93 nm at 99 % (H.1)', () => {
    const result = propagate({ model: endGauge(), coverageProbability: 0.99 });
    expect(result.standardUncertainty).toBeCloseTo(31.66, 1);
    // The printed 16.7 needs the unrounded 31.66 nm: the rounded 32 nm would give 17.5.
    expect(result.degreesOfFreedom).toBeGreaterThan(16.65);
    expect(result.degreesOfFreedom).toBeLessThan(16.8);
    const contributions = result.budget.map(({ contribution }) => contribution);
    const printed = [25, 9.7, 2.9, 16.6, 0, 0, 0];
    contributions.forEach((c, i) => {
      expect(Math.abs(c - (printed[i] ?? 0))).toBeLessThan(0.06);
    });
    // The print truncates to 16 degrees (t = 2.92, 93 nm); at the real-valued 16.7 t is 2.904.
    expect(result.coverageFactor).toBeCloseTo(2.904, 2);
    expect(result.expanded).toBeCloseTo(91.9, 0);
    const middle = (result.interval.lower + result.interval.upper) / 2;
    expect(middle).toBeCloseTo(50_000_838, 3);
  });

  test('three readings of a product have 19.0 degrees of freedom (G.4.1)', () => {
    const inputs = [quantity('a', 1, 0.25, 9), quantity('b', 1, 0.57, 4), quantity('c', 1, 0.82, 14)];
    const result = propagate({ model: sum(inputs), coverageProbability: 0.95 });
    expect(result.standardUncertainty).toBeCloseTo(1.029466, 6);
    expect(result.degreesOfFreedom).toBeCloseTo(18.9987, 4);
    expect(result.coverageFactor).toBeCloseTo(2.093, 3);
    expect(result.expanded).toBeCloseTo(2.155, 3);
  });

  test('ten resistors from one standard add fully, not by the root of ten (5.2.2, example)', () => {
    const resistors = (cause: { cause?: string }) =>
      Array.from({ length: 10 }, (_, i) => ({ ...quantity(`R${i}`, 1000, 0.1), ...cause }));
    expect(propagate({ model: sum(resistors({ cause: 'standard' })) }).standardUncertainty).toBeCloseTo(
      1,
      12,
    );
    expect(propagate({ model: sum(resistors({})) }).standardUncertainty).toBeCloseTo(0.316, 3);
    const correlations = resistors({}).flatMap((a, i) =>
      resistors({})
        .slice(i + 1)
        .map((b) => ({ a: a.id, b: b.id, r: 1 })),
    );
    const stated = propagate({ model: sum(resistors({}), undefined, { correlations }) });
    expect(stated.standardUncertainty).toBeCloseTo(1, 12);
  });

  test('resistance and reactance come from correlated readings (H.2)', () => {
    const { inputs, correlations } = impedanceInputs();
    const wanted = [0.071071, 0.295582, 0.236336];
    const uncorrelated = [0.194544, 0.200909, 0.204076];
    impedanceOutputs.forEach(({ f }, k) => {
      const model: Model = { kind: 'function', inputs, f, correlations };
      const result = propagate({ model });
      expect(result.standardUncertainty).toBeCloseTo(wanted[k] ?? 0, 6);
      // All three are estimated from the same five observations: four degrees, not more.
      expect(result.degreesOfFreedom).toBeCloseTo(4, 12);
      expect(propagate({ model: { kind: 'function', inputs, f } }).standardUncertainty).toBeCloseTo(
        uncorrelated[k] ?? 0,
        5,
      );
    });
  });
});

describe('scenario values, worked independently', () => {
  test('two pads into a receiver: U is 2.47 dB at k = 2', () => {
    const model = sum([
      limited('pad 1', 0.5),
      limited('pad 2', 0.5),
      limited('receiver', 2),
      limited('cable', 0.1),
      limited('mismatch', 0.2, { shape: 'arcsine' }),
    ]);
    const result = propagate({ model, coverageFactor: 2 });
    expect(result.expanded).toBeCloseTo(2.468, 3);
    expect(result.coverageProbability).toBeCloseTo(0.9545, 4);
    expect(result.budget.map(({ share }) => share).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    expect(result.budget[2]?.share).toBeCloseTo(4 / 3 / (4.51 / 3 + 0.02), 12);
  });

  test('a borrowed calibration: 0.152 dB, and a later reading 0.190 dB', () => {
    const correction = [
      componentOf({
        id: 'lender',
        statement: { form: 'expanded', expanded: 0.2, coverageFactor: 2 },
        unit: 'dB',
      }),
      componentOf({
        id: 'scatter',
        statement: { form: 'readings', standardDeviation: 0.06, count: 5 },
        unit: 'dB',
      }),
      limited('resolution', 0.05),
      limited('drift', 0.1),
      limited('temperature', 0.1),
      limited('mismatch', 0.1, { shape: 'arcsine' }),
    ];
    const later = [
      componentOf({
        id: 'later scatter',
        statement: { form: 'standard', standardUncertainty: 0.06 },
        unit: 'dB',
      }),
      limited('later resolution', 0.05),
      limited('later temperature', 0.1),
      limited('later mismatch', 0.1, { shape: 'arcsine' }),
    ];
    expect(propagate({ model: sum(correction) }).standardUncertainty).toBeCloseTo(0.1524, 4);
    const both = propagate({ model: sum([...correction, ...later]), coverageFactor: 2 });
    expect(both.expanded).toBeCloseTo(0.379, 3);
  });

  test('oscilloscope across a load: 3.69 % of power', () => {
    // Vpp 20.4 V +-0.2 V read, gain +-3 %, R 49.6 ohm +-1 %: relative limits in percent, rectangular.
    const model: Model = {
      kind: 'function',
      inputs: [limited('read', 0.2), limited('gain', 0.03), limited('load', 0.01)],
      f: ([read = 0, gain = 0, load = 0]) => ((20.4 + read) * (1 + gain)) ** 2 / (8 * 49.6 * (1 + load)),
    };
    const result = propagate({ model, coverageFactor: 2 });
    const middle = (result.interval.lower + result.interval.upper) / 2;
    expect(middle).toBeCloseTo(1.0488, 4);
    expect((100 * result.standardUncertainty) / middle).toBeCloseTo(3.69, 2);
  });
});

describe('shared causes', () => {
  test('one meter that reads both terms of a ratio cancels exactly', () => {
    const inputs = [limited('first', 0.3, { cause: 'meter' }), limited('second', 0.3, { cause: 'meter' })];
    const ratio = propagate({ model: sum(inputs, [1, -1]) });
    expect(ratio.standardUncertainty).toBe(0);
    expect(ratio.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    expect(ratio.budget.map(({ share }) => share)).toEqual([0, 0]);
    const cascade = propagate({ model: sum(inputs, [1, 1]) });
    expect(cascade.standardUncertainty).toBeCloseTo(0.6 / Math.sqrt(3), 14);
  });

  test('opposite sensitivities of different size leave the difference', () => {
    const inputs = [limited('a', 0.3, { cause: 'x' }), limited('b', 0.1, { cause: 'x' }), limited('c', 0.2)];
    const result = propagate({ model: sum(inputs, [1, -2, 1]) });
    expect(result.standardUncertainty).toBeCloseTo(Math.hypot(0.1, 0.2) / Math.sqrt(3), 13);
    // A part that works against the rest takes variance away: its share is negative.
    expect(result.budget[1]?.share).toBeLessThan(0);
    expect(result.budget.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12);
  });

  test('different shapes under one cause are correlated by less than one', () => {
    const inputs = [{ ...quantity('bell', 0, 1), cause: 'x' }, limited('box', Math.sqrt(3), { cause: 'x' })];
    // Correlation of a normal and a rectangular that move by rank: the square root of 3/pi.
    const r = Math.sqrt(3 / Math.PI);
    expect(propagate({ model: sum(inputs) }).standardUncertainty).toBeCloseTo(Math.sqrt(2 + 2 * r), 7);
    expect(propagate({ model: sum(inputs, [1, -1]) }).standardUncertainty).toBeCloseTo(
      Math.sqrt(2 - 2 * r),
      6,
    );
  });

  test('tied inputs count as one part, with degrees of freedom between theirs', () => {
    const inputs = [
      { ...quantity('a', 0, 1, 5), cause: 'x' },
      { ...quantity('b', 0, 1, 9), cause: 'x' },
    ];
    // Doubts 1/sqrt(nu) averaged by contribution.
    const together = (2 / (1 / Math.sqrt(5) + 1 / 3)) ** 2;
    expect(propagate({ model: sum(inputs) }).degreesOfFreedom).toBeCloseTo(together, 12);
    const mostly = propagate({ model: sum(inputs, [1e-9, 1]) });
    expect(mostly.degreesOfFreedom).toBeCloseTo(9, 6);
    const alike = inputs.map((input) => ({ ...input, degreesOfFreedom: 7 }));
    expect(propagate({ model: sum(alike, [1, -3]) }).degreesOfFreedom).toBeCloseTo(7, 12);
    // One that has no effect lends no doubt either.
    expect(propagate({ model: sum(inputs, [0, 1]) }).degreesOfFreedom).toBeCloseTo(9, 12);
    const apart = inputs.map(({ cause: _, ...input }) => input);
    expect(propagate({ model: sum(apart) }).degreesOfFreedom).toBeCloseTo(4 / (1 / 5 + 1 / 9), 12);
  });
});

describe('coverage', () => {
  const model = sum([quantity('a', 10, 1, 9)]);

  test('without a wish it is 95 %, with the t of the degrees of freedom', () => {
    const result = propagate({ model });
    expect(result.coverageProbability).toBe(0.95);
    // GUM table G.2: 2.26 for nine degrees.
    expect(result.coverageFactor).toBeCloseTo(2.2622, 4);
    expect(result.interval.lower).toBeCloseTo(10 - 2.2622, 4);
    expect(result.interval.upper).toBeCloseTo(10 + 2.2622, 4);
  });

  test('a stated factor tells its probability, and both ways agree', () => {
    const byFactor = propagate({ model, coverageFactor: 2.262157 });
    expect(byFactor.coverageProbability).toBeCloseTo(0.95, 7);
    expect(byFactor.expanded).toBeCloseTo(2.262157, 12);
  });

  test('both wishes, or one that cannot be, are refused', () => {
    expect(() => propagate({ model, coverageFactor: 2, coverageProbability: 0.95 })).toThrow(
      'coverageOf: either coverageProbability or coverageFactor must be left out, got [0.95,2]',
    );
    for (const coverageProbability of [0, 1, -0.1, Number.NaN])
      expect(() => propagate({ model, coverageProbability })).toThrow(
        'coverageOf: coverageProbability must be above 0 and below 1',
      );
    expect(() => propagate({ model, coverageFactor: 0 })).toThrow(
      'coverageOf: coverageFactor must be > 0, got 0',
    );
  });
});

describe('bare edges', () => {
  test('no inputs leave the constant without uncertainty', () => {
    const result = propagate({ model: sum([], [], { constant: 27 }) });
    expect(result).toMatchObject({
      standardUncertainty: 0,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      expanded: 0,
      interval: { lower: 27, upper: 27 },
      budget: [],
    });
    expect(result.coverageFactor).toBeCloseTo(1.959964, 6);
  });

  test('a constant input takes no share', () => {
    const inputs = [{ id: 'c', distribution: constant(3), degreesOfFreedom: 4 }, quantity('a', 0, 1, 9)];
    const result = propagate({ model: sum(inputs) });
    expect(result.degreesOfFreedom).toBeCloseTo(9, 12);
    expect(result.budget[0]).toEqual({
      id: 'c',
      standardUncertainty: 0,
      sensitivity: 1,
      contribution: 0,
      share: 0,
      degreesOfFreedom: 4,
    });
  });

  test('an input without standard deviation must state its uncertainty', () => {
    const distribution = student({ location: 0, scale: 1, degreesOfFreedom: 1 });
    const bare = { id: 'two readings', distribution, degreesOfFreedom: 1 };
    expect(() => propagate({ model: sum([{ ...bare, degreesOfFreedom: 0 }]) })).toThrow(/^propagate: /);
    expect(() => propagate({ model: sum([bare]) })).toThrow(
      'standardUncertaintyOf: input must state a standardUncertainty, its shape having no standard deviation, got "two readings"',
    );
    const stated = propagate({ model: sum([{ ...bare, standardUncertainty: 1 }]) });
    expect(stated.coverageFactor).toBeCloseTo(12.7062, 4);
    expect(stated.interval.lower).toBeCloseTo(-12.7062, 4);
    expect(() => propagate({ model: sum([{ ...bare, standardUncertainty: -1 }]) })).toThrow(
      'standardUncertainty of two readings must be >= 0',
    );
  });

  test('a hundred links are one sum like any other', () => {
    const inputs = Array.from({ length: 100 }, (_, i) => limited(`link ${i}`, 0.1));
    expect(propagate({ model: sum(inputs) }).standardUncertainty).toBeCloseTo(1 / Math.sqrt(3), 12);
  });
});
