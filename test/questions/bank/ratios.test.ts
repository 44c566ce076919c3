import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow, drawnOf, printed } from './route.ts';

const { exp, log, log2, LN10 } = Math;
/** Watts of a level by the natural exponential; levels and decibels by natural and binary logarithms. */
const watts = (dbm: number): number => exp((dbm * LN10) / 10) / 1000;
const dbm = (power: number): number => 30 + (10 * log(power)) / LN10;
const times = (db: number): number => exp((db * LN10) / 10);
const db = (ratio: number): number => (10 * log2(ratio)) / log2(10);

answersFollow({
  'watts-to-dbm': (n) => dbm(n('watts')),
  'dbm-to-watts': (n) => watts(n('level')),
  doublings: (n) => n('twos') * 3.010299956639812,
  'steps-of-three-and-ten': (n) => Number('1'.padEnd(n('tens') + 1, '0')) * (1 << n('threes')),
  'ratio-to-db': (n) => dbm(n('out')) - dbm(n('into')),
  'volts-to-db': (n) => db(n('times') * n('times')),
  'loss-to-percent-left': (n) => 100 / times(n('loss')),
  'gain-to-percent-more': (n) => 100 * Math.expm1(n('gain') * 0.23025850929940458),
  'one-db-down': (n) => 100 - 100 / times(n('drop')),
  'chain-level': (n) => dbm((watts(n('level')) * times(n('gain'))) / times(n('pad')) / times(n('cable'))),
  'chain-power': (n) => (watts(n('level')) * times(n('gain'))) / times(n('pad')) / times(n('cable')),
  'missing-pad': (n) => db((watts(n('into')) * times(n('gain'))) / watts(n('out'))),
  'levels-apart': (n) => db(watts(n('first')) / watts(n('second'))),
  'two-unrelated': (n) => dbm(watts(n('level')) + watts(n('level') - n('below'))),
  'mean-of-sessions': (n) => dbm((watts(n('low')) + watts(n('low') + n('apart'))) / 2),
});

describe('order-of-levels', () => {
  it('rises in milliwatts from one item to the next', () => {
    for (const { payload } of sittingsOf(bankQuestion('order-of-levels'))) {
      if (payload.kind !== 'order') throw new TypeError('an order was expected');
      const powers = payload.answer.map((id) => {
        const text = payload.items.find((item) => item.id === id)?.text ?? '';
        const value = printed(text)[0]?.value ?? Number.NaN;
        return text.endsWith('dBm') ? watts(value) : value;
      });
      expect(powers.every((power, k) => k === 0 || power > (powers[k - 1] ?? 0))).toBe(true);
    }
  });
});

describe('point-at-ratio', () => {
  it('has its right place where the ratio stands', () => {
    for (const { payload, ...one } of sittingsOf(bankQuestion('point-at-ratio'))) {
      if (payload.kind !== 'place' || payload.figure.figure !== 'ruler')
        throw new TypeError('a ruler was expected');
      const at = payload.figure.marks.find(({ id }) => id === payload.answer)?.at ?? Number.NaN;
      expect(times(at)).toBeCloseTo(drawnOf(one)('ratio'), 9);
    }
  });
});
