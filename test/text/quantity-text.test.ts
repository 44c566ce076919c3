import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deviationsText, plusMinusText } from '../../src/text/deviation-text.ts';
import { digitsOf } from '../../src/text/digits.ts';
import { intervalText } from '../../src/text/interval-text.ts';
import {
  changeText,
  dbText,
  levelText,
  numberText,
  percentText,
  quantityText,
} from '../../src/text/quantity-text.ts';
import type { Style } from '../../src/text/style.ts';
import { isUnitName, type UnitName } from '../../src/text/units.ts';

const NBSP = '\u00a0';
const MINUS = '\u2212';
const STYLES: readonly Style[] = ['shown', 'spoken', 'ascii', 'unicode'];
const UNITS: readonly UnitName[] = ['dB', 'dBm', 'W', 'mW', 'uW', 'ohm', 'percent', 'degC', 'um', 'none'];
const number = () =>
  fc.record({
    value: fc.double({ min: -1e9, max: 1e9, noNaN: true }),
    decimals: fc.integer({ min: -3, max: 9 }),
  });

describe('laws of written numbers', () => {
  test('what is written reads back as the value, to half a step of the last place', () => {
    fc.assert(
      fc.property(number(), ({ value, decimals }) => {
        const back = Number(numberText('ascii', { value, decimals }));
        expect(Math.abs(back - value)).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals + 1e-6);
      }),
    );
  });

  test('a number already rounded is written the same again', () => {
    fc.assert(
      fc.property(number(), ({ value, decimals }) => {
        const once = numberText('ascii', { value, decimals });
        expect(numberText('ascii', { value: Number(once), decimals })).toBe(once);
      }),
    );
  });

  test('turning the sign changes the sign alone, and a zero has none', () => {
    fc.assert(
      fc.property(number(), ({ value, decimals }) => {
        const [plus, minus] = [Math.abs(value), -Math.abs(value)].map((v) =>
          numberText('ascii', { value: v, decimals }),
        );
        expect(minus).toBe(Number(plus) === 0 ? plus : `-${plus}`);
      }),
    );
  });

  test('every style says the same digits, and the ASCII style is ASCII', () => {
    fc.assert(
      fc.property(number(), fc.constantFrom(...UNITS), ({ value, decimals }, unit) => {
        const texts = STYLES.map((style) => quantityText(style, { value, decimals, unit }));
        const digits = texts.map((text) => text.replace(/[^\d.]/g, ''));
        expect(new Set(digits).size).toBe(1);
        expect(texts[2]).toMatch(/^[ -~]*$/);
      }),
    );
  });

  test('number and unit never part at a line end', () => {
    fc.assert(
      fc.property(number(), fc.constantFrom(...UNITS), ({ value, decimals }, unit) => {
        expect(quantityText('shown', { value, decimals, unit })).not.toMatch(/\d /);
      }),
    );
  });
});

