import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { halfLastDigit, readPrinted } from '../../src/checks/printed.ts';

describe('reading a printed value', () => {
  it('gives back any decimal number with the decimals it was printed to', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 0, max: 6 }), (digits, decimals) => {
        const text = (digits / 10 ** decimals).toFixed(decimals);
        const read = readPrinted(text.replace('-', '−'));
        expect(read.value).toBe(Number(text));
        expect(read.decimals).toBe(decimals);
        expect(read.isUpperBound).toBe(false);
      }),
    );
  });

  it('lets digits be grouped by spaces of any kind', () => {
    expect(readPrinted('50 000\u00a0838.5').value).toBe(50_000_838.5);
  });

  it('tells a bound from a value', () => {
    expect(readPrinted('< 2.5')).toEqual({ value: 2.5, decimals: 1, isUpperBound: true });
  });

  it.each(['', '1,5', '±3', '1e-5', 'about 7', '3 dB', '--1', '1.', '> 2'])('refuses “%s”', (text) => {
    expect(() => readPrinted(text)).toThrow(RangeError);
  });

  it('takes half a unit of the last digit as what rounding may have hidden', () => {
    expect(halfLastDigit(readPrinted('6.31'))).toBe(0.005);
    expect(halfLastDigit(readPrinted('1500'))).toBe(0.5);
    expect(halfLastDigit(readPrinted('2.0'))).toBe(0.05);
  });
});
