import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amplitudeModulated,
  type Envelope,
  meanOfPeakEnvelope,
  meanOverPeakEnvelope,
  peakEnvelopeOfMean,
} from '../../src/compute/envelope.ts';
import { type Measurand, meantPower, type PowerKind } from '../../src/compute/power-kind.ts';
import { powerW } from '../../src/compute/quantity.ts';
import { expectNear, expectPrinted, expectWithin } from './near.ts';

const watts = fc.double({ min: 1e-6, max: 1e4, noNaN: true }).map(powerW);
const envelope = fc.constantFrom<Envelope[]>('steadyCarrier', 'stringOfDits', 'parisWord', 'twoEqualTones');

describe('mean and peak envelope power', () => {
  it('bring each other back, and the mean is never the larger', () => {
    fc.assert(
      fc.property(watts, envelope, (peakEnvelope, form) => {
        const mean = meanOfPeakEnvelope({ peakEnvelope, envelope: form });
        expect(mean).toBeLessThanOrEqual(peakEnvelope);
        expectNear(peakEnvelopeOfMean({ mean, envelope: form }), peakEnvelope);
      }),
    );
  });

  it('of the word PARIS stand as its units with and without a mark (ITU-R M.1677)', () => {
    const code = ['.--.', '.-', '.-.', '..', '...'];
    // A dit is 1 unit, a dah 3; 1 between marks, 3 between letters, 7 after the word.
    const on = code.join('').replaceAll('-', '...').length;
    const between = code.reduce((sum, letter) => sum + letter.length - 1, 0);
    expect(meanOverPeakEnvelope('parisWord')).toBe(on / (on + between + 3 * (code.length - 1) + 7));
    expectPrinted(10 * Math.log10(meanOverPeakEnvelope('parisWord')), -3.57, 2);
  });

  it('of two equal tones and of a string of dits stand as one to two; of a carrier they are equal', () => {
    expect(meanOverPeakEnvelope('twoEqualTones')).toBe(0.5);
    expect(meanOverPeakEnvelope('stringOfDits')).toBe(0.5);
    expect(meanOverPeakEnvelope('steadyCarrier')).toBe(1);
  });

  it('2.0 W of peak envelope keyed with PARIS are 0.88 W on a thermal meter', () => {
    expectNear(meanOfPeakEnvelope({ peakEnvelope: powerW(2), envelope: 'parisWord' }), 0.88);
  });
});

describe('an amplitude-modulated carrier', () => {
  it('of 1 W has 1.5 W mean and 4 W peak envelope at full depth, 1 W both without modulation', () => {
    expect(amplitudeModulated({ carrier: powerW(1), depth: 1 })).toEqual({ mean: 1.5, peakEnvelope: 4 });
    expect(amplitudeModulated({ carrier: powerW(1), depth: 0 })).toEqual({ mean: 1, peakEnvelope: 1 });
  });

  it('has the mean of its envelope squared, sampled over a period of the tone', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (depth) => {
        const count = 1000;
        const squares = Array.from(
          { length: count },
          (_, i) => (1 + depth * Math.cos((2 * Math.PI * i) / count)) ** 2,
        );
        const { mean, peakEnvelope } = amplitudeModulated({ carrier: powerW(1), depth });
        expectWithin(mean, squares.reduce((a, b) => a + b, 0) / count, 1e-9);
        expectWithin(peakEnvelope, Math.max(...squares), 1e-12);
      }),
    );
  });

  it.each([-0.1, 1.1])('of depth %f is refused', (depth) => {
    expect(() => amplitudeModulated({ carrier: powerW(1), depth })).toThrow(
      new RangeError(`amplitudeModulated: depth must be from 0 to 1, got ${depth}`),
    );
  });

  it('of no depth at all is refused', () => {
    expect(() => amplitudeModulated({ carrier: powerW(1), depth: Number.NaN })).toThrow(
      new RangeError('amplitudeModulated: depth must be a finite number, got NaN'),
    );
  });
});

describe('the power that is meant', () => {
  const of = (kind: PowerKind, keying: Measurand['keying']): Measurand => ({
    kind,
    keying,
    delivery: 'delivered',
    plane: 'socket',
    conditions: { frequencyHz: 3.58e6, supplyV: 12, temperatureC: 20 },
  });
  const read = (kind: PowerKind, keying: Measurand['keying']) =>
    meantPower({ measurand: of(kind, keying), mean: powerW(0.88) });

  it('is what a thermal meter shows, key down, whichever power is meant', () => {
    for (const kind of ['mean', 'peakEnvelope', 'carrier'] as const) expect(read(kind, 'keyDown')).toBe(0.88);
  });

  it('is the reading for the mean of a keyed signal, and more for its peak envelope', () => {
    expect(read('mean', 'parisWord')).toBe(0.88);
    expectNear(read('peakEnvelope', 'parisWord'), 2);
    expectNear(read('peakEnvelope', 'stringOfDits'), 1.76);
    expect(read('peakEnvelope', 'steadyCarrier')).toBe(0.88);
  });

  it('is not told for the carrier of a keyed transmitter', () => {
    expect(() => read('carrier', 'twoEqualTones')).toThrow(
      new RangeError('meantPower: carrier power must be read key down, got "twoEqualTones"'),
    );
  });
});
