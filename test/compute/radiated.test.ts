import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normal } from '../../src/compute/distribution/normal.ts';
import { gainDb, levelDbm } from '../../src/compute/quantity.ts';
import { antennaGainOver, eirp, erp, radiatedModel } from '../../src/compute/radiated.ts';
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

  it('becomes a sum whose inputs all add', () => {
    const inputs = ['power', 'antenna'].map((id) => ({
      id,
      distribution: normal({ mean: 0, standardDeviation: 0.5 }),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    }));
    const dipole = { gain: gainDb(2.15), over: 'isotropic' as const };
    const parts = { level: levelDbm(27), feeder: gainDb(-1), antenna: dipole };
    const model = radiatedModel({ parts, over: 'halfWaveDipole', inputs });
    expect(model).toMatchObject({ kind: 'sum', sensitivities: [1, 1], inputs });
    expectWithin(model.constant, 26, 1e-12);
    expectWithin(radiatedModel({ parts, over: 'isotropic', inputs }).constant, 28.15, 1e-12);
  });
});
