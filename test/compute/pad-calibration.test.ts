import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { propagate } from '../../src/compute/combine/propagate.ts';
import { evaluate } from '../../src/compute/evaluate.ts';
import { padByDc, padBySwap } from '../../src/compute/pad-calibration.ts';
import { limited, quantity } from './combine/published-models.ts';

const level = fc.double({ min: -20, max: 20, noNaN: true });
const uOf = (model: Parameters<typeof propagate>[0]['model']) => propagate({ model }).standardUncertainty;

describe('a pad measured at DC', () => {
  const meter = (id: string, cause?: string) =>
    limited(id, 0.5, { unit: 'percentOfVolts', ...(cause ? { cause } : {}) });
  const measured = { voltsIn: 3, voltsOut: 0.948, loadOhms: 50 };

  test('3.000 V and 0.948 V into its own impedance are 10.006 dB', () => {
    expect(padByDc(measured).constant).toBeCloseTo(20 * Math.log10(3 / 0.948), 12);
    expect(padByDc(measured).constant).toBeCloseTo(10.006, 3);
    expect(uOf(padByDc(measured))).toBe(0);
  });

  test('two readings of 0.5 % each leave 0.07 dB, one meter on one range leaves none of it', () => {
    const apart = padByDc({ ...measured, atInput: [meter('in')], atLoad: [meter('out')] });
    expect(2 * uOf(apart)).toBeCloseTo(0.071, 3);
    const same = padByDc({ ...measured, atInput: [meter('in', 'meter')], atLoad: [meter('out', 'meter')] });
    expect(uOf(same)).toBeCloseTo(0, 12);
    expect(evaluate({ model: same }).worstCase.interval.upper).toBeCloseTo(same.constant, 9);
  });

  test('1 % of load resistance is 0.04 dB', () => {
    const model = padByDc({ ...measured, load: { ...limited('load', 1), id: 'load' } });
    expect(model.sensitivities[0]).toBeCloseTo(0.039, 3);
    // 20 lg of 1.01 in the load, less what the pad's own impedance (40.9 ohm, its input held) makes of it.
    const behind = (50 * 0.9) / 1.1;
    expect(model.sensitivities[0]).toBeCloseTo((20 / Math.LN10) * 0.01 * (behind / (behind + 50)), 3);
  });

  test('a load off its value is reckoned with: the pad stays what it is', () => {
    // Voltage across 60 ohm behind a 10 dB pad of 50 ohm.
    const s = 10 ** (-10 / 20);
    const reflection = 10 / 110;
    const voltsOut = (3 * s * (1 + reflection)) / (1 + s * s * reflection);
    expect(padByDc({ voltsIn: 3, voltsOut, loadOhms: 60 }).constant).toBeCloseTo(10, 10);
    const low = -10 / 90;
    const lower = (3 * s * (1 + low)) / (1 + s * s * low);
    expect(padByDc({ voltsIn: 3, voltsOut: lower, loadOhms: 40 }).constant).toBeCloseTo(10, 10);
    expect(padByDc({ voltsIn: 3, voltsOut: 1, loadOhms: 75, impedanceOhms: 75 }).constant).toBeCloseTo(
      20 * Math.log10(3),
      12,
    );
  });

  test('what is no attenuation is refused', () => {
    expect(() => padByDc({ ...measured, voltsOut: 3 })).toThrow(
      'padByDc: voltsOut must be < voltsIn, got [3,3]',
    );
    expect(() => padByDc({ ...measured, voltsOut: 0 })).toThrow('padByDc: voltsOut must be > 0');
    expect(() => padByDc({ ...measured, voltsIn: -1 })).toThrow('padByDc: voltsIn must be > 0');
    expect(() => padByDc({ ...measured, loadOhms: 0 })).toThrow('padByDc: loadOhms must be > 0');
    expect(() => padByDc({ ...measured, impedanceOhms: 0 })).toThrow('padByDc: impedanceOhms must be > 0');
  });
});

describe('a pad swapped in front of one receiver', () => {
  test('its attenuation is the fall of the reading, with both mismatches', () => {
    const parts = [
      limited('without', 0.1, { shape: 'arcsine' }),
      limited('with', 0.05, { shape: 'arcsine' }),
      quantity('scatter', 0, 0.01),
    ];
    const model = padBySwap({ withoutDb: -20.3, withDb: -40.2, parts });
    expect(model.constant).toBeCloseTo(19.9, 12);
    expect(uOf(model)).toBeCloseTo(Math.sqrt(0.005 + 0.00125 + 0.0001), 12);
  });

  test('whatever the receiver adds to both readings plays no part', () => {
    fc.assert(
      fc.property(level, (offset) => {
        const model = padBySwap({ withoutDb: -20 + offset, withDb: -40 + offset, parts: [] });
        expect(model.constant).toBeCloseTo(20, 10);
      }),
    );
  });

  test('a pad that raises the reading is refused', () => {
    expect(() => padBySwap({ withoutDb: -20, withDb: -20, parts: [] })).toThrow(
      'padBySwap: withDb must be < withoutDb, got [-20,-20]',
    );
    expect(() => padBySwap({ withoutDb: Number.NaN, withDb: 0, parts: [] })).toThrow('padBySwap: withoutDb');
    expect(() => padBySwap({ withoutDb: 0, withDb: Number.NaN, parts: [] })).toThrow('padBySwap: withDb');
  });
});
