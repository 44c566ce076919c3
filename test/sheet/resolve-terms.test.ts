import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LimitTerm, levelDbm, levelToPower, mean, type PowerDelivery, type Statement } from '#compute';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import { METHODS, type MethodKind, type MethodReading, UNITS_OF } from '../../src/sheet/method.ts';
import { resolvedLink } from '../../src/sheet/resolve-link.ts';
import { expectWithin } from '../compute/near.ts';
import { stated, within } from './any-measurement.ts';

const DELIVERIES = ['intoIdeal', 'delivered', 'net', 'incident'] as const satisfies readonly PowerDelivery[];
const everywhere = METHODS.flatMap((method) => DELIVERIES.map((delivery) => [method, delivery] as const));

const readingBy = (method: MethodKind): MethodReading => {
  const { setup, points } = clubMeasurement(method);
  const [point] = points;
  if (point === undefined) throw new Error('club: wish a point');
  return { setup, columns: point.columns, frequencyHz: 3.58e6 };
};

const FORMS: readonly Statement[] = [
  within(0.3),
  { form: 'limits', shape: 'arcsine', halfWidth: 0.3 },
  { form: 'trapezoid', halfWidth: 0.5, topRatio: 0.3 },
  { form: 'uncertainLimits', halfWidth: 0.5, limitHalfWidth: 0.1 },
  { form: 'asymmetric', lower: -0.1, upper: 0.4 },
  { form: 'expanded', expanded: 0.3, coverageFactor: 2 },
  { form: 'coverage', expanded: 0.3, probability: 0.95 },
  { form: 'standard', standardUncertainty: 0.2 },
  { form: 'readings', standardDeviation: 0.1, count: 5 },
  { form: 'displayStep', step: 0.1 },
  { form: 'halfWithin', halfWidth: 0.2 },
];

const termsOf = (terms: readonly LimitTerm[]) => ({ form: 'terms', terms }) as const;
const halfOf = (
  method: MethodKind,
  terms: readonly LimitTerm[],
  delivery: PowerDelivery = 'intoIdeal',
): number => {
  const { statement } = resolvedLink(
    stated({ id: 'x', stated: termsOf(terms) }),
    readingBy(method),
    delivery,
  );
  return statement.form === 'limits' ? statement.halfWidth : Number.NaN;
};

describe('a statement that needs no reading', () => {
  it.each(everywhere)(
    'stays as stated in its unit by %s where the power is %s, whatever its form',
    (method, delivery) => {
      for (const form of FORMS)
        for (const unit of UNITS_OF[method]) {
          const link = stated({
            id: 'x',
            stated: form,
            unit,
            lossDb: 3,
            cause: 'c',
            sensitivity: -1,
            assumed: true,
          });
          const { stated: _, assumed: __, ...kept } = link;
          expect(resolvedLink(link, readingBy(method), delivery)).toEqual({ ...kept, statement: form });
        }
    },
  );
});

