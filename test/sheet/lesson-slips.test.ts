import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PowerKind, powerW, type Waveform } from '#compute';
import { KEYINGS, type Keyed, meanOf, powerOfKind, powersAt, supplyShares } from '../../src/sheet/keyed.ts';
import { KEYED_SLIPS, keyedSlip } from '../../src/sheet/keyed-slips.ts';
import { type Line, levelAtEnd, lineGain, lineSteps, partGain, partsOfLine } from '../../src/sheet/line.ts';
import { lineCautions, ratingOf } from '../../src/sheet/line-cautions.ts';
import { LINE_SLIPS, lineSlip } from '../../src/sheet/line-slips.ts';
import { type Trace, traceSums } from '../../src/sheet/trace.ts';
import { slipOutcome, slippedPower, TRACE_SLIPS } from '../../src/sheet/trace-slips.ts';
import { expectNear, expectWithin } from '../compute/near.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const keyed: fc.Arbitrary<Keyed> = fc.record({
  peakW: number(0.01, 100),
  keying: fc.constantFrom(...KEYINGS),
  supplyV: number(1, 30),
  supplyA: number(0.001, 10),
  coaxDb: number(0, 10),
  swr: number(1, 10),
});
const trace: fc.Arbitrary<Trace> = fc.record({
  peakToPeakV: number(0.01, 1000),
  loadOhm: number(1, 1000),
  wave: fc.constantFrom<Waveform[]>('sine', 'square', 'triangle'),
});
const plain: Line = {
  levelDbm: 30,
  amplifierDb: 10,
  firstDb: 20,
  coaxDb: 1,
  secondDb: 6,
  end: 'instrument',
  antennaDb: 3,
  over: 'isotropic',
};

describe('a keyed transmitter', () => {
  it('keeps the shares of its powers when all of it is turned up', () => {
    const kinds: readonly PowerKind[] = ['mean', 'peakEnvelope', 'carrier'];
    fc.assert(
      fc.property(keyed, number(0.1, 10), fc.constantFrom(...kinds), (one, factor, kind) => {
        const before = powerOfKind(one, kind);
        const after = powerOfKind({ ...one, peakW: factor * one.peakW }, kind);
        if (before === undefined) expect(after).toBeUndefined();
        else expectNear(after ?? Number.NaN, factor * before, 1e-9);
      }),
    );
  });

  it('is the same at both ends of a coax that loses nothing, and has nothing come back from a match', () => {
    fc.assert(
      fc.property(keyed, (one) => {
        const power = powerW(one.peakW);
        const without = { ...one, power, coaxDb: 0 };
        expect(powersAt('load', without).incident).toBeCloseTo(powersAt('socket', without).incident, 9);
        expect(powersAt('load', without).reflected).toBeCloseTo(powersAt('socket', without).reflected, 9);
        expect(powersAt('load', { ...one, power, swr: 1 }).reflected).toBe(0);
      }),
    );
  });

  it('looks better matched at the socket the more the coax loses: what comes back passes it twice', () => {
    fc.assert(
      fc.property(keyed, (one) => {
        const power = powerW(one.peakW);
        const share = ({ incident, reflected }: ReturnType<typeof powersAt>): number => reflected / incident;
        const [socket, load] = [powersAt('socket', { ...one, power }), powersAt('load', { ...one, power })];
        expectNear(share(socket), share(load) * 10 ** (-one.coaxDb / 5), 1e-9);
      }),
    );
  });

  it('behind 3 dB of coax into SWR 3 sends a quarter of a half back, of which a half arrives: 62.7 of 1000 mW', () => {
    const at = { power: powerW(1), coaxDb: 3, swr: 3 };
    const half = 10 ** -0.3;
    expectWithin(powersAt('load', at).reflected, half / 4, 1e-12);
    expectWithin(powersAt('socket', at).reflected, half ** 2 / 4, 1e-12);
    expectWithin(powersAt('load', at).delivered, 0.75 * half, 1e-12);
  });

  it('is refused without a wave, and has no efficiency without a supply', () => {
    expect(() => powersAt('load', { power: powerW(0), coaxDb: 1, swr: 2 })).toThrow(/forward must be > 0/);
    const club: Keyed = { peakW: 0.5, keying: 'keyDown', supplyV: 12, supplyA: 0, coaxDb: 0, swr: 1 };
    expect(supplyShares(club)).toBeUndefined();
  });
});

describe('slips with a keyed transmitter', () => {
  it('each state a power that differs from the truth by the error that they name', () => {
    fc.assert(
      fc.property(keyed, fc.constantFrom(...KEYED_SLIPS), (one, slip) => {
        const outcome = keyedSlip(slip, one);
        if (outcome === undefined) {
          expect(slip).toBe('peakOverMean');
          return;
        }
        expectNear(outcome.stated, outcome.truth * 10 ** (outcome.error / 10), 1e-9);
        expect(outcome.of).toBe(slip === 'peakOverMean' ? 'efficiency' : 'power');
      }),
    );
  });

  it('key down cost nothing where only the envelope was mistaken', () => {
    fc.assert(
      fc.property(keyed, (one) => {
        const down = { ...one, keying: 'keyDown' as const };
        expect(keyedSlip('meanAsPeak', down)?.error).toBeCloseTo(0, 12);
        expect(keyedSlip('peakAsMean', down)?.error).toBeCloseTo(0, 12);
        expect(keyedSlip('twiceTheMean', down)?.error).toBeCloseTo(10 * Math.log10(2), 9);
      }),
    );
  });

  it('at the socket never claim too little: the load gets no more than what left', () => {
    fc.assert(
      fc.property(keyed, (one) => {
        const outcome = keyedSlip('forwardAtSocket', one);
        expect(outcome?.error).toBeGreaterThanOrEqual(-1e-9);
        expect(outcome?.stated).toBe(meanOf(one));
      }),
    );
  });
});

