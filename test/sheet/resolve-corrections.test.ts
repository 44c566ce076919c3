import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCorrectionTable, type TabledCorrection } from '#compute';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import type { TabledStatement } from '../../src/sheet/measurement.ts';
import type { LinkUnit, MethodReading } from '../../src/sheet/method.ts';
import { certificate } from '../../src/sheet/own-meter.ts';
import { isCorrected } from '../../src/sheet/resolve-corrections.ts';
import { resolvedLink } from '../../src/sheet/resolve-link.ts';
import { expectWithin } from '../compute/near.ts';
import { stated } from './any-measurement.ts';

const { setup, points } = clubMeasurement('padsIntoMeter');
const at = (readings: readonly number[], frequencyHz?: number): MethodReading => ({
  setup,
  columns: { readings, reflected: [], riseDc: [], volts: [], amperes: [] },
  ...(frequencyHz !== undefined && { frequencyHz }),
});
const byLevel: TabledStatement = {
  form: 'corrections',
  by: 'level',
  points: certificate(),
  coverageFactor: 2,
};
const byFrequency: TabledStatement = {
  form: 'corrections',
  by: 'frequency',
  points: [
    { at: 1e6, correction: 0.1, expanded: 0.06 },
    { at: 30e6, correction: -0.2, expanded: 0.1 },
  ],
  coverageFactor: 2,
  degreesOfFreedom: 8,
};
const link = (of: TabledStatement, reading: MethodReading, rest: object = {}) =>
  resolvedLink(stated({ id: 'meter', stated: of, ...rest }), reading, 'intoIdeal');

describe('a link that a table corrects', () => {
  it('adds to its loss what the table gives at the level of the readings, and is as sure as the table is there', () => {
    const levels = certificate().map((row) => row.at);
    const level = fc.double({ min: Math.min(...levels), max: Math.max(...levels), noNaN: true });
    fc.assert(
      fc.property(level, fc.double({ min: -60, max: 60, noNaN: true }), (reading, lossDb) => {
        const table = readCorrectionTable({ points: certificate(), at: reading });
        const found = link(byLevel, at([reading]), { lossDb });
        expectWithin(found.lossDb, lossDb + table.correction, 1e-12);
        expect(found.correctionDb).toBe(table.correction);
        expect(found.statement).toEqual({ form: 'expanded', expanded: table.expanded, coverageFactor: 2 });
      }),
    );
  });

  it('takes the mean of several readings for their level: -13 dBm lies 0.3 of the way from -10 to -20', () => {
    // 0.20 + 0.3 x (0.36 - 0.20) = 0.248 dB
    expectWithin(link(byLevel, at([-12.9, -13.1])).lossDb, 0.248, 1e-12);
  });

  it('goes by the frequency of the point where the table does, in hertz', () => {
    const found = link(byFrequency, at([7], 1e6));
    expect(found.lossDb).toBe(0.1);
    expect(found.statement).toEqual({
      form: 'expanded',
      expanded: 0.06,
      coverageFactor: 2,
      degreesOfFreedom: 8,
    });
  });

  it('turns a correction in percent into decibels: +5 % of power is 0.212 dB, of volts 0.424 dB', () => {
    const rows: readonly TabledCorrection[] = [
      { at: 0, correction: 5, expanded: 1 },
      { at: 10, correction: 5, expanded: 1 },
    ];
    const of = (unit: LinkUnit) => link({ ...byLevel, points: rows }, at([7]), { unit }).lossDb;
    expectWithin(of('percentOfPower'), 0.2119, 1e-4); // 10 lg 1.05
    expectWithin(of('percentOfVolts'), 0.4238, 1e-4); // 20 lg 1.05
  });
});

describe('a table says nothing', () => {
  it('beyond its ends', () => {
    expect(() => link(byLevel, at([10.1]))).toThrow(RangeError);
    expect(() => link(byFrequency, at([7], 145e6))).toThrow(RangeError);
  });

  it('of a point whose frequency is not known, where it goes by frequency', () => {
    expect(() => link(byFrequency, at([7]))).toThrow(/frequency/);
    expect(points).toHaveLength(1);
  });

  it('in a unit that is one of readings and not of decibels', () => {
    expect(() => link(byLevel, at([7]), { unit: 'volts' })).toThrow(/unit/);
    expect(
      (['dB', 'percentOfPower', 'percentOfVolts', 'volts', 'kelvinRf'] as const).filter(isCorrected),
    ).toEqual(['dB', 'percentOfPower', 'percentOfVolts']);
  });
});
