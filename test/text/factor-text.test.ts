import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aboutText, factorText, ratioText, timesText } from '../../src/text/factor-text.ts';

const ratio = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
const digits = fc.integer({ min: 2, max: 6 });

describe('a ratio as text', () => {
  it('is the ratio again, to the digits that were asked for', () => {
    fc.assert(
      fc.property(ratio, digits, (value, places) => {
        const read = Number(ratioText('ascii', { ratio: value, digits: places }));
        expect(Math.abs(read / value - 1)).toBeLessThanOrEqual(0.5001 * 10 ** (1 - places));
      }),
    );
  });

  it('is divided by below one and times above, with the same number on both sides', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 1e6, noNaN: true }), digits, (value, places) => {
        const up = factorText('shown', { ratio: value, digits: places });
        const down = factorText('shown', { ratio: 1 / value, digits: places });
        expect(up.startsWith('×')).toBe(true);
        expect(down.startsWith('÷')).toBe(true);
        expect(Math.abs(Number(up.slice(1)) - Number(down.slice(1)))).toBeLessThanOrEqual(
          1.01 * 10 ** (Math.floor(Math.log10(value)) + 1 - places),
        );
      }),
    );
  });

  it('has no more digits than were asked for, and none fewer', () => {
    expect(ratioText('shown', { ratio: 9.996, digits: 3 })).toBe('10.0');
    expect(ratioText('shown', { ratio: 0.002512, digits: 3 })).toBe('0.00251');
    expect(ratioText('shown', { ratio: 398.1, digits: 3 })).toBe('398');
    expect(factorText('spoken', { ratio: 0.5, digits: 1 })).toBe('divided by 2');
    expect(factorText('ascii', { ratio: 20, digits: 2 })).toBe('x20');
    expect(timesText('shown', { ratio: 0.25, digits: 2 })).toBe('0.25\u00a0times');
    expect(aboutText('shown', '×400')).toBe('≈\u00a0×400');
    expect(aboutText('spoken', 'times 400')).toBe('about times 400');
  });

  it('is refused where there is no ratio', () => {
    for (const value of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => ratioText('shown', { ratio: value, digits: 3 })).toThrow('ratioText: ratio must be > 0');
      expect(() => factorText('shown', { ratio: value, digits: 3 })).toThrow('factorText: ratio must be > 0');
    }
    expect(() => ratioText('shown', { ratio: 1, digits: 0 })).toThrow('ratioText: digits must be whole');
  });
});

describe('a factor in every style', () => {
  it('has the same digits, behind the words or the sign of that style', () => {
    fc.assert(
      fc.property(ratio, digits, (value, places) => {
        const [shown, spoken, ascii, unicode] = (['shown', 'spoken', 'ascii', 'unicode'] as const).map(
          (style) => factorText(style, { ratio: value, digits: places }),
        );
        const number = ascii?.slice(1);
        const down = value < 1;
        expect(spoken).toBe(`${down ? 'divided by' : 'times'} ${number}`);
        expect(shown).toBe(`${down ? '÷' : '×'}${number}`);
        expect(unicode).toBe(shown);
        expect(ascii).toMatch(/^[x/][\d.]+$/);
      }),
    );
  });

  it('of 20 dB and of 3 dB are ÷100 and about ÷2 (10^(-dB/10))', () => {
    expect(factorText('shown', { ratio: 10 ** -2, digits: 3 })).toBe('÷100');
    expect(factorText('shown', { ratio: 10 ** -0.3, digits: 2 })).toBe('÷2.0');
    expect(aboutText('ascii', factorText('ascii', { ratio: 10 ** -0.3, digits: 1 }))).toBe('about /2');
    expect(timesText('spoken', { ratio: 10 ** 0.3, digits: 3 })).toBe('2.00 times');
  });

  it('of one is a multiplication that changes nothing', () => {
    expect(factorText('shown', { ratio: 1, digits: 1 })).toBe('×1');
  });
});
