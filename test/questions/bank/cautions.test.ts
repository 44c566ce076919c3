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
  const sittings = sittingsOf(bankQuestion('rating-in-rms'));
  const nb = '\u00a0';

  it('says yes below the rating in RMS and no above it, and draws both', () => {
    const verdicts = sittings.map(({ payload, ...one }) => {
      const volts = drawnOf(one)('height') / 2 / Math.SQRT2;
      const verdict = volts < 5 ? 'yes' : 'no';
      if (payload.kind !== 'choice') throw new TypeError('a choice was expected');
      const right = payload.options.find(({ id }) => id === payload.answer)?.text;
      expect(right).toBe(`${verdict}: that is ${volts.toPrecision(3)}${nb}V RMS`);
      expect(Math.abs(volts - 5)).toBeGreaterThan(0.2);
      return verdict;
    });
    expect(verdicts.filter((verdict) => verdict === 'no').length).toBeGreaterThan(60);
    expect(verdicts.filter((verdict) => verdict === 'yes').length).toBeGreaterThan(40);
  });

  it('has slips that lead to the other verdict', () => {
    for (const { payload, ...one } of sittings) {
      const height = drawnOf(one)('height');
      if (payload.kind !== 'choice') throw new TypeError('a choice was expected');
      const texts = payload.options.map(({ text }) => text);
      const volts = height / 2 / Math.SQRT2;
      expect(texts.filter((text) => text.startsWith('yes')).length).toBe(volts < 5 ? 1 : 2);
      expect(texts).toContain(`no: that is ${(2 * volts).toPrecision(3)}${nb}V RMS`);
      if (volts < 5) expect(height / 2).toBeGreaterThan(5);
      else
        for (const slip of [volts / 2, volts / Math.SQRT2]) {
          expect(slip).toBeLessThan(5);
          const shown = texts
            .filter((text) => text.startsWith('yes'))
            .map((text) => Number(text.slice(13, 17)));
          expect(Math.min(...shown.map((value) => Math.abs(value - slip)))).toBeLessThan(0.0051);
        }
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
