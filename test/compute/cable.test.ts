import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CableLoss, cableLossDb, shuntCapacitanceLossDb } from '../../src/compute/cable.ts';
import { expectNear, expectPrinted } from './near.ts';

/** Common handbook values, dB per 100 ft at 30 and 150 MHz. */
const table = (at30: number, at150: number): [CableLoss, CableLoss] => [
  { frequencyHz: 30e6, lossDb: at30 },
  { frequencyHz: 150e6, lossDb: at150 },
];
const thin = table(2.47, 5.63);
const FEET_PER_100_M = 328.084;

describe('the loss of a cable', () => {
  it.each([
    [thin, 8.1, 18.47],
    [table(1.08, 2.53), 3.54, 8.3],
    [table(4.56, 10.3), 14.96, 33.79],
  ])('per 100 m is 3.28 times that per 100 ft', (known, at30, at150) => {
    const at = (hz: number) => (cableLossDb({ known, frequencyHz: hz }) * FEET_PER_100_M) / 100;
    expectPrinted(at(30e6), at30, 2);
    expectPrinted(at(150e6), at150, 2);
  });

  it('of 3 m of thin cable at 14 MHz is 0.17 dB', () => {
    const per100Feet = cableLossDb({ known: thin, frequencyHz: 14e6 });
    expectPrinted((per100Feet * 0.03 * FEET_PER_100_M) / 100, 0.17, 2);
  });

  it('is 0.4439 per root of MHz and 0.00129 per MHz for the thin cable', () => {
    const at = (mhz: number) => cableLossDb({ known: thin, frequencyHz: 1e6 * mhz });
    expectNear(at(1), 0.4439 + 0.00129, 1e-3);
    expectNear(at(100), 0.4439 * 10 + 0.00129 * 100, 1e-3);
  });

  it('goes through both entries, in either order', () => {
    const hz = fc.double({ min: 1e6, max: 1e9, noNaN: true });
    const db = fc.double({ min: 0.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(hz, hz, db, db, hz, (f1, f2, l1, l2, f) => {
        if (Math.abs(f1 - f2) < 1e4) return;
        const first = { frequencyHz: f1, lossDb: l1 };
        const second = { frequencyHz: f2, lossDb: l2 };
        expectNear(cableLossDb({ known: [first, second], frequencyHz: f1 }), l1, 1e-9);
        expectNear(cableLossDb({ known: [first, second], frequencyHz: f2 }), l2, 1e-6);
        const one = cableLossDb({ known: [first, second], frequencyHz: f });
        const other = cableLossDb({ known: [second, first], frequencyHz: f });
        expect(Math.abs(one - other)).toBeLessThan(1e-6 * (1 + Math.abs(one)) * (1e9 / Math.abs(f1 - f2)));
      }),
    );
  });

  it('is refused at one frequency only, at none, or below nothing', () => {
    const same: [CableLoss, CableLoss] = [thin[0], thin[0]];
    expect(() => cableLossDb({ known: same, frequencyHz: 1e6 })).toThrow(
      new RangeError('cableLossDb: known must be at two frequencies, got 30000000'),
    );
    expect(() => cableLossDb({ known: thin, frequencyHz: 0 })).toThrow(
      new RangeError('cableLossDb: frequencyHz must be > 0, got 0'),
    );
    expect(() => cableLossDb({ known: table(-1, 2), frequencyHz: 1e6 })).toThrow(
      new RangeError('cableLossDb: known.lossDb must be >= 0, got -1'),
    );
    const nowhere: [CableLoss, CableLoss] = [{ frequencyHz: 0, lossDb: 1 }, thin[1]];
    expect(() => cableLossDb({ known: nowhere, frequencyHz: 1e6 })).toThrow(
      new RangeError('cableLossDb: known.frequencyHz must be > 0, got 0'),
    );
  });
});

describe('a capacitance across a line of 50 ohm', () => {
  const loss = (picofarad: number, mhz: number) =>
    shuntCapacitanceLossDb({ capacitanceF: 1e-12 * picofarad, frequencyHz: 1e6 * mhz, resistanceOhm: 50 });

  it.each([
    [12, 30, 0.01],
    [100, 7, 0.05],
    [100, 30, 0.87],
    [15, 145, 0.48],
  ])('of %f pF at %f MHz takes %f dB', (picofarad, mhz, db) => expectPrinted(loss(picofarad, mhz), db, 2));

  it('takes nothing at DC or where it is none', () => {
    expect(loss(100, 0)).toBe(0);
    expect(loss(0, 100)).toBe(0);
  });

  it('agrees with the voltages across a source and load of 50 ohm', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), (picofarad) => {
        // Voltage across load and capacitance over that across the load alone, from admittances at 30 MHz.
        const susceptance = 2 * Math.PI * 30e6 * picofarad * 1e-12;
        const ratio = 0.04 / Math.hypot(0.04, susceptance);
        expect(Math.abs(loss(picofarad, 30) + 20 * Math.log10(ratio))).toBeLessThan(1e-9);
      }),
    );
  });

  it('is refused below nothing', () => {
    const all = { capacitanceF: 1e-12, frequencyHz: 1e6, resistanceOhm: 50 };
    const where = 'shuntCapacitanceLossDb';
    expect(() => shuntCapacitanceLossDb({ ...all, capacitanceF: -1 })).toThrow(
      new RangeError(`${where}: capacitanceF must be >= 0, got -1`),
    );
    expect(() => shuntCapacitanceLossDb({ ...all, frequencyHz: -1 })).toThrow(
      new RangeError(`${where}: frequencyHz must be >= 0, got -1`),
    );
    expect(() => shuntCapacitanceLossDb({ ...all, resistanceOhm: 0 })).toThrow(
      new RangeError(`${where}: resistanceOhm must be > 0, got 0`),
    );
  });
});
