import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow, drawnOf, printed } from './route.ts';

/** Largest over smallest voltage along a line on which a wave of height 1 meets one of height r, looked for in steps. */
function ratioAlong(r: number): number {
  const heights = Array.from({ length: 360 }, (_, degree) => {
    const phase = (degree * Math.PI) / 180;
    return Math.hypot(1 + r * Math.cos(phase), r * Math.sin(phase));
  });
  return Math.max(...heights) / Math.min(...heights);
}
const coefficient = (swr: number): number => 1 - 2 / (swr + 1);
/** Largest and smallest effect of two reflections in decibels, over all phases. */
function overPhases(source: number, load: number): readonly [number, number] {
  const all = Array.from({ length: 360 }, (_, degree) => {
    const phase = (degree * Math.PI) / 180;
    const x = source * load;
    return (10 * Math.log((1 + x * Math.cos(phase)) ** 2 + (x * Math.sin(phase)) ** 2)) / Math.LN10;
  });
  return [Math.max(...all), Math.min(...all)];
}
const times = (db: number): number => Math.exp((db * Math.LN10) / 10);

answersFollow({
  'swr-of-powers': (n) => ratioAlong(Math.sqrt(n('tenths') / 10) / Math.sqrt(n('forward'))),
  'swr-of-load': (n) => ratioAlong(Math.abs((n('load') / 50 - 1) / (n('load') / 50 + 1))),
  'reflected-share-of-swr': (n) => 100 - (400 * n('swr')) / (n('swr') + 1) ** 2,
  'mismatch-loss-of-swr': (n) => (-10 * Math.log((4 * n('swr')) / (n('swr') + 1) ** 2)) / Math.LN10,
  'return-loss-to-percent': (n) => 100 / times(n('loss')),
  'return-loss-of-powers': (n) => (10 * (Math.log(n('forward')) - Math.log(n('milli') / 1000))) / Math.LN10,
  'swr-of-return-loss': (n) => ratioAlong(Math.sqrt(1 / times(n('loss')))),
  'net-power': (n) => n('forward') * (1 - n('reflected') / n('forward')),
  'reflection-coefficient-of-load': (n) => Math.abs(1 - 100 / (n('load') + 50)),
  'mismatch-limits': (n) => {
    const [upper, lower] = overPhases(coefficient(n('source')), coefficient(n('load')));
    // Where both ends print alike, one plus-minus says it.
    return upper.toFixed(2) === (-lower).toFixed(2) ? upper : [upper, lower];
  },
  directivity: (n) => {
    const leak = 1 / Math.sqrt(times(n('directivity')));
    return [coefficient(n('swr')) - leak, coefficient(n('swr')) + leak].map(ratioAlong);
  },
});

describe('order-of-matches', () => {
  it('sends more back from one load to the next', () => {
    for (const { payload, worked, ...one } of sittingsOf(bankQuestion('order-of-matches'))) {
      const n = drawnOf(one);
      const back = [
        1 / times(n('best')),
        coefficient(n('swr')) ** 2,
        n('share') / 100,
        1 / times(n('worst')),
      ];
      expect(back).toEqual(back.toSorted((a, b) => a - b));
      expect(payload.kind === 'order' && payload.answer).toEqual(['best', 'swr', 'share', 'worst']);
      const said = printed(worked[0] ?? '').map(({ value }) => value);
      for (const share of back)
        expect(Math.min(...said.map((each) => Math.abs(each - 100 * share)))).toBeLessThan(0.00501);
    }
  });
});
