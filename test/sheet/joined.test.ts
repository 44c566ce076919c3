import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  AC_MOST_KHZ,
  bandwidthMhz,
  clubJoining,
  dividedPercent,
  type Joining,
  joinedOf,
  METER_KOHM,
  METERS,
  mostFrequency,
  PROBES,
  percentOfVoltsInDb,
  SCOPE_MHZ,
} from '../../src/sheet/joined.ts';
import { clubScope, edgeHz } from '../../src/sheet/scope.ts';

const joinings: fc.Arbitrary<Joining> = fc.record({
  meter: fc.constantFrom(...METERS),
  sourceKohm: fc.double({ min: 0, max: 500, noNaN: true }),
  waveform: fc.constantFrom('sine' as const, 'square' as const, 'triangle' as const),
  kilohertz: fc.double({ min: 0.05, max: 2, noNaN: true }),
  megahertz: fc.double({ min: 0, max: 40, noNaN: true }),
  resistanceOhm: fc.double({ min: 25, max: 1000, noNaN: true }),
});
const inRange = (joining: Joining) => {
  const found = joinedOf(joining);
  if (!found.inRange) throw new Error('wish a meter in range');
  return found;
};

describe('a meter that joins', () => {
  it('gives a number with a band about it, or none at all above its frequency', () => {
    fc.assert(
      fc.property(joinings, (joining) => {
        const { meter, kilohertz, megahertz } = joining;
        const found = joinedOf(joining);
        const above =
          meter === 'alternating'
            ? kilohertz > AC_MOST_KHZ
            : meter in PROBES && megahertz > mostFrequency(meter);
        expect(found.inRange).toBe(!above);
        if (!found.inRange) return;
        expect(found.lower).toBeLessThanOrEqual(found.error);
        expect(found.upper).toBeGreaterThanOrEqual(found.error);
      }),
    );
  });

  it('never shows more than was there, but for a wave it is not made for', () => {
    fc.assert(
      fc.property(joinings, (joining) => {
        fc.pre(joining.meter !== 'alternating');
        const found = joinedOf(joining);
        if (found.inRange) expect(found.error).toBeLessThanOrEqual(0);
      }),
    );
  });
});

describe('a meter for direct voltage', () => {
  it('divides, by hand: what is shown is Rm over Rs + Rm of what was there', () => {
    fc.assert(
      fc.property(joinings, fc.constantFrom('digital' as const, 'needle' as const), (joining, meter) => {
        const { error } = inRange({ ...joining, meter });
        const meterKohm = METER_KOHM[meter];
        const share = meterKohm / (joining.sourceKohm + meterKohm);
        expect(1 + error / 100).toBeCloseTo(share, 12);
      }),
    );
  });

  it('takes half where the source is as large as itself, and nothing of a source without resistance', () => {
    expect(dividedPercent(200, 200)).toBe(-50);
    expect(dividedPercent(0, 200)).toBeCloseTo(0, 12);
    expect(inRange(clubJoining()).error).toBeCloseTo(-20, 12);
  });

  it('has a needle’s band of 2.5 % of its range, twice the voltage there, and a digital one’s of the reading', () => {
    const { error, lower, upper } = inRange(clubJoining());
    expect(upper - error).toBeCloseTo(5, 12);
    expect(error - lower).toBeCloseTo(5, 12);
    const digital = inRange({ ...clubJoining(), meter: 'digital', sourceKohm: 500 });
    expect(digital.upper - digital.error).toBeCloseTo(0.005 * (100 * (10_000 / 10_500)), 12);
  });
});

