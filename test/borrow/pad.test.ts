import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { partAnswers, partNotes, summarisePart } from '../../src/borrow/part-words.ts';
import { part } from './prepared.ts';

const row = (found: ReturnType<typeof part>, id: string) =>
  found.propagation.budget.find((each) => each.id === id);

describe('a pad at DC', () => {
  test('is as large as its voltages say, with the load’s tolerance and the last digits', () => {
    const pad = part('dc');
    // 20 lg(3.000 / 0.948); by hand, voltage division of a matched pad
    expect(pad.value).toBeCloseTo(20 * Math.log10(3 / 0.948), 12);
    // one step of 1 mV on 948 mV, in dB, over the root of 12
    expect(row(pad, 'step across the load')?.contribution).toBeCloseTo(
      (8.686 * 0.001) / 0.948 / Math.sqrt(12),
      5,
    );
    // 1 % of load is 8.686 (1 - S^2) / 2 percent of S, S^2 = 0.09986: 0.0391 dB
    expect(row(pad, 'load')?.contribution).toBeCloseTo(0.03909 / Math.sqrt(3), 4);
  });

  test('one meter on one range cancels its gain error, two meters do not', () => {
    const uOf = (oneMeter: 'yes' | 'no', step = '') =>
      part('dc', { oneMeter, step, loadPercent: '0' }).propagation;
    expect(uOf('yes').standardUncertainty).toBeCloseTo(0, 9);
    // twice 0.5 % of volts, limits: 0.0434 dB each over the root of 3
    expect(uOf('no').standardUncertainty).toBeCloseTo((0.04343 * Math.SQRT2) / Math.sqrt(3), 4);
    expect(uOf('yes', '1 mV').standardUncertainty).toBeGreaterThan(0.002);
  });

  test('takes the heat that the direct voltage leaves in it', () => {
    const pad = part('dc');
    // 9 V^2 / 50 ohm = 180 mW in, 18 mW out again
    expect(pad.heat).toBeCloseTo(0.18 * (1 - (0.948 / 3) ** 2), 6);
    expect(partNotes(pad).at(-1)).toEqual({
      text: expect.stringContaining('it stands that'),
      caution: false,
    });
    expect(partNotes(part('dc', { rated: '0.1 W' })).at(-1)).toEqual({
      text: expect.stringContaining('Lower the voltage'),
      caution: true,
    });
    expect(partNotes(part('dc', { rated: '' })).at(-1)?.text).toContain('enter its rating');
  });

  test('says so where nothing was said that could be wrong', () => {
    const sure = part('dc', { percent: '0', step: '', loadPercent: '0' });
    expect(partAnswers(sure)[1]?.figure).toBe('No uncertainty');
    expect(partAnswers(sure)[0]?.figure).toBe('10.006\u00a0dB');
  });
});

describe('a pad swapped in and out', () => {
  test('is the difference of the mean readings', () => {
    const pad = part('swap');
    // means -13.405 and -33.300
    expect(pad.value).toBeCloseTo(19.895, 9);
    expect(pad.heat).toBeUndefined();
    expect(partNotes(pad)).toEqual([
      { text: expect.stringContaining('frequency of the source'), caution: false },
    ]);
  });

  test('a receiver that reads all too high by the same does not change it', () => {
    fc.assert(
      fc.property(fc.integer({ min: -4000, max: 2000 }), (hundredths) => {
        const moved = (text: string) =>
          text
            .split('\n')
            .map((line) => (Number(line) + hundredths / 100).toFixed(2))
            .join('\n');
        const { without, with: inserted } = {
          without: '-13.41\n-13.38\n-13.43\n-13.40',
          with: '-33.32\n-33.27\n-33.30\n-33.31',
        };
        const pad = part('swap', { without: moved(without), with: moved(inserted) });
        expect(pad.value).toBeCloseTo(19.895, 6);
        expect(pad.propagation.standardUncertainty).toBeCloseTo(
          part('swap').propagation.standardUncertainty,
          9,
        );
      }),
      { numRuns: 30 },
    );
  });

  test('both mismatches stay: without it, and at both of its ends', () => {
    const pad = part('swap');
    // reflections of SWR 1.2, 1.3 and 1.1: 0.0909, 0.1304 and 0.0476; limits 8.686 times their products, U-shaped
    const half = (a: number, b: number) => (8.686 * a * b) / Math.SQRT2;
    expect(row(pad, 'mismatch without')?.contribution).toBeCloseTo(half(0.09091, 0.13043), 4);
    expect(row(pad, 'mismatch at the input')?.contribution).toBeCloseTo(half(0.09091, 0.04762), 4);
    expect(row(pad, 'mismatch at the output')?.contribution).toBeCloseTo(half(0.04762, 0.13043), 4);
    expect(row(pad, 'mismatch through')?.contribution).toBeCloseTo(half(0.09091, 0.13043) / 100, 4);
  });

  test('a cable, which takes little away, lets the source see the receiver through it', () => {
    const cable = part('swap', { with: '-13.60\n-13.61\n-13.59\n-13.60' });
    const [through, without] = [row(cable, 'mismatch through'), row(cable, 'mismatch without')];
    expect((through?.contribution ?? 0) / (without?.contribution ?? 1)).toBeGreaterThan(0.9);
  });

  test('one reading takes its scatter from earlier ones', () => {
    const one = part('swap', { without: '-13.40', scatter: '0.05', repeats: '11' });
    expect(row(one, 'scatter without')).toMatchObject({
      contribution: expect.closeTo(0.05, 12),
      degreesOfFreedom: 10,
    });
  });

  test('names the largest share, and speaks without signs', () => {
    expect(partAnswers(part('swap', { straightness: '1' }))[1]?.figure).toMatch(
      /^\d+\s% *: Receiver’s straightness$/,
    );
    expect(summarisePart(part('swap'))).toMatch(
      /^19\.\d+ decibels plus or minus 0\.\d+ decibels, attenuation/,
    );
    expect(summarisePart(part('swap'))).not.toMatch(/[−±]/);
  });
});
