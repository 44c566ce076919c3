import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deviationsText, plusMinusText } from '../../src/text/deviation-text.ts';
import { numberText, quantityText } from '../../src/text/quantity-text.ts';
import { saidText } from '../../src/text/said-text.ts';
import { unitNames, unitText } from '../../src/text/units.ts';
import { BARE } from './bare-symbols.ts';

const number = () =>
  fc.record({
    value: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
    decimals: fc.integer({ min: 0, max: 4 }),
    unit: fc.constantFrom(...unitNames()),
  });

describe('every unit', () => {
  test.each(unitNames())('%s is a word when it is spoken', (unit) => {
    for (const count of ['1', '2']) expect(`${count} ${unitText('spoken', unit, count)}`).not.toMatch(BARE);
  });

  test('is found in what is shown, so that the check of what is spoken can fail', () => {
    const silent = unitNames().filter((unit) => !BARE.test(`2 ${unitText('shown', unit, '2')}`));
    // what no voice spells out: a number alone, "V RMS" and "V peak" begin with the volt's symbol
    expect(silent.filter((unit) => !['none', 's', 'm'].includes(unit))).toEqual([]);
  });
});

describe('a shown text that is said', () => {
  test('says numbers and units as the spoken style does', () => {
    fc.assert(
      fc.property(number(), (quantity) => {
        expect(saidText(`about ${quantityText('shown', quantity)}, or so`)).toBe(
          `about ${quantityText('spoken', quantity)}, or so`,
        );
      }),
    );
  });

  test('says limits as the spoken style does, and has no bare sign', () => {
    fc.assert(
      fc.property(number(), ({ value, decimals, unit }) => {
        const size = Math.abs(value) + 1;
        const even = { halfWidth: size, decimals, unit };
        const sides = { upper: size, lower: -2 * size, decimals, unit };
        expect(saidText(plusMinusText('shown', even))).toBe(plusMinusText('spoken', even));
        expect(saidText(deviationsText('shown', sides))).toBe(deviationsText('spoken', sides));
      }),
    );
  });

  test('leaves words, dates and bare numbers alone', () => {
    for (const text of [
      'The whole shape',
      'On 2026-05-09',
      numberText('spoken', { value: -3, decimals: 1 }),
      'k = 2',
    ])
      expect(saidText(text)).toBe(text);
  });

  test.each([
    ['20 dB pad', '20 decibel pad'],
    ['Two 20\u00a0dB pads', 'Two 20 decibel pads'],
    ['20 dB padded', '20 decibels padded'],
    ['1 mW', '1 milliwatt'],
    ['\u22127\u00a0dBm', 'minus 7 decibel-milliwatts'],
    ['8.49 V peak', '8.49 volts peak'],
    ['Squares of limits are no 95\u00a0%', 'Squares of limits are no 95 percent'],
    ['The room is not at 20\u00a0°C.', 'The room is not at 20 degrees Celsius.'],
    ['an input of 1\u00a0M\u03a9', 'an input of 1 megohm'],
    ['1000/39.37 mm', '1000 over 39.37 millimetres'],
    ['mismatch of ±0.45 dB at most', 'mismatch of plus or minus 0.45 decibels at most'],
  ])('%s becomes %s', (shown, said) => expect(saidText(shown)).toBe(said));
});
