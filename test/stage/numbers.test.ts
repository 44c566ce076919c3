import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inSteps, MOST_NUMBERS, numbersIn, packed } from '../../src/stage/numbers.ts';

describe('numbers as a room counts them', () => {
  it.each([
    ['a level with its band and factor', '27.10\u00a0dBm ±0.69\u00a0dB (k = 2)'],
    ['a power with both ends', '513\u00a0mW, 438 to 601'],
    ['an interval', 'from 24.33\u00a0dBm to 29.27\u00a0dBm'],
    ['lopsided limits', '+0.32/\u22120.33\u00a0dB'],
    ['a count with its ends and its power of ten', '6.25 (5.77 to 6.77)\u00a0×\u00a010¹⁷ charges'],
    ['digits in groups', '483\u00a0597.8\u00a0GHz'],
    ['decimals in groups', '1.785\u00a0929\u00a02\u00a0×\u00a010¹³'],
  ])('are one for %s', (_, text) => expect(numbersIn(text)).toBe(1));

  it.each([
    ['levels in a row', '24.10, 22.85 and 23.10\u00a0dBm', 3],
    ['a sum', '7.0\u00a0dBm + 20.0\u00a0dB = 27.0\u00a0dBm', 3],
    ['what is claimed and what is due', '±0.38\u00a0dB claimed where ±0.69\u00a0dB is due', 2],
    ['a value without a band before another', '0.88\u00a0W, \u22123.57\u00a0dB', 2],
  ])('are each one for %s', (_, text, count) => expect(numbersIn(text)).toBe(count));

  it('are none where figures only name something', () => {
    expect(numbersIn('a result (VIM 2012, 2.41), k = 2, 95\u00a0%, a probe at 10×, 20 lg, U1 and 2u')).toBe(
      0,
    );
  });

  it('are no fewer in two texts than in each', () => {
    const text = fc.stringMatching(/^([a-z]{1,4}|\d{1,3}(\.\d)?|\.| ){0,12}$/);
    fc.assert(
      fc.property(text, text, (a, b) => {
        expect(numbersIn(`${a}\n${b}`)).toBe(numbersIn(a) + numbersIn(b));
      }),
    );
  });
});

describe('what is put on several steps', () => {
  const things = fc.array(fc.integer({ min: 0, max: 5 }), { maxLength: 12 });
  const textOf = (count: number): string => 'x 1\n'.repeat(count);

  it('stays whole and in order, and no step has more numbers than fit unless one thing has', () => {
    fc.assert(
      fc.property(things, (counts) => {
        const groups = packed(counts, textOf);
        expect(groups.flat()).toEqual(counts);
        for (const group of groups) {
          const sum = group.reduce((total, count) => total + count, 0);
          expect(group.length === 1 || sum <= MOST_NUMBERS).toBe(true);
        }
      }),
    );
  });

  it('is cut behind sentences and semicolons, and only where it must be', () => {
    expect(inSteps('We read 1 W. Then 2 W; at last 3 W. And now 4 W? Who knows.')).toEqual([
      'We read 1 W. Then 2 W; at last 3 W.',
      'And now 4 W? Who knows.',
    ]);
    expect(inSteps('At 1 W, 2 W and 3 W; then at 4 W.'), 'each a sentence').toEqual([
      'At 1 W, 2 W and 3 W.',
      'Then at 4 W.',
    ]);
  });
});
