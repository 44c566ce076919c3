import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow, drawnOf } from './route.ts';

const kept = (loss: number): number => Math.exp(-0.2302585092994046 * loss);
const dbm = (power: number): number => 30 + (10 * Math.log(power)) / Math.LN10;

answersFollow({
  'upper-volts-at-input': (n) => Math.sqrt(n('watts') * 50) * Math.sqrt(1 / kept(n('tolerance'))),
  'pad-forgotten': (n) => dbm(n('watts')) - n('most'),
  'least-attenuation': (n) => n('nominal') - n('pad') + (n('up') + n('off')),
  'heat-at-upper-limit': (n) => (n('watts') / kept(n('tolerance'))) * (1 - kept(n('loss'))),
  // One of the resistors alone: its own power and its own resistance.
  'resistors-in-parallel': (n) => Math.sqrt(n('each') * 50 * n('count')),
  'reverse-volts-of-diode': (n) => 20 * Math.sqrt(n('watts')),
  'hot-rating': (n) => n('rated') * (1 - (n('now') - 25) / (n('end') - 25)),
  'volts-at-high-impedance': (n) => Math.sqrt(n('watts') * 1000) * Math.sqrt(n('kilohms')),
  'left-after-failed-pad': (n) => n('watts') * kept(n('second')),
});

describe('rating-in-rms', () => {
  it('stays below the rating in RMS, and above it in every other way of reading', () => {
    for (const { payload, ...one } of sittingsOf(bankQuestion('rating-in-rms'))) {
      const height = drawnOf(one)('height');
      expect(height / 2 / Math.SQRT2).toBeLessThan(5);
      expect(height / 2).toBeGreaterThan(5);
      if (payload.kind !== 'choice') throw new TypeError('a choice was expected');
      const texts = payload.options.map(({ text }) => text);
      expect(texts.filter((text) => text.startsWith('yes'))).toEqual([
        `yes: that is ${(height / Math.sqrt(8)).toPrecision(3)}\u00a0V RMS`,
      ]);
    }
  });
});

describe('point-at-first-to-fail', () => {
  it('is the link whose heat is farthest beyond its rating', () => {
    for (const { payload, ...one } of sittingsOf(bankQuestion('point-at-first-to-fail'))) {
      const n = drawnOf(one);
      const load = {
        small: (n('watts') * (1 - kept(n('first')))) / 0.25,
        large: (n('watts') * kept(n('first')) * (1 - kept(n('second')))) / 20,
        meter: (n('watts') * kept(n('first') + n('second'))) / 0.1,
      };
      expect(load.large).toBeLessThan(1);
      expect(load.meter).toBeLessThan(load.small);
      expect(payload.kind === 'place' && payload.answer).toBe('small');
    }
  });
});