describe('one quantity', () => {
  test('has a true minus and a no-break space when shown', () => {
    expect(dbText('shown', { db: -3, decimals: 1 })).toBe(`${MINUS}3.0${NBSP}dB`);
  });

  test('has its sign and unit in words when spoken', () => {
    expect(dbText('spoken', { db: -3, decimals: 1 })).toBe('minus 3.0 decibels');
    expect(quantityText('spoken', { value: 20, decimals: 0, unit: 'degC' })).toBe('20 degrees Celsius');
  });

  test('has a hyphen and a plain space when copied to ASCII, and ordinary spaces when copied to Unicode', () => {
    expect(dbText('ascii', { db: -3, decimals: 1 })).toBe('-3.0 dB');
    expect(dbText('unicode', { db: -3, decimals: 1 })).toBe(`${MINUS}3.0 dB`);
  });

  test('takes the singular for exactly one', () => {
    const watts = (value: number, decimals: number) => quantityText('spoken', { value, decimals, unit: 'W' });
    expect([watts(1, 0), watts(-1, 0), watts(1, 1), watts(2, 0), watts(0, 0)]).toEqual([
      '1 watt',
      'minus 1 watt',
      '1.0 watts',
      '2 watts',
      '0 watts',
    ]);
  });

  test('says microwatts and ohms in letters where ASCII has no sign for them', () => {
    expect(quantityText('ascii', { value: 9.3, decimals: 1, unit: 'uW' })).toBe('9.3 uW');
    expect(quantityText('shown', { value: 9.3, decimals: 1, unit: 'uW' })).toBe(`9.3${NBSP}\u00b5W`);
    expect(quantityText('ascii', { value: 49.6, decimals: 1, unit: 'ohm' })).toBe('49.6 ohm');
    expect(quantityText('shown', { value: 49.6, decimals: 1, unit: 'ohm' })).toBe(`49.6${NBSP}\u03a9`);
  });

  test('is a bare number without a unit', () => {
    expect(quantityText('shown', { value: 5, decimals: 0, unit: 'none' })).toBe('5');
  });

  test('can be a level or a percentage', () => {
    expect(levelText('ascii', { levelDbm: -13.4, decimals: 1 })).toBe('-13.4 dBm');
    expect(percentText('spoken', { percent: 5, decimals: 0 })).toBe('5 percent');
  });

  test('rounds to tens where its uncertainty leaves no more', () => {
    expect(quantityText('ascii', { value: 479, decimals: -1, unit: 'mW' })).toBe('480 mW');
    expect(quantityText('ascii', { value: 4, decimals: -1, unit: 'mW' })).toBe('0 mW');
  });

  test('sends a tie to the even digit, like the GUM in 4.4.3: 100.145 is 100.14', () => {
    expect(digitsOf({ value: 100.145, decimals: 2 })).toBe('100.14');
  });

  test('is refused when it is no number or asks for impossible places', () => {
    expect(() => digitsOf({ value: Number.NaN, decimals: 1 })).toThrow(
      /digitsOf: value must be a finite number/,
    );
    expect(() => digitsOf({ value: 1e21, decimals: 1 })).toThrow(/value must be below 1e21/);
    for (const decimals of [0.5, 21, -21])
      expect(() => digitsOf({ value: 1, decimals })).toThrow(/decimals must be whole, -20 to 20/);
    expect(digitsOf({ value: 1, decimals: 20 })).toBe('1.00000000000000000000');
  });

  test('knows its unit by name, and no name from the prototype', () => {
    expect(isUnitName('dBm')).toBe(true);
    expect(isUnitName('toString')).toBe(false);
  });
});

describe('differences, deviations and intervals', () => {
  test('a difference always has its sign, unless it is nothing', () => {
    const change = (value: number) => changeText('shown', { value, decimals: 2, unit: 'dB' });
    expect([change(0.26), change(-0.27), change(-0.001)]).toEqual([
      `+0.26${NBSP}dB`,
      `${MINUS}0.27${NBSP}dB`,
      `0.00${NBSP}dB`,
    ]);
  });

  test('even limits have one plus-minus', () => {
    const limits = { halfWidth: 0.69, decimals: 2, unit: 'dB' } as const;
    expect(STYLES.map((style) => plusMinusText(style, limits))).toEqual([
      `\u00b10.69${NBSP}dB`,
      'plus or minus 0.69 decibels',
      '+/-0.69 dB',
      '\u00b10.69 dB',
    ]);
    expect(() => plusMinusText('shown', { ...limits, halfWidth: -0.1 })).toThrow(/halfWidth must be >= 0/);
  });

  test('uneven deviations keep both numbers', () => {
    const uneven = { upper: 0.26, lower: -0.27, decimals: 2, unit: 'dB' } as const;
    expect(STYLES.map((style) => deviationsText(style, uneven))).toEqual([
      `+0.26/${MINUS}0.27${NBSP}dB`,
      'plus 0.26, minus 0.27 decibels',
      '+0.26/-0.27 dB',
      `+0.26/${MINUS}0.27 dB`,
    ]);
  });

  test('deviations that come to the same digits have one plus-minus, but only on both sides of the value', () => {
    const deviations = (upper: number, lower: number) =>
      deviationsText('ascii', { upper, lower, decimals: 1, unit: 'dB' });
    expect(deviations(0.26, -0.27)).toBe('+/-0.3 dB');
    expect(deviations(0.3, 0.3)).toBe('+0.3/+0.3 dB');
    expect(deviations(0.04, -0.01)).toBe('+/-0.0 dB');
    expect(deviations(0.4, 0)).toBe('+0.4/+0.0 dB');
  });

  test('an interval names its unit once', () => {
    const interval = { lower: -0.5, upper: 0.7, decimals: 1, unit: 'dB' } as const;
    expect(intervalText('shown', interval)).toBe(`${MINUS}0.5 to 0.7${NBSP}dB`);
    expect(intervalText('spoken', interval)).toBe('minus 0.5 to 0.7 decibels');
  });

  test('an interval from right to left is refused', () => {
    expect(() => intervalText('shown', { lower: 1, upper: 0, decimals: 0, unit: 'dB' })).toThrow(
      /intervalText: lower must not be above upper, got "1 to 0"/,
    );
  });
});
