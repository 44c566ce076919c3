import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ohms, type PowerDelivery } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { readingLevels } from '../../src/sheet/levels.ts';
import { COLUMNS, COLUMNS_OF, METHODS, type MethodKind } from '../../src/sheet/method.ts';
import { outcomeOf } from '../../src/sheet/to-model.ts';
import { expectWithin } from '../compute/near.ts';
import { measurementBy } from './any-measurement.ts';

type Options = Parameters<typeof measurementBy>[1];

/** The levels of the only point of a measurement. */
function levels(method: MethodKind, options: Options, delivery: PowerDelivery = 'intoIdeal') {
  const { setup, points } = measurementBy(method, options);
  const [point] = points;
  if (point === undefined) throw new Error('measurementBy: wish a point');
  return readingLevels({ setup, columns: point.columns }, delivery);
}

/** One watt by each method, and what is read for it: V²/8R for 20 Vpp, V²/2R for 10 V of crest, both on 50 ohm (Ohm's law). */
const ONE_WATT: readonly (readonly [MethodKind, Options])[] = [
  ['padsIntoMeter', { columns: { readings: [30] } }],
  ['oscilloscope', { setup: { resistance: ohms(50) }, columns: { readings: [20] } }],
  ['peakDetector', { setup: { resistance: ohms(50), diodeDropV: 0.5 }, columns: { readings: [9.5] } }],
  ['inLine', { columns: { readings: [1.25], reflected: [0.25] } }],
  [
    'dcSubstitution',
    { columns: { readings: [12], riseDc: [12], volts: [7.0710678118654755], amperes: [0.1414213562373095] } },
  ],
];

describe('the level that one reading alone would say', () => {
  it.each(ONE_WATT)('is 30 dBm for one watt by %s', (method, options) => {
    const [level] = levels(method, options, 'net');
    expectWithin(level ?? Number.NaN, 30, 1e-9);
  });

  it('counts what comes back with an in-line meter, but not where the wave towards the load is meant', () => {
    const options = { columns: { readings: [1.25], reflected: [0.25] } };
    expectWithin(levels('inLine', options, 'incident')[0] ?? 0, 10 * Math.log10(1250), 1e-9);
    for (const delivery of ['net', 'delivered', 'intoIdeal'] as const)
      expectWithin(levels('inLine', options, delivery)[0] ?? 0, 30, 1e-9);
  });

  it('takes every other column at its mean, and the main one reading by reading', () => {
    const columns = { readings: [6, 12], riseDc: [11, 13], volts: [9, 11], amperes: [0.1, 0.3] };
    const [half, whole] = levels('dcSubstitution', { columns });
    expectWithin(whole ?? 0, 10 * Math.log10(2000), 1e-9); // 10 V times 0.2 A at the same 12 K
    expectWithin(half ?? 0, 30, 1e-9);
  });

  it('rises by 6.02 dB for twice the volts and by 3.01 dB for twice the power or the warmth (20 lg 2, 10 lg 2)', () => {
    const main = fc.double({ min: 0.2, max: 30, noNaN: true });
    const rise = (method: MethodKind, reading: number, setup: object = {}): number => {
      const columns = {
        readings: [reading, 2 * reading],
        reflected: [0],
        riseDc: [9],
        volts: [5],
        amperes: [0.1],
      };
      const [once = 0, twice = 0] = levels(method, { columns, setup }, 'incident');
      return twice - once;
    };
    fc.assert(
      fc.property(main, (reading) => {
        expectWithin(rise('oscilloscope', reading), 20 * Math.log10(2), 1e-9);
        expectWithin(rise('inLine', reading), 10 * Math.log10(2), 1e-9);
        expectWithin(rise('dcSubstitution', reading), 10 * Math.log10(2), 1e-9);
        // The drop of the diode does not grow with the volts.
        expect(rise('peakDetector', reading)).toBeLessThan(20 * Math.log10(2));
        expectWithin(rise('peakDetector', reading, { diodeDropV: 0 }), 20 * Math.log10(2), 1e-9);
      }),
    );
  });

  it.each(METHODS)('is where the sums start from, for one reading without links and losses: %s', (method) => {
    const plain = measurementBy(method, { point: { frequencyHz: 1 } });
    const points = plain.points.map((point) => ({
      ...point,
      columns: { ...point.columns, readings: point.columns.readings.slice(0, 1) },
    }));
    const sheet = sheetAt({ ...plain, points }, 'point1');
    const outcome = outcomeOf(sheet);
    if (!outcome.inRange) throw new Error(`wish a number, got ${outcome.reason.code}`);
    expect(sheet.readings).toHaveLength(1);
    expectWithin(outcome.model.constant, sheet.readings[0] ?? Number.NaN, 1e-9);
  });

  it('does not exist for no volts, no power, no warmth, nor where all comes back', () => {
    for (const method of ['oscilloscope', 'dcSubstitution', 'inLine'] as const) {
      const columns = { readings: [0], reflected: [0], riseDc: [9], volts: [5], amperes: [0.1] };
      expect(() => levels(method, { columns })).toThrow(RangeError);
    }
    expect(() => levels('inLine', { columns: { readings: [0.5], reflected: [0.5] } }, 'net')).toThrow(
      RangeError,
    );
    expect(() =>
      levels('dcSubstitution', { columns: { readings: [9], riseDc: [0], volts: [5], amperes: [1] } }),
    ).toThrow(/readingLevels: riseDc must be > 0, got 0/);
  });
});

describe('the columns that a method asks for', () => {
  it.each(METHODS)('begin with its readings, and are among those that a point has: %s', (method) => {
    expect(COLUMNS_OF[method][0]).toBe('readings');
    for (const column of COLUMNS_OF[method]) expect(COLUMNS).toContain(column);
  });
});