describe('a trace across a load', () => {
  it('is in its average, RMS and peak as 2/π, 1/√2, 1 for a sine; all one for a square; 1/2, 1/√3, 1 for a triangle', () => {
    const shares = (wave: Waveform): readonly number[] => {
      const { averageV, rms, peak } = traceSums({ peakToPeakV: 2, loadOhm: 50, wave });
      return [averageV, rms, peak];
    };
    const expected = {
      sine: [2 / Math.PI, Math.SQRT1_2, 1],
      square: [1, 1, 1],
      triangle: [1 / 2, 1 / Math.sqrt(3), 1],
    };
    for (const wave of ['sine', 'square', 'triangle'] as const)
      shares(wave).forEach((share, index) => {
        expectWithin(share, expected[wave][index] ?? Number.NaN, 1e-12);
      });
  });

  it('brings half of the power into twice the resistance, at its crest and in the mean', () => {
    fc.assert(
      fc.property(trace, (one) => {
        const [single, double] = [traceSums(one), traceSums({ ...one, loadOhm: 2 * one.loadOhm })];
        expectNear(double.power, single.power / 2);
        expectNear(double.greatestW, single.greatestW / 2);
        expectWithin(single.level - double.level, 10 * Math.log10(2), 1e-9);
      }),
    );
  });

  it('has, for a sine, a crest of power twice the mean; a square has only one power', () => {
    fc.assert(
      fc.property(trace, (one) => {
        const ratio = { sine: 2, square: 1, triangle: 3 }[one.wave];
        const { greatestW, power } = traceSums(one);
        expectNear(greatestW, ratio * power, 1e-9);
      }),
    );
  });

  it('slips by the same factor at any height, except where a level in dBm was halved', () => {
    fc.assert(
      fc.property(trace, number(0.5, 2), fc.constantFrom(...TRACE_SLIPS), (one, factor, slip) => {
        const other = { ...one, peakToPeakV: factor * one.peakToPeakV };
        const change = slippedPower(slip, other) / slippedPower(slip, one);
        expectNear(change, slip === 'tenLog' ? factor : factor ** 2, 1e-9);
      }),
    );
  });

  it('through a probe that was not told reads 20 dB low, whatever the wave (1/10 of the volts)', () => {
    fc.assert(
      fc.property(trace, (one) => {
        expectWithin(slipOutcome('probe', one).error, -20, 1e-9);
      }),
    );
  });
});

describe('a line', () => {
  it('of 30 dBm through 10, -20, -1 and -6 dB ends at 13 dBm; an antenna has 39', () => {
    expect(lineSteps(plain).map(({ to }) => Math.round(1e6 * to) / 1e6)).toEqual([40, 20, 19, 13]);
    expectWithin(levelAtEnd({ ...plain, end: 'antenna' }), 39, 1e-9);
    expectWithin(lineGain(plain), -17, 1e-9);
  });

  it('has a gain of its own for each part, negative for all but the amplifier', () => {
    expect(partsOfLine(plain).map((id) => partGain(plain, id))).toEqual([10, -20, -1, -6]);
    expect(Object.is(partGain({ ...plain, coaxDb: 0 }, 'coax'), 0)).toBe(true);
  });

  it('slips by 17, 34 and 17 dB where 17 dB are to be added back', () => {
    const errors = LINE_SLIPS.slice(0, 3).map((slip) => Math.round(1e6 * lineSlip(slip, plain).error) / 1e6);
    expect(errors).toEqual([-17, -34, 17]);
    for (const slip of LINE_SLIPS.slice(0, 3)) expect(lineSlip(slip, plain).truth).toBe(30);
  });

  it('warns of each rated pad on it, of none that it lacks, and of the input always', () => {
    const codes = (line: Line, without?: 'first' | 'second') =>
      lineCautions({ line, damageDbm: 20, without }).map((one) =>
        one.code === 'padHeat' ? one.id : one.code,
      );
    expect(codes(plain)).toEqual(expect.arrayContaining(['first', 'second', 'inputLevel']));
    expect(codes(plain, 'first')).not.toContain('first');
    expect(codes({ ...plain, end: 'antenna' })).not.toContain('first');
    expect([ratingOf('first')?.power, ratingOf('second')?.power, ratingOf('coax')]).toEqual([
      1,
      0.25,
      undefined,
    ]);
  });

  it('warns as soon as the upper end of the specification passes the damage level, and not before', () => {
    const status = (damageDbm: number) =>
      lineCautions({ line: plain, damageDbm }).find(
        (one) => one.code === 'inputLevel' && one.without === undefined,
      )?.status;
    const highest = 30 + 1.5 + 10 - 19.5 - 0.95 - 5.5; // nominal, specification, amplifier, least losses
    expect([status(highest + 0.01), status(highest - 0.01)]).toEqual(['within', 'exceeded']);
  });
});
