import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { powerW } from '#compute';
import {
  KEYINGS,
  type Keyed,
  meanOf,
  powerOfKind,
  powersAt,
  shareOf,
  supplyShares,
} from '../../src/sheet/keyed.ts';
import { KEYED_SLIPS, keyedSlip } from '../../src/sheet/keyed-slips.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const keyed: fc.Arbitrary<Keyed> = fc.record({
  peakW: number(0.01, 100),
  keying: fc.constantFrom(...KEYINGS),
  supplyV: number(1, 30),
  supplyA: number(0.001, 10),
  coaxDb: number(0, 10),
  swr: number(1, 10),
});
const club: Keyed = { peakW: 0.5, keying: 'parisWord', supplyV: 12, supplyA: 0.12, coaxDb: 0.5, swr: 1.5 };

describe('the powers of a keyed transmitter', () => {
  it('have the mean never above the peak, and the carrier on it', () => {
    fc.assert(
      fc.property(keyed, (one) => {
        const mean = powerOfKind(one, 'mean') ?? Number.NaN;
        const peak = powerOfKind(one, 'peakEnvelope') ?? Number.NaN;
        expect(mean).toBeLessThanOrEqual(peak * (1 + 1e-12));
        expect(peak).toBeCloseTo(one.peakW, 9);
        expect(powerOfKind(one, 'carrier')).toBe(one.keying === 'twoEqualTones' ? undefined : one.peakW);
      }),
    );
  });

  it('stand as 1, 1/2, 22/50 and 1/2 (ITU-R M.1677 for Morse; common practice for two tones)', () => {
    expect(KEYINGS.map(shareOf)).toEqual([1, 0.5, 0.44, 0.5]);
    expect(meanOf({ peakW: 2, keying: 'parisWord' })).toBeCloseTo(0.88, 12);
  });
});

describe('a wave at both ends of the coax', () => {
  it('has what stays and what comes back add up to what arrives, at either end', () => {
    fc.assert(
      fc.property(keyed, fc.constantFrom('socket' as const, 'load' as const), (one, plane) => {
        const { incident, reflected, delivered } = powersAt(plane, { ...one, power: powerW(one.peakW) });
        expect(reflected + delivered).toBeCloseTo(incident, 9);
        expect(reflected).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('brings the load what the socket lets go, less what the coax turns into heat on both ways', () => {
    fc.assert(
      fc.property(keyed, (one) => {
        const power = powerW(one.peakW);
        const [socket, load] = (['socket', 'load'] as const).map((plane) =>
          powersAt(plane, { ...one, power }),
        );
        if (!socket || !load) throw new Error('wish two planes');
        expect(load.delivered).toBeLessThanOrEqual(socket.delivered * (1 + 1e-9));
        if (one.coaxDb === 0) expect(load.delivered).toBeCloseTo(socket.delivered, 9);
      }),
    );
  });

  it('at SWR 1.5 sends 4 % back, 0.18 dB; at 1 nothing (common practice, reflection squared)', () => {
    const at = (swr: number) => powersAt('load', { power: powerW(1), coaxDb: 0, swr });
    expect(at(1.5).reflected).toBeCloseTo(0.04, 12);
    expect(10 * Math.log10(at(1.5).delivered)).toBeCloseTo(-0.177, 3);
    expect(at(1).reflected).toBe(0);
  });
});

describe('what the supply gives', () => {
  it('is what comes out and heat, and the efficiency does not hang on the keying', () => {
    fc.assert(
      fc.property(keyed, (one) => {
        const shares = supplyShares(one);
        if (shares === undefined) return;
        expect(shares.output + shares.heat).toBeCloseTo(shares.input, 9);
        const down = supplyShares({ ...one, keying: 'keyDown' });
        expect(shares.efficiency).toBeCloseTo(down?.efficiency ?? Number.NaN, 9);
      }),
    );
  });

  it('of the club is 1.44 W key down for 0.5 W: 35 %', () => {
    const shares = supplyShares({ ...club, keying: 'keyDown' });
    expect(shares?.input).toBeCloseTo(1.44, 12);
    expect(shares?.efficiency).toBeCloseTo(0.5 / 1.44, 12);
  });

  it('tells no efficiency of two tones, nor where more would come out than goes in', () => {
    expect(supplyShares({ ...club, keying: 'twoEqualTones' })).toBeUndefined();
    expect(supplyShares({ ...club, supplyA: 0.01 })).toBeUndefined();
  });
});

describe('the usual slips', () => {
  it('err by the share of the mean, one way or the other', () => {
    fc.assert(
      fc.property(keyed, (one) => {
        const share = 10 * Math.log10(shareOf(one.keying));
        expect(keyedSlip('meanAsPeak', one)?.error).toBeCloseTo(share, 9);
        expect(keyedSlip('peakAsMean', one)?.error).toBeCloseTo(-share, 9);
        expect(keyedSlip('twiceTheMean', one)?.error).toBeCloseTo(10 * Math.log10(2) + share, 9);
      }),
    );
    expect(keyedSlip('twiceTheMean', { ...club, keying: 'twoEqualTones' })?.error).toBeCloseTo(0, 12);
    expect(keyedSlip('meanAsPeak', club)?.error.toFixed(2)).toBe('-3.57');
  });

  it('with the meter at the socket err by coax and reflection together', () => {
    const { error } = keyedSlip('forwardAtSocket', club) ?? {};
    expect(error).toBeCloseTo(0.5 - 10 * Math.log10(0.96), 9);
  });

  it('with efficiency err as the mean does, and have nothing to go by where none is known', () => {
    expect(keyedSlip('peakOverMean', club)).toMatchObject({
      of: 'efficiency',
      stated: expect.closeTo(0.5 / 1.44 / 0.44, 9),
      truth: expect.closeTo(0.5 / 1.44, 9),
    });
    expect(keyedSlip('peakOverMean', { ...club, keying: 'twoEqualTones' })).toBeUndefined();
    expect(KEYED_SLIPS).toHaveLength(5);
  });
});
