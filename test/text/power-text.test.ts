import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalsFor } from '../../src/text/place.ts';
import { powerIntervalText, powerText, powerWithEndsText } from '../../src/text/power-text.ts';
import { coverageText, probabilityText, shareText } from '../../src/text/probability-text.ts';

const UNIT_WATTS: Readonly<Record<string, number>> = {
  kW: 1e3,
  W: 1,
  mW: 1e-3,
  uW: 1e-6,
  nW: 1e-9,
  pW: 1e-12,
};
const wattsOf = (text: string): number => {
  const [number = '', unit = ''] = text.split(' ');
  return Number(number) * (UNIT_WATTS[unit] ?? Number.NaN);
};

describe('a power', () => {
  test('keeps its value to the digits asked for, whatever its size', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -11.9, max: 5, noNaN: true }),
        fc.integer({ min: 1, max: 6 }),
        (exponent, digits) => {
          const powerW = 10 ** exponent;
          const text = powerText('ascii', { powerW, digits });
          expect(Math.abs(wattsOf(text) / powerW - 1)).toBeLessThanOrEqual(0.5000001 * 10 ** (1 - digits));
        },
      ),
    );
  });

  test('has a number from 1 to below 1000 before its unit', () => {
    fc.assert(
      fc.property(fc.double({ min: -11.9, max: 5.9, noNaN: true }), (exponent) => {
        const number = Number(powerText('ascii', { powerW: 10 ** exponent, digits: 3 }).split(' ')[0]);
        expect(number).toBeGreaterThanOrEqual(1);
        expect(number).toBeLessThan(1000);
      }),
    );
  });

  test('changes its unit where rounding carries it there', () => {
    expect(powerText('ascii', { powerW: 0.9996, digits: 3 })).toBe('1.00 W');
    expect(powerText('ascii', { powerW: 0.9994, digits: 3 })).toBe('999 mW');
  });

  test('is written as the trade writes it: 9.33 mW, 9.3 uW, 1.049 W', () => {
    expect(powerText('ascii', { powerW: 9.33e-3, digits: 3 })).toBe('9.33 mW');
    expect(powerText('shown', { powerW: 9.33e-6, digits: 2 })).toBe('9.3\u00a0\u00b5W');
    expect(powerText('spoken', { powerW: 1.0488, digits: 4 })).toBe('1.049 watts');
    expect(powerText('ascii', { powerW: 1500, digits: 2 })).toBe('1.5 kW');
  });

  test('of nothing is 0 W, and of less than a picowatt stays in picowatts', () => {
    expect(powerText('ascii', { powerW: 0, digits: 3 })).toBe('0 W');
    expect(powerText('ascii', { powerW: 2e-15, digits: 1 })).toBe('0.002 pW');
  });

  test('refuses digits that are none', () => {
    for (const digits of [0, 16, 1.5])
      expect(() => powerText('ascii', { powerW: 1, digits })).toThrow(
        /powerText: digits must be whole, 1 to 15/,
      );
  });
});