describe('a sum of terms', () => {
  it.each(everywhere)(
    'becomes plain limits in a unit that %s takes where the power is %s',
    (method, delivery) => {
      const link = stated({
        id: 'x',
        stated: termsOf([{ of: 'reading', percent: 1 }]),
        unit: 'dB',
        lossDb: 2,
      });
      const { statement, unit, lossDb, reflections } = resolvedLink(link, readingBy(method), delivery);
      expect(statement).toMatchObject({ form: 'limits', shape: 'rectangular' });
      expect(UNITS_OF[method]).toContain(unit);
      expect(lossDb).toBe(2);
      expect(reflections).toBeUndefined();
    },
  );

  /** What one percent of the reading comes to in each method's own unit, from the readings of the club. */
  const ONE_PERCENT: Readonly<Record<MethodKind, number>> = {
    padsIntoMeter: 1,
    oscilloscope: 0.01 * mean([14.1, 14.2, 14.2]),
    peakDetector: 0.01 * mean([6.54, 6.53, 6.53]),
    inLine: 0.51 / 0.5,
    dcSubstitution: 0.05,
  };

  it.each(METHODS)('goes with its percentage, and terms add up as they are: %s', (method) => {
    const percent = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(percent, percent, (one, other) => {
        const both: LimitTerm[] = [
          { of: 'reading', percent: one },
          { of: 'reading', percent: other },
        ];
        expectWithin(halfOf(method, both), ONE_PERCENT[method] * (one + other), 1e-9);
        expectWithin(
          halfOf(method, both.slice(0, 1)) + halfOf(method, both.slice(1)),
          halfOf(method, both),
          1e-9,
        );
      }),
    );
  });

  it('in watts is the larger a share, the less was read', () => {
    const floor: LimitTerm[] = [{ of: 'floor', amount: 1e-4 }];
    expectWithin(halfOf('padsIntoMeter', floor), 1e-2 / levelToPower(levelDbm(7)), 1e-9);
    expectWithin(halfOf('inLine', floor, 'incident'), 1e-2 / 0.51, 1e-9);
    expectWithin(halfOf('inLine', floor, 'net'), 1e-2 / 0.5, 1e-9);
  });

  it('counts full scale, degrees outside a range and years since calibration as a data sheet does', () => {
    const yearly: LimitTerm[] = [{ of: 'year', years: 2, terms: [{ of: 'floor', amount: 0.01 }] }];
    expectWithin(halfOf('peakDetector', yearly), 0.02, 1e-12);
    const scale: LimitTerm[] = [{ of: 'fullScale', percent: 0.5, fullScale: 20 }];
    expectWithin(halfOf('dcSubstitution', scale), 0.1, 1e-12);
    const range = { lower: 18, upper: 28 };
    const cold: LimitTerm[] = [
      { of: 'kelvin', temperature: 12, range, terms: [{ of: 'floor', amount: 0.001 }] },
    ];
    expectWithin(halfOf('oscilloscope', cold), 0.006, 1e-12);
  });

  it('is refused with a negative term, by every method', () => {
    for (const method of METHODS)
      expect(() => halfOf(method, [{ of: 'reading', percent: -1 }])).toThrow(/percent must be >= 0/);
  });
});

describe('two standing-wave ratios', () => {
  const link = (sourceSwr: number, loadSwr: number) =>
    stated({ id: 'x', stated: { form: 'swr', sourceSwr, loadSwr }, unit: 'percentOfPower' });
  const swr = fc.double({ min: 1, max: 10, noNaN: true });

  it.each(everywhere)(
    'are in decibels by %s where the power is %s, in whatever unit the link was',
    (method, delivery) => {
      const { unit, statement, reflections } = resolvedLink(link(2, 1.5), readingBy(method), delivery);
      expect(unit).toBe('dB');
      expect(statement.form).toBe(delivery === 'intoIdeal' ? 'limits' : 'asymmetric');
      expect(reflections !== undefined).toBe(delivery === 'intoIdeal');
    },
  );

  it('say the same whichever end is which, as long as an ideal load is meant', () => {
    fc.assert(
      fc.property(swr, swr, (a, b) => {
        const one = resolvedLink(link(a, b), readingBy('padsIntoMeter'), 'intoIdeal').statement;
        const other = resolvedLink(link(b, a), readingBy('padsIntoMeter'), 'intoIdeal').statement;
        if (one.form !== 'limits' || other.form !== 'limits') throw new Error('wish limits');
        expectWithin(one.halfWidth, other.halfWidth, 1e-12);
      }),
    );
  });

  it('of a load that takes everything are nothing, however bad the source', () => {
    fc.assert(
      fc.property(swr, fc.constantFrom(...DELIVERIES), (source, delivery) => {
        const { statement } = resolvedLink(link(source, 1), readingBy('padsIntoMeter'), delivery);
        if (statement.form === 'limits') expect(statement.halfWidth).toBeCloseTo(0, 12);
        else expect(statement).toMatchObject({ lower: expect.closeTo(0, 12), upper: expect.closeTo(0, 12) });
      }),
    );
  });

  it('of SWR 2 on a load of SWR 2 lose 0.51 dB where this load is meant: 1/9 comes back (reflection squared)', () => {
    const { statement } = resolvedLink(link(1, 2), readingBy('padsIntoMeter'), 'delivered');
    expect(statement).toMatchObject({ lower: expect.closeTo(-0.5115, 4), upper: expect.closeTo(-0.5115, 4) });
  });

  it('below one are refused', () => {
    expect(() => resolvedLink(link(0.9, 1.2), readingBy('padsIntoMeter'), 'intoIdeal')).toThrow(RangeError);
  });
});
