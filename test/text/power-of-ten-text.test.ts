import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  everyDigitText,
  groupedText,
  powerOfTenText,
  raisedText,
  tenText,
} from '../../src/text/power-of-ten-text.ts';

const nb = '\u00a0';
const positive = fc.double({ min: 1e-40, max: 1e40, noNaN: true });
const digits = fc.integer({ min: 1, max: 15 });

/** The number that a shown text stands for. */
function readBack(text: string): number {
  const figures = '⁰¹²³⁴⁵⁶⁷⁸⁹';
  const [mantissa = '', raised = ''] = text.split(`${nb}×${nb}10`);
  const exponent = [...raised].map((sign) => (sign === '⁻' ? '-' : figures.indexOf(sign))).join('');
  return Number(`${mantissa.replaceAll(nb, '')}e${exponent === '' ? 0 : exponent}`);
}

describe('a number with a power of ten', () => {
  it('is read back as the number rounded to so many digits, whatever its size', () => {
    fc.assert(
      fc.property(positive, digits, (value, count) => {
        const text = powerOfTenText('shown', { value, digits: count });
        expect(readBack(text)).toBe(Number(value.toPrecision(count)));
        expect(Number(powerOfTenText('ascii', { value, digits: count }).replaceAll(' ', ''))).toBe(
          Number(value.toPrecision(count)),
        );
      }),
    );
  });

  it('has as many digits as were asked for, noughts included', () => {
    fc.assert(
      fc.property(positive, digits, (value, count) => {
        const [mantissa = ''] = powerOfTenText('unicode', { value, digits: count }).split(' × ');
        expect(mantissa.replace(/^0\.0*/, '').replace(/[ .]/g, '')).toHaveLength(count);
      }),
    );
  });

  it.each([
    ['shown', `6.249${nb}×${nb}10¹⁷`],
    ['spoken', '6.249 times ten to the 17'],
    ['ascii', '6.249e17'],
    ['unicode', '6.249 × 10¹⁷'],
  ] as const)('is written for who sees, hears or copies it: %s', (style, text) => {
    expect(powerOfTenText(style, { value: 6.2489e17, digits: 4 })).toBe(text);
  });

  it('is written out where it is neither large nor small', () => {
    const shown = (value: number, count: number): string => powerOfTenText('shown', { value, digits: count });
    expect(shown(30.66331898849837, 8)).toBe(`30.663${nb}319`);
    expect(shown(26303.55813855163, 8)).toBe(`26${nb}303.558`);
    expect(shown(516.256, 4)).toBe('516.3');
    expect(shown(0.0512, 2)).toBe('0.051');
    expect(shown(34584, 3), 'a nought that is not known is not written').toBe(`3.46${nb}×${nb}10⁴`);
    expect(shown(999.96, 4)).toBe(`1000`);
  });

  it('says of small numbers that the power is below nought', () => {
    expect(powerOfTenText('spoken', { value: 3.874e-5, digits: 3 })).toBe('3.87 times ten to the minus 5');
    expect(powerOfTenText('shown', { value: 3.874e-5, digits: 3 })).toBe(`3.87${nb}×${nb}10⁻⁵`);
  });

  it('is not made of what is none', () => {
    for (const value of [0, -1]) expect(() => powerOfTenText('shown', { value, digits: 3 })).toThrow('> 0');
    expect(() => powerOfTenText('shown', { value: Number.NaN, digits: 3 })).toThrow('powerOfTenText: value');
    for (const count of [0, 17, 2.5])
      expect(() => powerOfTenText('shown', { value: 1, digits: count })).toThrow(
        `powerOfTenText: digits must be whole, 1 to 16, got ${count}`,
      );
  });

  it('keeps the digits that it is given', () => {
    expect(tenText('shown', { mantissa: '1.380', exponent: -23 })).toBe(`1.380${nb}×${nb}10⁻²³`);
  });
});

describe('digits in threes', () => {
  it('are those of the SI Brochure for its constants', () => {
    expect(groupedText('unicode', '9192631770')).toBe('9 192 631 770');
    expect(groupedText('unicode', '299792458')).toBe('299 792 458');
    expect(groupedText('unicode', '6.62607015')).toBe('6.626 070 15');
    expect(groupedText('unicode', '25812.807')).toBe('25 812.807');
    expect(groupedText('unicode', '31556925.9747')).toBe('31 556 925.9747');
  });

  it('leave four together, and nothing else is changed', () => {
    expect(groupedText('shown', '1000')).toBe('1000');
    fc.assert(
      fc.property(fc.stringMatching(/^[1-9]\d{0,20}(\.\d{1,12})?$/), (text) => {
        expect(groupedText('shown', text).replaceAll(nb, '')).toBe(text);
        expect(groupedText('spoken', text)).toBe(text);
        for (const group of groupedText('shown', text).split(/[\u00a0.]/))
          expect(group.length).toBeLessThan(5);
      }),
    );
  });
});

describe('an exponent in raised figures', () => {
  it('has a sign where it is negative, and is left out where it is one', () => {
    expect([-12, -1, 0, 1, 2, 3, 4, 98].map(raisedText)).toEqual(['⁻¹²', '⁻¹', '⁰', '', '²', '³', '⁴', '⁹⁸']);
  });
});

describe('every digit that a number was given', () => {
  it('stands there, with a power of ten unless the number is whole', () => {
    expect(everyDigitText('shown', 299792458)).toBe(`299${nb}792${nb}458`);
    expect(everyDigitText('shown', 6.62607015e-34)).toBe(`6.626${nb}070${nb}15${nb}×${nb}10⁻³⁴`);
    expect(everyDigitText('ascii', 1.380649e-23)).toBe('1.380 649e-23');
  });
});