describe('a power with its interval', () => {
  test('shows as many digits as the width bears: 27.1 dBm within 0.69 dB is 513 mW, 438 to 601', () => {
    // 10^((27.1 - 0.69)/10), 10^((27.1 + 0.69)/10) mW by hand calculator: 437.5 and 601.2.
    const ends = { lowerW: 0.4375, upperW: 0.6012 };
    expect(powerIntervalText('ascii', ends)).toBe('438 to 601 mW');
    expect(powerWithEndsText('ascii', { powerW: 0.5129, ...ends })).toBe('513 mW, 438 to 601');
    expect(powerWithEndsText('shown', { powerW: 0.5129, ...ends })).toBe('513\u00a0mW, 438 to 601');
    expect(powerWithEndsText('spoken', { powerW: 0.5129, ...ends })).toBe('513 milliwatts, 438 to 601');
  });

  test('rounds to tens of milliwatts where more would be a pretence', () => {
    expect(powerWithEndsText('ascii', { powerW: 0.4786, lowerW: 0.271, upperW: 0.8452 })).toBe(
      '480 mW, 270 to 850',
    );
  });

  test('gives each end a unit of its own where they lie more than ten times apart', () => {
    const wide = { lowerW: 3.16e-5, upperW: 0.316 };
    expect(powerIntervalText('ascii', wide)).toBe('32 uW to 320 mW');
    expect(powerWithEndsText('ascii', { powerW: 3.16e-3, ...wide })).toBe('3.2 mW, 32 uW to 320 mW');
    expect(powerIntervalText('ascii', { lowerW: 0.1, upperW: 1 })).toBe('0.10 to 1.00 W');
    expect(powerIntervalText('ascii', { lowerW: 0.1, upperW: 1.001 })).toBe('100 mW to 1.0 W');
  });

  test('may reach down to nothing, or below where a model does so', () => {
    expect(powerIntervalText('ascii', { lowerW: 0, upperW: 4 })).toBe('0.0 to 4.0 W');
    expect(powerIntervalText('ascii', { lowerW: -0.5, upperW: 4 })).toBe('-0.5 to 4.0 W');
  });

  test('without any width is written with four digits', () => {
    const exact = { lowerW: 0.5, upperW: 0.5 };
    expect(powerIntervalText('ascii', exact)).toBe('500.0 mW');
    expect(powerWithEndsText('ascii', { powerW: 0.5, ...exact })).toBe('500.0 mW');
  });

  test('never shows an end above the other or a value outside', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 4.9, noNaN: true }),
        (levelDbm, halfWidthDb) => {
          const [powerW, lowerW, upperW] = [0, -halfWidthDb, halfWidthDb].map(
            (db) => 1e-3 * 10 ** ((levelDbm + db) / 10),
          ) as [number, number, number];
          const text = powerWithEndsText('ascii', { powerW, lowerW, upperW });
          const [value, lower, upper] = (text.match(/-?[\d.]+/g) ?? []).map(Number) as [
            number,
            number,
            number,
          ];
          expect(lower).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(upper);
          expect(lower).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('is refused when its ends are out of order or endless', () => {
    expect(() => powerIntervalText('ascii', { lowerW: 2, upperW: 1 })).toThrow(
      /powerIntervalText: lowerW must be finite and not above a finite upperW, got "2 to 1"/,
    );
    for (const ends of [
      { lowerW: Number.NEGATIVE_INFINITY, upperW: 1 },
      { lowerW: 0, upperW: Number.POSITIVE_INFINITY },
    ])
      expect(() => powerWithEndsText('ascii', { powerW: 1, ...ends })).toThrow(/powerWithEndsText: lowerW/);
    expect(() => powerWithEndsText('ascii', { powerW: 0, lowerW: 0, upperW: 1 })).toThrow(
      /powerWithEndsText: powerW must be > 0/,
    );
  });
});

describe('digits that an uncertainty bears', () => {
  test('are two, at its own place (GUM 7.2.6)', () => {
    expect([0.69, 81.5, 286, 0.0996, 0.004, 9.96].map(decimalsFor)).toEqual([2, 0, -1, 2, 4, 0]);
  });

  test('stop somewhere for a vanishing one, and one of zero is refused', () => {
    expect(decimalsFor(1e-30)).toBe(12);
    expect(() => decimalsFor(0)).toThrow(/decimalsFor: uncertainty must be > 0/);
  });
});

describe('probabilities', () => {
  test('a share has only the digits that say something', () => {
    expect([0.95, 0.9545, 0.9, 1, 0, 0.999].map((share) => shareText('ascii', share))).toEqual([
      '95 %',
      '95.45 %',
      '90 %',
      '100 %',
      '0 %',
      '99.9 %',
    ]);
  });

  test('a probability near certainty is not called certain', () => {
    const words = [0, 0.0004, 0.001, 0.0052, 0.27, 0.66, 0.9948, 0.999, 0.9995, 1].map((p) =>
      probabilityText('ascii', p),
    );
    expect(words).toEqual([
      'less than 0.1 %',
      'less than 0.1 %',
      '0.1 %',
      '0.5 %',
      '27 %',
      '66 %',
      '99.5 %',
      '99.9 %',
      'more than 99.9 %',
      'more than 99.9 %',
    ]);
  });

  test('outside 0 to 1 is refused', () => {
    for (const share of [-0.01, 1.01, Number.NaN]) {
      expect(() => shareText('ascii', share)).toThrow(/shareText: share must be from 0 to 1/);
      expect(() => probabilityText('ascii', share)).toThrow(/probabilityText: share must be from 0 to 1/);
    }
  });

  test('coverage factor and probability go together in every style', () => {
    const coverage = { factor: 2, probability: 0.95 };
    expect(coverageText('ascii', coverage)).toBe('k = 2, 95 %');
    expect(coverageText('shown', { factor: 2.262, probability: 0.95 })).toBe('k\u00a0=\u00a02.26, 95\u00a0%');
    expect(coverageText('spoken', coverage)).toBe('coverage factor 2, coverage probability 95 percent');
  });
});
