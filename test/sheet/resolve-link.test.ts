import { describe, expect, it } from 'vitest';
import { levelDbm, levelToPower, mismatchLimits } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import type { Stated } from '../../src/sheet/measurement.ts';
import type { MethodKind, MethodReading } from '../../src/sheet/method.ts';
import { resolvedLink } from '../../src/sheet/resolve-link.ts';
import { expectWithin } from '../compute/near.ts';
import { measurementBy, stated, within } from './any-measurement.ts';

/** What the club reads by a method. */
const readingBy = (method: MethodKind): MethodReading => {
  const { setup, points } = clubMeasurement(method);
  const [point] = points;
  if (point === undefined) throw new Error('club: wish a point');
  return { setup, columns: point.columns, frequencyHz: 3.58e6 };
};
const resolved = (of: Stated, method: MethodKind, delivery: 'intoIdeal' | 'delivered' | 'net' | 'incident') =>
  resolvedLink(stated({ id: 'x', stated: of, assumed: true, off: true }), readingBy(method), delivery);

describe('a statement', () => {
  it('stays what it is, without what is no matter of the sums', () => {
    const link = resolved(within(0.3), 'padsIntoMeter', 'intoIdeal');
    expect(link.statement).toEqual(within(0.3));
    expect(link).not.toHaveProperty('assumed');
    expect(link).not.toHaveProperty('off');
    expect(link).not.toHaveProperty('stated');
  });
});

describe('a sum of terms', () => {
  const terms: Stated = {
    form: 'terms',
    terms: [
      { of: 'reading', percent: 0.5 },
      { of: 'digits', count: 2, step: 0.01 },
    ],
  };
  const halfWidth = (method: MethodKind, of = terms) => {
    const { statement, unit } = resolved(of, method, 'incident');
    return { unit, halfWidth: statement.form === 'limits' ? statement.halfWidth : Number.NaN };
  };

  it('is the limit at the reading, in volts where volts were read', () => {
    const scope = halfWidth('oscilloscope');
    expectWithin(scope.halfWidth, 0.005 * ((14.1 + 14.2 + 14.2) / 3) + 0.02, 1e-12);
    expect(scope.unit).toBe('voltsPeakToPeak');
    const detector = halfWidth('peakDetector');
    expectWithin(detector.halfWidth, 0.005 * ((6.54 + 6.53 + 6.53) / 3) + 0.02, 1e-12);
    expect(detector.unit).toBe('volts');
    const dc = halfWidth('dcSubstitution');
    expectWithin(dc.halfWidth, 0.005 * 5 + 0.02, 1e-12);
    expect(dc.unit).toBe('dcVolts');
  });

  it('is a percentage of the power where a power or a level was read', () => {
    const line = halfWidth('inLine'); // 0.5 % of 0.51 W and 20 mW
    expectWithin(line.halfWidth, 0.5 + (100 * 0.02) / 0.51, 1e-12);
    expect(line.unit).toBe('percentOfPower');
    const floor: Stated = {
      form: 'terms',
      terms: [
        { of: 'reading', percent: 3 },
        { of: 'floor', amount: 1e-4 },
      ],
    };
    const meter = halfWidth('padsIntoMeter', floor); // 7 dBm is 5.01 mW; 0.1 mW of it
    expectWithin(meter.halfWidth, 3 + (100 * 1e-4) / levelToPower(levelDbm(7)), 1e-9);
    expect(meter.unit).toBe('percentOfPower');
  });

  it('of an in-line meter is a share of what is left where the net power is meant', () => {
    const { statement } = resolved(terms, 'inLine', 'net');
    const half = statement.form === 'limits' ? statement.halfWidth : Number.NaN;
    expectWithin(half, (100 * (0.005 * 0.51 + 0.02)) / 0.5, 1e-9); // of 0.51 W shown, 0.50 W are left
  });
});

describe('two standing-wave ratios', () => {
  const swr: Stated = { form: 'swr', sourceSwr: 1.5, loadSwr: 1.2 };
  const [source, load] = [0.5 / 2.5, 0.2 / 2.2];

  it('are the mismatch of two reflections where an ideal load is meant', () => {
    const link = resolved(swr, 'padsIntoMeter', 'intoIdeal');
    expect(link.reflections?.source).toBeCloseTo(source, 12);
    expect(link.reflections?.load).toBeCloseTo(load, 12);
    const { lower, upper } = mismatchLimits({ source, load });
    expect(link.statement).toMatchObject({ form: 'limits', shape: 'arcsine' });
    expectWithin(link.statement.form === 'limits' ? link.statement.halfWidth : 0, (upper - lower) / 2, 1e-12);
    expectWithin((upper - lower) / 2, 0.16, 0.005); // SWR 1.5 on 1.2: 0.16 dB, from memory of every table of mismatch
  });

  it('keep their exact shape in the sums: limits that are not the same above and below', () => {
    const far = measurementBy('padsIntoMeter', {
      links: [stated({ id: 'm', stated: { form: 'swr', sourceSwr: 3, loadSwr: 1.5 } })],
    });
    const { worstCase } = chainOf(sheetAt(far, 'point1')).result;
    const [s, l] = [0.5, 0.2];
    expectWithin(worstCase.interval.upper, 7 + 20 * Math.log10(1 + s * l), 1e-9);
    expectWithin(worstCase.interval.lower, 7 + 20 * Math.log10(1 - s * l), 1e-9);
  });

  it('are a known loss where the power that this load takes is meant, and nothing for the wave towards it', () => {
    for (const delivery of ['delivered', 'net'] as const) {
      const { statement, reflections } = resolved(swr, 'padsIntoMeter', delivery);
      const loss = 10 * Math.log10(1 - load ** 2);
      expect(statement).toEqual({
        form: 'asymmetric',
        lower: expect.closeTo(loss, 12),
        upper: expect.closeTo(loss, 12),
      });
      expect(reflections).toBeUndefined();
    }
    expect(resolved(swr, 'padsIntoMeter', 'incident').statement).toEqual({
      form: 'asymmetric',
      lower: 0,
      upper: 0,
    });
  });
});
