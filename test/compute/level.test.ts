import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addGain,
  dbwToLevel,
  intervalInWatts,
  levelDifference,
  levelToDbw,
  levelToPower,
  powerToLevel,
} from '../../src/compute/level.ts';
import { gainDb, levelDbm, powerW } from '../../src/compute/quantity.ts';
import { expectNear, expectPrinted, expectWithin } from './near.ts';

const level = fc.double({ min: -200, max: 100, noNaN: true }).map(levelDbm);
const gain = fc.double({ min: -100, max: 100, noNaN: true }).map(gainDb);

describe('levels', () => {
  it('bring back the power that they came from', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-25, max: 1e9, noNaN: true }), (watts) =>
        expectNear(levelToPower(powerToLevel(powerW(watts))), watts),
      ),
    );
  });

  it('fall by the same step when the power is halved, from any start', () => {
    fc.assert(
      fc.property(level, (l) =>
        expectWithin(powerToLevel(powerW(levelToPower(l) / 2)), l - 3.010299956639812, 1e-11),
      ),
    );
  });

  it('move by a gain and back, and the difference is the gain', () => {
    fc.assert(
      fc.property(level, gain, (l, g) => {
        const moved = addGain({ level: l, gain: g });
        expectWithin(levelDifference({ level: moved, reference: l }), g, 1e-11);
        expectWithin(addGain({ level: moved, gain: gainDb(-g) }), l, 1e-11);
      }),
    );
  });

  it('multiply the power by the ratio of the gain', () => {
    fc.assert(
      fc.property(level, gain, (l, g) =>
        expectNear(levelToPower(addGain({ level: l, gain: g })), levelToPower(l) * 10 ** (g / 10), 1e-11),
      ),
    );
  });

  it('are 30 lower in dBW, and come back', () => {
    fc.assert(fc.property(level, (l) => expectWithin(dbwToLevel(levelToDbw(l)), l, 1e-12)));
    expect(levelToDbw(levelDbm(27))).toBe(-3);
    expect(dbwToLevel(-3)).toBe(27);
  });
});

describe('levels of the trade (common practice)', () => {
  it.each([
    [0, 0.001],
    [10, 0.01],
    [20, 0.1],
    [30, 1],
    [-20, 1e-5],
    [50, 100],
  ])('%f dBm is %f W', (dbm, watts) => {
    expectNear(levelToPower(levelDbm(dbm)), watts);
    expectWithin(powerToLevel(powerW(watts)), dbm, 1e-12);
  });

  it('23 dBm is 200 mW, 22 dBm is 158 mW, 5 W is 36.99 dBm, to the digits printed', () => {
    expectPrinted(1000 * levelToPower(levelDbm(23)), 200, 0);
    expectPrinted(1000 * levelToPower(levelDbm(22)), 158, 0);
    expectPrinted(powerToLevel(powerW(5)), 36.99, 2);
  });

  it('a reading of 22.5 dBm good to 1 dB means 141 to 224 mW', () => {
    const { lower, upper } = intervalInWatts({ lower: levelDbm(21.5), upper: levelDbm(23.5) });
    expectPrinted(1000 * lower, 141, 0);
    expectPrinted(1000 * upper, 224, 0);
  });

  it('forgetting a 30 dB pad reports 9.3 uW for 9.33 mW', () => {
    const shown = levelDbm(-20.3);
    expectPrinted(1e6 * levelToPower(shown), 9.3, 1);
    expectPrinted(1000 * levelToPower(addGain({ level: shown, gain: gainDb(30) })), 9.33, 2);
  });
});

describe('an interval in watts', () => {
  it('reaches further up than down, wherever it is even in dB', () => {
    fc.assert(
      fc.property(level, fc.double({ min: 0.01, max: 50, noNaN: true }), (l, half) => {
        const { lower, upper } = intervalInWatts({ lower: levelDbm(l - half), upper: levelDbm(l + half) });
        const middle = levelToPower(l);
        expect(upper - middle).toBeGreaterThan(middle - lower);
      }),
    );
  });

  it('may have no width', () => {
    expect(intervalInWatts({ lower: levelDbm(30), upper: levelDbm(30) })).toEqual({ lower: 1, upper: 1 });
  });

  it('is refused with its ends the wrong way round', () => {
    expect(() => intervalInWatts({ lower: levelDbm(2), upper: levelDbm(1) })).toThrow(
      new RangeError('intervalInWatts: lower must not be above upper, got "2 to 1"'),
    );
  });
});

describe('forbidden levels and powers', () => {
  it('zero watts have no level', () => {
    expect(() => powerToLevel(powerW(0))).toThrow(new RangeError('powerToLevel: power must be > 0, got 0'));
  });

  it.each([3001, -3001])('%i dBm has no power that a double could hold', (bad) => {
    expect(() => levelToPower(levelDbm(bad))).toThrow(
      new RangeError(`levelToPower: level must be from -3000 to 3000, got ${bad}`),
    );
  });

  it('a dBW that is no number is refused', () => {
    expect(() => dbwToLevel(Number.NaN)).toThrow(
      new RangeError('dbwToLevel: levelDbw must be a finite number, got NaN'),
    );
  });
});
