import { norm as normOf, sum } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow, drawnOf, printed } from './route.ts';

const norm = (...parts: readonly number[]): number => Number(normOf([...parts]));
/** Standard deviation of something even between its limits, by adding up its squares. */
function flat(half: number): number {
  const steps = 20_000;
  const squares = Array.from({ length: steps }, (_, k) => (((2 * (k + 0.5)) / steps - 1) * half) ** 2);
  return Math.sqrt(squares.reduce((a, b) => a + b, 0) / steps);
}
const FLAT = flat(1);
/** Standard deviation of a sine of unknown phase, likewise. */
const SWING = Math.sqrt(
  Array.from({ length: 360 }, (_, k) => Math.sin((k * Math.PI) / 180) ** 2).reduce((a, b) => a + b, 0) / 360,
);
const db = (ratio: number): number => (10 * Math.log(ratio)) / Math.LN10;
const times = (decibels: number): number => Math.exp((decibels * Math.LN10) / 10);

answersFollow({
  'limit-to-u': (n) => n('half') * FLAT,
  'mismatch-to-u': (n) => n('half') * SWING,
  'certificate-to-u': (n) => n('wide') * 0.5,
  'display-step': (n) => (n('step') * FLAT) / 2,
  'worst-of-row': (n) => sum([n('one'), n('two'), n('meter')]),
  'expanded-of-row': (n) => 2 * norm(n('one') * FLAT, n('two') * FLAT, n('meter') * FLAT),
  'mixed-budget': (n) => norm(n('wide') / 2, n('half') * FLAT, n('scatter')),
  'share-of-budget': (n) => 100 / (1 + (n('small') / n('large')) ** 2),
  'after-improving': (n) => norm(n('small'), n('better')),
  'db-band-in-watts': (n) => [n('watts') / times(n('half')), n('watts') * times(n('half'))],
  'percent-band-in-db': (n) => {
    const [up, down] = [2 * db(1 + n('percent') / 100), 2 * db(1 - n('percent') / 100)];
    return up.toFixed(2) === (-down).toFixed(2) ? up : [up, down];
  },
  'shared-cause': (n) => sum(Array.from({ length: n('count') }, () => n('each'))),
  'dominant-flat-part': (n) => n('half') - 0.05 * n('half'),
});

describe('order-of-parts', () => {
  it('rises in standard uncertainty', () => {
    for (const { payload, worked, ...one } of sittingsOf(bankQuestion('order-of-parts'))) {
      const n = drawnOf(one);
      const u = [n('u'), n('wide') / 2, n('swing') * SWING, n('half') * FLAT];
      expect(u).toEqual(u.toSorted((a, b) => a - b));
      expect(payload.kind === 'order' && payload.answer).toEqual(['standard', 'expanded', 'swing', 'limits']);
      const said = printed(worked[0] ?? '').map(({ value }) => value);
      for (const value of u)
        expect(Math.min(...said.map((each) => Math.abs(each - value)))).toBeLessThan(0.00051);
    }
  });
});

describe('point-at-dominant', () => {
  it('is the part with more than half of the squares', () => {
    for (const { payload, ...one } of sittingsOf(bankQuestion('point-at-dominant'))) {
      const n = drawnOf(one);
      const squares = [n('pad') * FLAT, n('cable') * FLAT, n('mismatch') * SWING, n('meter') * FLAT].map(
        (u) => u * u,
      );
      expect((squares[3] ?? 0) / Number(sum(squares))).toBeGreaterThan(0.5);
      expect(payload.kind === 'place' && payload.answer).toBe('meter');
    }
  });
});
