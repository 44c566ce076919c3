import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  combinedBandwidth,
  gaussianLossDb,
  riseTimeS,
  singlePoleLossDb,
} from '../../src/compute/bandwidth.ts';
import { expectNear, expectPrinted } from './near.ts';

const hertz = fc.double({ min: 1, max: 1e10, noNaN: true });

describe('bandwidths in a row', () => {
  it('are never wider than the narrowest, in any order', () => {
    fc.assert(
      fc.property(fc.array(hertz, { minLength: 1, maxLength: 5 }), (parts) => {
        const together = combinedBandwidth(parts);
        expect(together).toBeLessThanOrEqual(Math.min(...parts) * (1 + 1e-12));
        expectNear(combinedBandwidth([...parts].reverse()), together);
      }),
    );
  });

  it('of one part are its own; of two equal ones 0.707 of one', () => {
    expectNear(combinedBandwidth([100e6]), 100e6);
    expectNear(combinedBandwidth([100e6, 100e6]), 100e6 * Math.SQRT1_2);
  });

  it('of none, or of nothing, are refused', () => {
    expect(() => combinedBandwidth([])).toThrow(
      new RangeError('combinedBandwidth: bandwidthsHz must hold at least one, got []'),
    );
    expect(() => combinedBandwidth([1, 0])).toThrow(
      new RangeError('combinedBandwidth: bandwidthsHz must be > 0, got 0'),
    );
  });
});

describe('roll-off, recomputed from the two models', () => {
  it.each([
    [0.1, 0.0432, 0.0301],
    [0.2, 0.1703, 0.1204],
    [0.25, 0.2633, 0.1881],
    [1 / 3, 0.4576, 0.3345],
    [0.5, 0.9691, 0.7526],
    [1, 3.0103, 3.0103],
    [2, 6.9897, 12.0412],
  ])('at f/B = %f a single pole is %f dB low, a Gaussian front end %f dB', (x, single, gaussian) => {
    expectPrinted(singlePoleLossDb(x), single, 4);
    expectPrinted(gaussianLossDb(x), gaussian, 4);
  });

  it('takes 3 % of volts at 0.2506 of a single-pole and 0.2965 of a Gaussian bandwidth', () => {
    const threePercent = -20 * Math.log10(0.97);
    expectNear(singlePoleLossDb(0.250624), threePercent, 1e-5);
    expectNear(gaussianLossDb(0.296457), threePercent, 1e-5);
  });

  it('takes nothing at DC, and less from a Gaussian front end up to the bandwidth', () => {
    expect(singlePoleLossDb(0)).toBe(0);
    expect(gaussianLossDb(0)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (x) => {
        expect(gaussianLossDb(x)).toBeLessThan(singlePoleLossDb(x));
      }),
    );
  });

  it('of negative ratios is refused', () => {
    expect(() => singlePoleLossDb(-1)).toThrow(
      new RangeError('singlePoleLossDb: ratio must be >= 0, got -1'),
    );
    expect(() => gaussianLossDb(-1)).toThrow(new RangeError('gaussianLossDb: ratio must be >= 0, got -1'));
  });
});

describe('rise time', () => {
  it('is 0.35 over the bandwidth', () => {
    expectPrinted(riseTimeS(1), 0.349699, 6);
    expectNear(riseTimeS(100e6), 3.49699e-9, 1e-5);
  });

  it('of no bandwidth is refused', () => {
    expect(() => riseTimeS(0)).toThrow(new RangeError('riseTimeS: bandwidthHz must be > 0, got 0'));
  });
});
