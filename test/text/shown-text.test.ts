import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberText } from '../../src/text/quantity-text.ts';
import { shownText } from '../../src/text/shown-text.ts';

describe('a text with the reader’s decimal sign', () => {
  test.each([
    ['10 lg 2.5 = 3.98 dB.', '10 lg 2,5 = 3,98 dB.'],
    ['37 W/6 W = 6.167.', '37 W/6 W = 6,167.'],
    ['(1.015)² × 0.5/0.25', '(1,015)² × 0,5/0,25'],
    ['Between −1.5 and +1.5, 2.5 or more.', 'Between −1,5 and +1,5, 2,5 or more.'],
    ['1.6 × 10⁻¹⁹', '1,6 × 10⁻¹⁹'],
    ['It is 5. 3 are left.', 'It is 5. 3 are left.'],
    ['Radio Regulations, No. 1.157: 2.5 W', 'Radio Regulations, No. 1.157: 2,5 W'],
    ['version 1.2.3', 'version 1.2.3'],
    ['no number at all', 'no number at all'],
  ])('%s', (point, comma) => {
    expect(shownText(point, 'comma')).toBe(comma);
    expect(shownText(point, 'point')).toBe(point);
  });

  test('is what the style with a comma writes, number by number', () => {
    const numbers = fc.record({
      value: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      decimals: fc.integer({ min: 0, max: 6 }),
    });
    fc.assert(
      fc.property(fc.array(numbers, { minLength: 1 }), (all) => {
        const line = (style: 'shown' | 'shown-comma'): string =>
          `${all.map((one) => numberText(style, one)).join(' and ')}.`;
        expect(shownText(line('shown'), 'comma')).toBe(line('shown-comma'));
      }),
    );
  });
});
