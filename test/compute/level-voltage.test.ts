import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { powerToLevel } from '../../src/compute/level.ts';
import {
  dbmvToLevel,
  dbuvToLevel,
  dbvToLevel,
  levelToDbmv,
  levelToDbuv,
  levelToDbv,
  levelToVolts,
  voltsToLevel,
} from '../../src/compute/level-voltage.ts';
import { levelDbm, ohms, powerW, voltsRms } from '../../src/compute/quantity.ts';
import { expectNear, expectPrinted, expectWithin } from './near.ts';

const level = fc.double({ min: -200, max: 100, noNaN: true }).map(levelDbm);
const resistance = fc.double({ min: 0.01, max: 1e6, noNaN: true }).map(ohms);
const fifty = ohms(50);

describe('a level across a resistance', () => {
  it('comes back from dBV, dBmV, dBuV and volts', () => {
    fc.assert(
      fc.property(level, resistance, (l, r) => {
        const across = { level: l, resistance: r };
        expectWithin(dbvToLevel({ levelDbv: levelToDbv(across), resistance: r }), l, 1e-11);
        expectWithin(dbmvToLevel({ levelDbmv: levelToDbmv(across), resistance: r }), l, 1e-11);
        expectWithin(dbuvToLevel({ levelDbuv: levelToDbuv(across), resistance: r }), l, 1e-11);
        expectWithin(voltsToLevel({ volts: levelToVolts(across), resistance: r }), l, 1e-11);
      }),
    );
  });

  it('is the level of the power V^2/R', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e4, noNaN: true }), resistance, (volts, r) =>
        expectWithin(
          voltsToLevel({ volts: voltsRms(volts), resistance: r }),
          powerToLevel(powerW(volts ** 2 / r)),
          1e-10,
        ),
      ),
    );
  });

  it('has more volts across a larger resistance', () => {
    fc.assert(
      fc.property(level, resistance, (l, r) => {
        expect(levelToVolts({ level: l, resistance: ohms(2 * r) })).toBeGreaterThan(
          levelToVolts({ level: l, resistance: r }),
        );
      }),
    );
  });
});

describe('figures that the trade knows by heart', () => {
  it.each([
    [50, 106.9897000434],
    [75, 108.7506126339],
  ])('at %i ohm dBuV is dBm + %f', (r, offset) => {
    expectWithin(levelToDbuv({ level: levelDbm(0), resistance: ohms(r) }), offset, 1e-10);
    expectWithin(dbuvToLevel({ levelDbuv: offset, resistance: ohms(r) }), 0, 1e-10);
  });

  it.each([
    [50, 46.9897],
    [75, 48.7506],
  ])('at %i ohm dBmV is dBm + %f', (r, offset) => {
    expectPrinted(levelToDbmv({ level: levelDbm(0), resistance: ohms(r) }), offset, 4);
    expectPrinted(dbmvToLevel({ levelDbmv: 0, resistance: ohms(r) }), -offset, 4);
  });

  it('at 50 ohm dBV is dBm - 13.0103', () => {
    expectPrinted(levelToDbv({ level: levelDbm(0), resistance: fifty }), -13.0103, 4);
    expectPrinted(dbvToLevel({ levelDbv: 0, resistance: fifty }), 13.0103, 4);
  });

  it('S9 on HF, 50 uV in 50 ohm, is -73.0103 dBm (IARU Region 1 recommendation R.1)', () => {
    expectPrinted(voltsToLevel({ volts: voltsRms(50e-6), resistance: fifty }), -73.0103, 4);
  });

  it('0 dBu is 0.7746 V: 1 mW in 600 ohm', () => {
    expectNear(levelToVolts({ level: levelDbm(0), resistance: ohms(600) }), 0.7745966692, 1e-10);
  });

  it.each([
    [-20, 0.0223607],
    [-3, 0.158301],
    [0, 0.223607],
    [13, 0.998815],
    [30, 7.07107],
    [37, 15.8301],
    [50, 70.7107],
  ])('%i dBm across 50 ohm is %f V RMS (table of a university course)', (dbm, volts) => {
    expectNear(levelToVolts({ level: levelDbm(dbm), resistance: fifty }), volts, 5e-6);
  });
});

describe('forbidden voltages', () => {
  it('zero volts have no level', () => {
    expect(() => voltsToLevel({ volts: voltsRms(0), resistance: fifty })).toThrow(
      new RangeError('voltsToLevel: volts must be > 0, got 0'),
    );
  });

  it('a level in dBV, dBmV or dBuV that is no number is refused by its name', () => {
    const bad = Number.NaN;
    expect(() => dbvToLevel({ levelDbv: bad, resistance: fifty })).toThrow(
      new RangeError('dbvToLevel: levelDbv must be a finite number, got NaN'),
    );
    expect(() => dbmvToLevel({ levelDbmv: bad, resistance: fifty })).toThrow(
      new RangeError('dbmvToLevel: levelDbmv must be a finite number, got NaN'),
    );
    expect(() => dbuvToLevel({ levelDbuv: bad, resistance: fifty })).toThrow(
      new RangeError('dbuvToLevel: levelDbuv must be a finite number, got NaN'),
    );
  });
});
