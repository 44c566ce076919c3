import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow, misfits, printed } from './route.ts';

/** Power of a sine by adding up a turn of it, in 64 steps (exact for a sine), instead of by a formula. */
function powerOfTurn(peak: number, resistance = 50): number {
  const squares = Array.from(
    { length: 64 },
    (_, k) => (peak * Math.sin((2 * Math.PI * (k + 0.5)) / 64)) ** 2,
  );
  return squares.reduce((sum, square) => sum + square, 0) / 64 / resistance;
}
const rmsOfTurn = (peak: number): number => Math.sqrt(powerOfTurn(peak, 1));
/** The peak that brings a power, found by halving an interval. */
function peakFor(power: number, resistance = 50): number {
  let [low, high] = [0, 1e4];
  for (let k = 0; k < 80; k++) {
    const middle = (low + high) / 2;
    if (powerOfTurn(middle, resistance) < power) low = middle;
    else high = middle;
  }
  return low;
}
const watts = (dbm: number): number => Math.exp(((dbm - 30) * Math.LN10) / 10);

answersFollow({
  'peak-of-rms': (n) => peakFor(n('rms') ** 2, 1),
  'rms-of-peak-to-peak': (n) => rmsOfTurn(n('height') / 2),
  'power-of-peak-to-peak': (n) => powerOfTurn(n('height') / 2),
  'power-of-peak-to-peak-typed': (n) => powerOfTurn(n('height') / 2, n('load')),
  'power-of-rms': (n) => (n('rms') / 50) * n('rms'),
  'rms-expected': (n) => rmsOfTurn(peakFor(n('watts'))),
  'peak-to-peak-expected': (n) => 2 * peakFor(n('watts')),
  'load-of-75': (n) => 10 * (Math.log10(1 / 50) - Math.log10(1 / n('load'))),
  'load-true-power': (n) => Math.sqrt(n('shown') * 50) ** 2 / n('load'),
  'percent-of-volts': (n) => 2 * n('percent') + n('percent') ** 2 / 100,
  'percent-of-volts-in-db': (n) => (20 * Math.log1p(n('percent') / 100)) / Math.LN10,
  'volts-down-with-db': (n) => -100 * Math.expm1(-n('drop') * 0.11512925464970229),
  'level-to-volts': (n) => rmsOfTurn(peakFor(watts(n('level')))),
  'volts-to-level': (n) => 30 + (10 * Math.log(powerOfTurn(n('height') / 2))) / Math.LN10,
  // The mean of a rectified sine is 2/pi of its peak, its RMS 1/sqrt 2: the scale multiplies by their ratio.
  'average-meter-on-square': (n) => (n('volts') * Math.PI) / Math.sqrt(8),
});

describe('order-of-volts', () => {
  it('rises in power from one sine to the next', () => {
    for (const { payload } of sittingsOf(bankQuestion('order-of-volts'))) {
      if (payload.kind !== 'order') throw new TypeError('an order was expected');
      const powers = payload.answer.map((id) => {
        const text = payload.items.find((item) => item.id === id)?.text ?? '';
        const value = printed(text)[0]?.value ?? Number.NaN;
        if (text.endsWith('RMS')) return value ** 2 / 50;
        return powerOfTurn(text.endsWith('peak') ? value : value / 2);
      });
      expect(powers.every((power, k) => k === 0 || power > 1.2 * (powers[k - 1] ?? 0))).toBe(true);
    }
  });
});

describe('point-at-height', () => {
  it('marks the heights that a sine has', () => {
    for (const { payload, stem } of sittingsOf(bankQuestion('point-at-height'))) {
      if (payload.kind !== 'place' || payload.figure.figure !== 'wave')
        throw new TypeError('a wave was expected');
      const { from, to } = payload.figure.heights.find(({ id }) => id === payload.answer) ?? {
        from: 0,
        to: 0,
      };
      const wanted = stem.includes('peak to peak') ? 2 : stem.includes('RMS') ? rmsOfTurn(1) : 1;
      expect(to - from).toBeCloseTo(wanted, 9);
    }
  });
});

describe('the proof itself', () => {
  it('tells a number that is off in its last place, and one in another unit', () => {
    expect(misfits('436\u00a0mW', [0.436])).toEqual([]);
    expect(misfits('436\u00a0mW', [0.4371])).toHaveLength(1);
    expect(misfits('436\u00a0W', [0.436])).toHaveLength(1);
    expect(misfits('+0.26/\u22120.27\u00a0dB', [0.2567, -0.2646])).toHaveLength(1);
    expect(misfits('+0.26/\u22120.26\u00a0dB', [0.2567, -0.2646])).toEqual([]);
    expect(printed('2.50\u00a0×\u00a010¹⁸')[0]?.value).toBeCloseTo(2.5e18, -8);
  });
});