describe('a meter that responds to the mean', () => {
  const at = (waveform: Joining['waveform']) =>
    inRange({ ...clubJoining(), meter: 'alternating', waveform }).error;

  it('is right for a sine, and by hand 11.1 % and -3.8 % off for square and triangle', () => {
    expect(at('sine')).toBeCloseTo(0, 12);
    expect(at('square')).toBeCloseTo(100 * (Math.PI / Math.sqrt(8) - 1), 10);
    expect(at('triangle')).toBeCloseTo(100 * (((Math.PI / Math.sqrt(8)) * Math.sqrt(3)) / 2 - 1), 10);
  });

  it('gives no number from the first hertz beyond what is stated', () => {
    const most = { ...clubJoining(), meter: 'alternating', kilohertz: AC_MOST_KHZ } as const;
    expect(joinedOf(most).inRange).toBe(true);
    expect(joinedOf({ ...most, kilohertz: AC_MOST_KHZ + 0.001 })).toEqual({
      inRange: false,
      most: AC_MOST_KHZ,
      unit: 'kHz',
    });
  });
});

describe('a probe', () => {
  const probe = (of: Partial<Joining>): Joining => ({ ...clubJoining(), meter: 'probe10', ...of });

  it('takes, by hand, 10 lg(1 + (w C R/2)^2), and may show less by a single pole', () => {
    fc.assert(
      fc.property(joinings, fc.constantFrom('probe1' as const, 'probe10' as const), (joining, meter) => {
        const most = mostFrequency(meter);
        const megahertz = joining.megahertz % most;
        const { error, lower, upper } = inRange({ ...joining, meter, megahertz });
        const w = 2 * Math.PI * megahertz * 1e6;
        const x = (w * PROBES[meter].capacitanceF * joining.resistanceOhm) / 2;
        expect(error).toBeCloseTo(-10 * Math.log10(1 + x * x), 9);
        expect(upper).toBe(error);
        const pole = 10 * Math.log10(1 + (megahertz / bandwidthMhz(meter)) ** 2);
        expect(error - lower).toBeCloseTo(pole, 9);
        // Three tenths of the bandwidth are 0.37 dB.
        expect(error - lower).toBeLessThan(0.375);
      }),
    );
  });

  it('is one of those that the lesson on the oscilloscope has: its own at 10x, and one at 1x that is too slow', () => {
    const { scopeHz, probeHz } = clubScope();
    expect(SCOPE_MHZ * 1e6).toBe(scopeHz);
    expect(PROBES.probe10.bandwidthMhz * 1e6).toBe(probeHz);
    expect(mostFrequency('probe10') * 1e6).toBeCloseTo(edgeHz(clubScope()), 3);
    expect(mostFrequency('probe1')).toBeCloseTo(0.3 / Math.hypot(1 / 6, 1 / 100), 9);
  });

  it('has less bandwidth with the oscilloscope than either alone', () => {
    for (const name of ['probe1', 'probe10'] as const) {
      const { bandwidthMhz: own } = PROBES[name];
      expect(bandwidthMhz(name)).toBeLessThan(Math.min(own, SCOPE_MHZ));
      expect(bandwidthMhz(name)).toBeCloseTo(1 / Math.sqrt(1 / own ** 2 + 1 / SCOPE_MHZ ** 2), 9);
    }
  });

  it('at 1x is out of range at the transmitter’s frequency, at 10x it is not; of the sister neither is in range', () => {
    expect(joinedOf(probe({ meter: 'probe1' })).inRange).toBe(false);
    expect(joinedOf(probe({})).inRange).toBe(true);
    for (const meter of ['probe1', 'probe10'] as const)
      expect(joinedOf(probe({ meter, megahertz: 145 })).inRange).toBe(false);
  });

  it('at 10x takes less than at 1x, wherever both can be used', () => {
    fc.assert(
      fc.property(joinings, (joining) => {
        const megahertz = 0.1 + (joining.megahertz % 1.6);
        const one = inRange({ ...joining, meter: 'probe1', megahertz });
        const ten = inRange({ ...joining, meter: 'probe10', megahertz });
        expect(ten.error).toBeGreaterThan(one.error);
      }),
    );
  });
});

describe('percent of volts in decibels', () => {
  it('are, by hand, 20 lg of what is left', () => {
    expect(percentOfVoltsInDb(-50)).toBeCloseTo(-6.0206, 4);
    expect(percentOfVoltsInDb(0)).toBe(0);
  });
});
