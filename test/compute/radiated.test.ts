import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gainDb, levelDbm } from '../../src/compute/quantity.ts';
import { antennaGainOver, eirp, erp } from '../../src/compute/radiated.ts';
import { expectWithin } from './near.ts';

const db = fc.double({ min: -60, max: 60, noNaN: true });
const over = fc.constantFrom('isotropic' as const, 'halfWaveDipole' as const);

describe('radiated power', () => {
  it('over an isotropic antenna is 2.15 dB more than over a dipole, for any antenna', () => {
    fc.assert(
      fc.property(db, db, db, over, (level, feeder, gain, reference) => {
        const parts = {
          level: levelDbm(level),
          feeder: gainDb(feeder),
          antenna: { gain: gainDb(gain), over: reference },
        };
        expectWithin(eirp(parts) - erp(parts), 2.15, 1e-9);
      }),
    );
  });

  it('of 27 dBm through 1 dB of cable into a dipole is 26 dBm ERP, 28.15 dBm EIRP', () => {
    const dipole = { gain: gainDb(0), over: 'halfWaveDipole' as const };
    const parts = { level: levelDbm(27), feeder: gainDb(-1), antenna: dipole };
    expectWithin(erp(parts), 26, 1e-12);
    expectWithin(eirp(parts), 28.15, 1e-12);
  });

  it('counts a gain over the reference that is asked for', () => {
    const gain = { gain: gainDb(6), over: 'isotropic' as const };
    expect(antennaGainOver('isotropic', gain)).toBe(6);
    expectWithin(antennaGainOver('halfWaveDipole', gain), 3.85, 1e-12);
    expectWithin(antennaGainOver('isotropic', { ...gain, over: 'halfWaveDipole' }), 8.15, 1e-12);
  });
});
