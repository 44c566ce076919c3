import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { centreOf, standardUncertaintyOf } from '../../src/compute/combine/input.ts';
import { type ComponentUnit, componentOf, degreesFromReliability } from '../../src/compute/component.ts';
import type { Statement } from '../../src/compute/statement.ts';

const own = (statement: Statement, more: object = {}) =>
  componentOf({ id: 'part', statement, unit: 'own', ...more });
const uOf = (statement: Statement, unit: ComponentUnit = 'own') =>
  standardUncertaintyOf(componentOf({ id: 'part', statement, unit }));
const limits = (halfWidth: number, shape: 'rectangular' | 'triangular' | 'arcsine' = 'rectangular') =>
  ({ form: 'limits', shape, halfWidth }) as const;

describe('what a statement becomes', () => {
  test('each form has the divisor that the GUM gives it (4.3.5 to 4.3.9, F.2.2.1; JCGM 101, 6.4.3)', () => {
    const a = 0.4;
    const cases: [Statement, number][] = [
      [limits(a), a / Math.sqrt(3)],
      [limits(a, 'triangular'), a / Math.sqrt(6)],
      [limits(a, 'arcsine'), a / Math.SQRT2],
      [{ form: 'trapezoid', halfWidth: a, topRatio: 0.5 }, a * Math.sqrt(1.25 / 6)],
      [{ form: 'uncertainLimits', halfWidth: a, limitHalfWidth: 0.1 }, Math.sqrt(a ** 2 / 3 + 0.01 / 9)],
      [{ form: 'uncertainLimits', halfWidth: a, limitHalfWidth: 0 }, a / Math.sqrt(3)],
      [{ form: 'asymmetric', lower: -0.12, upper: 0.4 }, 0.52 / Math.sqrt(12)],
      [{ form: 'expanded', expanded: a, coverageFactor: 2 }, 0.2],
      [{ form: 'standard', standardUncertainty: a }, a],
      [{ form: 'displayStep', step: a }, a * 0.288675134594813],
      [{ form: 'halfWithin', halfWidth: a }, a * 1.482602218505602],
      [{ form: 'readings', standardDeviation: a, count: 5 }, a / Math.sqrt(5)],
    ];
    for (const [statement, u] of cases) expect(uOf(statement) / u).toBeCloseTo(1, 9);
  });

  test('published examples of clause 4 come out to the digits printed', () => {
    // GUM 4.3.3: 240 ug at three standard deviations.
    expect(uOf({ form: 'expanded', expanded: 240, coverageFactor: 3 })).toBe(80);
    // GUM 4.3.4: 129 uohm at 99 %; printed 50 with a divisor of 2.58.
    expect(uOf({ form: 'coverage', expanded: 129, probability: 0.99 })).toBeCloseTo(50.08, 2);
    // GUM 4.3.5: an even chance for +-0.04 mm; printed 0.06.
    expect(uOf({ form: 'halfWithin', halfWidth: 0.04 })).toBeCloseTo(0.0593, 4);
    // GUM 4.3.7, example 1: 0.40e-6 rectangular; printed 0.23e-6.
    expect(uOf(limits(0.4))).toBeCloseTo(0.2309, 4);
    // GUM 4.3.8: lower 0.12, upper 0.40 about the best estimate; printed 0.15.
    expect(uOf({ form: 'asymmetric', lower: -0.12, upper: 0.4 })).toBeCloseTo(0.1501, 4);
    // GUM 4.4.5 and 4.4.6: 96 to 104 degrees, rectangular and triangular; printed 2.3 and 1.6.
    expect(uOf(limits(4))).toBeCloseTo(2.309, 3);
    expect(uOf(limits(4, 'triangular'))).toBeCloseTo(1.633, 3);
    // JCGM 101, 6.4.3.4: 10.0 V +- 0.1 V with limits known to 0.05 V; printed 0.060.
    expect(uOf({ form: 'uncertainLimits', halfWidth: 0.1, limitHalfWidth: 0.05 })).toBeCloseTo(0.06009, 5);
    // GUM H.1.3.2: 0.01 um at 95 % from six readings, t = 2.57; printed 3.9 nm.
    expect(uOf({ form: 'coverage', expanded: 10, probability: 0.95, degreesOfFreedom: 5 })).toBeCloseTo(
      3.89,
      2,
    );
  });

  test('a larger limit never means a smaller uncertainty, whatever the unit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.constantFrom<ComponentUnit>(
          'own',
          'dB',
          'percentOfPower',
          'percentOfVolts',
          'percentOfResistance',
        ),
        (a, b, unit) => {
          expect(uOf(limits(Math.min(a, b)), unit)).toBeLessThanOrEqual(uOf(limits(Math.max(a, b)), unit));
        },
      ),
      { numRuns: 40 },
    );
  });

  test('asymmetric limits shift the estimate to their middle', () => {
    expect(centreOf(own({ form: 'asymmetric', lower: -0.12, upper: 0.4 }))).toBeCloseTo(0.14, 14);
    expect(own({ form: 'asymmetric', lower: -0.12, upper: 0.4 }).distribution.limits).toEqual({
      lower: -0.12,
      upper: 0.4,
    });
  });

  test('what is stated as zero is a constant, in any form', () => {
    const zero: Statement[] = [
      limits(0),
      limits(0, 'arcsine'),
      { form: 'trapezoid', halfWidth: 0, topRatio: 0.5 },
      { form: 'asymmetric', lower: 0, upper: 0 },
      { form: 'expanded', expanded: 0, coverageFactor: 2 },
      { form: 'standard', standardUncertainty: 0 },
      { form: 'readings', standardDeviation: 0, count: 3 },
      { form: 'displayStep', step: 0 },
    ];
    for (const statement of zero)
      for (const unit of ['own', 'percentOfVolts'] as const) {
        const input = componentOf({ id: 'part', statement, unit });
        expect(input.distribution.shape).toBe('constant');
        expect(standardUncertaintyOf(input)).toBe(0);
        expect(centreOf(input)).toBeCloseTo(0, 15);
      }
    const shifted = componentOf({
      id: 'part',
      statement: { form: 'asymmetric', lower: 3, upper: 3 },
      unit: 'percentOfVolts',
    });
    expect(centreOf(shifted)).toBeCloseTo(20 * Math.log10(1.03), 14);
  });
});

