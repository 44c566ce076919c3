import { Decimal } from 'decimal.js';
import { norm as normOf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow, drawnOf } from './route.ts';

const norm = (...parts: readonly number[]): number => Number(normOf([...parts]));
/** Decimal arithmetic, so that hundredths of a decibel are what they are called. */
const plus = (...parts: readonly (number | Decimal)[]): number =>
  parts.reduce<Decimal>((sum, part) => sum.plus(part), new Decimal(0)).toNumber();
const hundredths = (value: number): Decimal => new Decimal(value).div(100);

answersFollow({
  'error-of-meter': (n) => hundredths(n('off')).toNumber(),
  correction: (n) => hundredths(n('off')).neg().toNumber(),
  'apply-correction': (n) => plus(n('shown'), n('correction')),
  'drift-between': (n) =>
    hundredths(n('drift'))
      .div(2)
      .minus(hundredths(n('off')))
      .toNumber(),
  'uncertainty-of-correction': (n) =>
    2 * norm(n('lender') / 2, n('s') / Math.sqrt(n('n')), n('drift') / Math.sqrt(3)),
  'down-the-chain': (n) => norm(n('laboratory'), n('lent'), n('own')),
  'calibrated-pad': (n) => plus(n('shown'), n('nominal'), hundredths(n('off'))),
  'as-found': (n) => new Decimal(n('earlier')).minus(n('found')).toNumber(),
  'between-two-lines': (n) =>
    new Decimal(n('low'))
      .times(10 - n('at'))
      .plus(new Decimal(n('high')).times(n('at')))
      .div(10)
      .toNumber(),
  // A millimetre grows by 11.5 nanometres in each kelvin.
  'steel-at-room-warmth': (n) => (n('length') * 11.5 * (n('room') - 20)) / 1000,
  // As the SI Brochure has the elementary charge: exact since 2019.
  'charges-in-ampere': (n) => new Decimal(n('milliamperes')).div(1000).div('1.602176634e-19').toNumber(),
  'good-enough-reference': (n) => 100 * (Math.sqrt(1 + 1 / n('share') ** 2) - 1),
});

describe('point-at-own-step', () => {
  it('has more than half of the squares in the step that is right', () => {
    for (const { payload, ...one } of sittingsOf(bankQuestion('point-at-own-step'))) {
      const n = drawnOf(one);
      const squares = ['laboratory', 'lent', 'own', 'pad'].map((name) => n(name) ** 2);
      expect((squares[2] ?? 0) / squares.reduce((a, b) => a + b, 0)).toBeGreaterThan(0.5);
      expect(payload.kind === 'place' && payload.answer).toBe('own');
    }
  });
});