describe('degrees of freedom', () => {
  test('readings bring theirs and a t shape, and the budget counts s over the root of n', () => {
    const input = own({ form: 'readings', standardDeviation: 0.06, count: 5 });
    expect(input.degreesOfFreedom).toBe(4);
    expect(input.standardUncertainty).toBeCloseTo(0.06 / Math.sqrt(5), 15);
    expect(input.distribution.shape).toBe('student');
    // A t of n - 1 degrees is wider than s/sqrt(n) by sqrt((n - 1)/(n - 3)).
    expect(input.distribution.standardDeviation).toBeCloseTo((0.06 / Math.sqrt(5)) * Math.SQRT2, 12);
    expect(own({ form: 'readings', standardDeviation: 1, count: 3 }).distribution.standardDeviation).toBe(
      undefined,
    );
    expect(own({ form: 'readings', standardDeviation: 1, count: 2 }).degreesOfFreedom).toBe(1);
  });

  test('a certificate with degrees of freedom becomes a t, one without a normal', () => {
    const stated = { form: 'expanded', expanded: 1, coverageFactor: 2 } as const;
    expect(own(stated).distribution.shape).toBe('normal');
    expect(own(stated).degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    const few = own({ ...stated, degreesOfFreedom: 8 });
    expect(few.distribution.shape).toBe('student');
    expect(few.degreesOfFreedom).toBe(8);
    expect(standardUncertaintyOf(few)).toBe(0.5);
    expect(own({ form: 'standard', standardUncertainty: 1, degreesOfFreedom: 3 }).degreesOfFreedom).toBe(3);
  });

  test('a judged limit counts for as many degrees as its reliability is worth (GUM G.4.2)', () => {
    expect(degreesFromReliability(0.25)).toBe(8);
    expect(degreesFromReliability(0.5)).toBe(2);
    expect(degreesFromReliability(0.1)).toBeCloseTo(50, 10);
    const judged = own(limits(1), { reliability: 0.25 });
    expect(judged.degreesOfFreedom).toBe(8);
    expect(judged.distribution.shape).toBe('rectangular');
    expect(own(limits(1)).degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    expect(() => degreesFromReliability(0)).toThrow('degreesFromReliability: reliability must be > 0, got 0');
    expect(() => degreesFromReliability(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });

  test('degrees of freedom from two sources are refused', () => {
    const message =
      'componentOf: reliability must be left out where the statement brings its degrees of freedom';
    expect(() => own({ form: 'readings', standardDeviation: 1, count: 5 }, { reliability: 0.25 })).toThrow(
      message,
    );
    expect(() =>
      own({ form: 'standard', standardUncertainty: 1, degreesOfFreedom: 5 }, { reliability: 0.25 }),
    ).toThrow(message);
  });
});

describe('percentages as decibels', () => {
  const ends = (unit: ComponentUnit, percentOf: 'reading' | 'trueValue', halfWidth: number) => {
    const { lower, upper } = componentOf({ id: 'x', statement: limits(halfWidth), unit, percentOf })
      .distribution.limits;
    return [lower, upper];
  };

  test('3 % of volts reaches as far as it is 3 % of the reading or of the true value', () => {
    const down = 20 * Math.log10(0.97);
    const up = 20 * Math.log10(1.03);
    expect(ends('percentOfVolts', 'reading', 3)[0]).toBeCloseTo(down, 12);
    expect(ends('percentOfVolts', 'reading', 3)[1]).toBeCloseTo(up, 12);
    expect(ends('percentOfVolts', 'trueValue', 3)[0]).toBeCloseTo(-up, 12);
    expect(ends('percentOfVolts', 'trueValue', 3)[1]).toBeCloseTo(-down, 12);
    expect(
      componentOf({ id: 'x', statement: limits(3), unit: 'percentOfVolts' }).distribution.limits.upper,
    ).toBeCloseTo(0.2567, 4);
  });

  test('power counts half as many decibels as volts, and resistance the other way round', () => {
    expect(ends('percentOfPower', 'reading', 5)[0]).toBeCloseTo(-0.2228, 4);
    expect(ends('percentOfPower', 'reading', 5)[1]).toBeCloseTo(0.2119, 4);
    expect(ends('percentOfResistance', 'reading', 5)[0]).toBeCloseTo(-0.2119, 4);
    expect(ends('percentOfResistance', 'reading', 5)[1]).toBeCloseTo(0.2228, 4);
  });

  test('one third of power, as an in-line meter at the bottom of its scale states it, is far from symmetric', () => {
    const [lower, upper] = ends('percentOfPower', 'reading', 100 / 3);
    expect(lower).toBeCloseTo(-1.761, 3);
    expect(upper).toBeCloseTo(1.249, 3);
  });

  test('a small percentage has the standard uncertainty of the small-error rule, a large one departs from it', () => {
    const rule = (percent: number) => ((20 / Math.LN10) * percent) / 100 / Math.sqrt(3);
    expect(uOf(limits(0.01), 'percentOfVolts') / rule(0.01)).toBeCloseTo(1, 7);
    // Standard deviation of ln x, x uniform from 0.7 to 1.3, from the integrals of ln x and its square.
    const first = (x: number) => x * Math.log(x) - x;
    const second = (x: number) => x * Math.log(x) ** 2 - 2 * first(x);
    const mean = (first(1.3) - first(0.7)) / 0.6;
    const exact = (20 / Math.LN10) * Math.sqrt((second(1.3) - second(0.7)) / 0.6 - mean ** 2);
    expect(uOf(limits(30), 'percentOfVolts') / exact).toBeCloseTo(1, 9);
    expect(exact / rule(30)).toBeGreaterThan(1.02);
    expect(uOf({ form: 'standard', standardUncertainty: 1 }, 'percentOfVolts')).toBeCloseTo(0.08687, 4);
  });

  test('the share below zero percent is the share below zero decibels', () => {
    const input = componentOf({
      id: 'x',
      statement: { form: 'asymmetric', lower: -1, upper: 3 },
      unit: 'percentOfPower',
    });
    expect(input.distribution.shareBelow(0)).toBeCloseTo(0.25, 12);
    const turned = componentOf({
      id: 'x',
      statement: { form: 'asymmetric', lower: -1, upper: 3 },
      unit: 'percentOfPower',
      percentOf: 'trueValue',
    });
    expect(turned.distribution.shareBelow(0)).toBeCloseTo(0.75, 12);
  });

  test('shares below and densities follow the quantiles', () => {
    for (const unit of ['percentOfVolts', 'percentOfPower'] as const)
      for (const percentOf of ['reading', 'trueValue'] as const) {
        const { distribution: d } = componentOf({
          id: 'meter',
          statement: { form: 'limits', shape: 'triangular', halfWidth: 20 },
          unit,
          percentOf,
        });
        for (const p of [0.02, 0.3, 0.6, 0.95]) {
          const x = d.quantile(p);
          expect(d.shareBelow(x)).toBeCloseTo(p, 12);
          const slope = (d.shareBelow(x + 1e-5) - d.shareBelow(x - 1e-5)) / 2e-5;
          expect(d.density(x) / slope).toBeCloseTo(1, 6);
        }
      }
  });

  test('a t in percent counts with its scale, turned by the slope at zero', () => {
    const statement: Statement = { form: 'readings', standardDeviation: 2, count: 4 };
    expect(uOf(statement, 'percentOfVolts')).toBeCloseTo(((20 / Math.LN10) * 1) / 100, 12);
    expect(uOf(statement, 'percentOfResistance')).toBeCloseTo(((10 / Math.LN10) * 1) / 100, 12);
    // Three times the scatter is three times the uncertainty.
    const wide: Statement = { ...statement, standardDeviation: 6 };
    expect(uOf(wide, 'percentOfVolts')).toBeCloseTo(((20 / Math.LN10) * 3) / 100, 12);
  });

  test('limits that reach minus one hundred percent are refused, just short of it they are not', () => {
    const of = (statement: Statement) => () => componentOf({ id: 'x', statement, unit: 'percentOfPower' });
    expect(of(limits(100))).toThrow('componentOf: what is stated in percent must stay above -100, got -100');
    expect(of(limits(130))).toThrow(RangeError);
    expect(of({ form: 'asymmetric', lower: -100, upper: 0 })).toThrow(RangeError);
    expect(of({ form: 'asymmetric', lower: -100, upper: -100 })).toThrow(RangeError);
    expect(of({ form: 'asymmetric', lower: -99, upper: 400 })).not.toThrow();
    expect(of({ form: 'standard', standardUncertainty: 40 })).toThrow('must stay above -100');
    expect(of({ form: 'standard', standardUncertainty: 30 })).not.toThrow();
  });
});

describe('what cannot be stated', () => {
  test('each number out of range is refused by name', () => {
    const cases: [Statement, string][] = [
      [limits(-1), 'componentOf: halfWidth must be >= 0, got -1'],
      [limits(Number.POSITIVE_INFINITY), 'componentOf: halfWidth must be >= 0, got Infinity'],
      [{ form: 'trapezoid', halfWidth: -1, topRatio: 0 }, 'halfWidth must be >= 0'],
      [{ form: 'trapezoid', halfWidth: 1, topRatio: 1.1 }, 'topRatio must be 0 to 1'],
      [{ form: 'uncertainLimits', halfWidth: 1, limitHalfWidth: -0.1 }, 'limitHalfWidth must be >= 0'],
      [{ form: 'uncertainLimits', halfWidth: 1, limitHalfWidth: 2 }, 'limitHalfWidth must be <='],
      [{ form: 'asymmetric', lower: 1, upper: 0 }, 'lower must be < upper'],
      [{ form: 'asymmetric', lower: Number.NaN, upper: 0 }, 'componentOf: lower must be a finite number'],
      [{ form: 'asymmetric', lower: 0, upper: Number.NaN }, 'componentOf: upper must be a finite number'],
      [{ form: 'expanded', expanded: -1, coverageFactor: 2 }, 'componentOf: expanded must be >= 0'],
      [{ form: 'expanded', expanded: 1, coverageFactor: 0 }, 'componentOf: coverageFactor must be > 0'],
      [
        { form: 'expanded', expanded: 1, coverageFactor: 2, degreesOfFreedom: 0 },
        'componentOf: degreesOfFreedom must be > 0, got 0',
      ],
      [
        { form: 'coverage', expanded: 1, probability: 1 },
        'componentOf: probability must be above 0 and below 1, got 1',
      ],
      [{ form: 'coverage', expanded: 1, probability: 0 }, 'probability must be above 0'],
      [{ form: 'coverage', expanded: -1, probability: 0.9 }, 'componentOf: expanded must be >= 0'],
      [{ form: 'standard', standardUncertainty: -1 }, 'componentOf: standardUncertainty must be >= 0'],
      [{ form: 'displayStep', step: -1 }, 'componentOf: step must be >= 0'],
      [{ form: 'halfWithin', halfWidth: -1 }, 'componentOf: halfWidth must be >= 0'],
      [{ form: 'readings', standardDeviation: -1, count: 3 }, 'componentOf: standardDeviation must be >= 0'],
      [
        { form: 'readings', standardDeviation: 1, count: 1 },
        'componentOf: count must be a whole number >= 2, got 1',
      ],
      [{ form: 'readings', standardDeviation: 1, count: 2.5 }, 'count must be a whole number'],
    ];
    for (const [statement, message] of cases) {
      expect(() => own(statement)).toThrow(message);
      expect(() => own(statement)).toThrow(RangeError);
    }
  });

  test('id and cause are carried, and no cause is left out rather than undefined', () => {
    expect(own(limits(1), { cause: 'meter' })).toMatchObject({ id: 'part', cause: 'meter' });
    expect('cause' in own(limits(1))).toBe(false);
  });
});
