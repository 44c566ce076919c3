import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axisPowerText } from '../../src/text/axis-text.ts';
import { deviationsText, plusMinusText } from '../../src/text/deviation-text.ts';
import { factorText } from '../../src/text/factor-text.ts';
import { fieldText } from '../../src/text/field-text.ts';
import { fieldTexts } from '../../src/text/field-texts.ts';
import { intervalText } from '../../src/text/interval-text.ts';
import { powerOfTenText } from '../../src/text/power-of-ten-text.ts';
import { powerText, powerWithEndsText } from '../../src/text/power-text.ts';
import { coverageText } from '../../src/text/probability-text.ts';
import { changeText, numberText, quantityText } from '../../src/text/quantity-text.ts';
import { readColumn } from '../../src/text/read/column.ts';
import { readQuantity } from '../../src/text/read/quantity.ts';
import { type BaseStyle, baseOf, DECIMALS, type Style, styleWith } from '../../src/text/style.ts';
import { voltsText } from '../../src/text/volts-text.ts';
import { code, filesBelow } from '../rules/sources.ts';

const WRITTEN: readonly BaseStyle[] = ['shown', 'ascii', 'unicode'];
const LEVEL = { kind: 'level', min: -1e6, max: 1e6, decimals: 0 } as const;

const number = () =>
  fc.record({
    value: fc.double({ min: -1e5, max: 1e5, noNaN: true }),
    decimals: fc.integer({ min: 0, max: 6 }),
  });

/** Everything that writes a number, of one number. */
const writers = (value: number, decimals: number): readonly ((style: Style) => string)[] => {
  const size = Math.abs(value) + 1e-3;
  return [
    (style) => numberText(style, { value, decimals }),
    (style) => quantityText(style, { value, decimals, unit: 'dBm' }),
    (style) => changeText(style, { value, decimals, unit: 'dB' }),
    (style) => plusMinusText(style, { halfWidth: size, decimals, unit: 'dB' }),
    (style) => deviationsText(style, { upper: size, lower: -2 * size, decimals, unit: 'dB' }),
    (style) => intervalText(style, { lower: value, upper: value + size, decimals, unit: 'dBm' }),
    (style) => powerText(style, { powerW: size, digits: decimals + 1 }),
    (style) => powerWithEndsText(style, { powerW: size, lowerW: 0.9 * size, upperW: 1.2 * size }),
    (style) => voltsText(style, { voltsV: size, digits: decimals + 1 }),
    (style) => factorText(style, { ratio: size, digits: decimals + 1 }),
    (style) => powerOfTenText(style, { value: size, digits: decimals + 1 }),
    (style) => coverageText(style, { factor: 1 + size, probability: 0.9545 }),
    (style) => axisPowerText([size, 2 * size], style).texts.join(' '),
  ];
};

describe('the decimal sign of a style', () => {
  test('is the only thing by which the two texts of a number differ', () => {
    fc.assert(
      fc.property(number(), fc.constantFrom(...WRITTEN), ({ value, decimals }, style) => {
        for (const write of writers(value, decimals)) {
          const [point, comma] = DECIMALS.map((decimal) => write(styleWith(style, decimal)));
          expect(comma).not.toMatch(/\d\.\d/);
          expect(comma?.replaceAll(/(?<=\d),(?=\d)/g, '.')).toBe(point);
        }
      }),
    );
  });

  test('is a point in what is spoken, whatever the reader chose', () => {
    expect(styleWith('spoken', 'comma')).toBe('spoken');
    expect(quantityText(styleWith('spoken', 'comma'), { value: -3, decimals: 1, unit: 'dB' })).toBe(
      'minus 3.0 decibels',
    );
  });

  test('stands where it should', () => {
    expect(quantityText('shown-comma', { value: -3, decimals: 1, unit: 'dB' })).toBe('\u22123,0\u00a0dB');
    expect(quantityText('ascii-comma', { value: -3, decimals: 1, unit: 'dB' })).toBe('-3,0 dB');
    expect(powerOfTenText('unicode-comma', { value: 6.62607015e-34, digits: 9 })).toBe(
      '6,626 070 15 \u00d7 10\u207b\u00b3\u2074',
    );
    expect(powerWithEndsText('ascii-comma', { powerW: 1.05, lowerW: 0.97, upperW: 1.13 })).toBe(
      '1,050 W, 0,970 to 1,130',
    );
  });

  test('leaves every style its own signs otherwise', () => {
    for (const style of [...WRITTEN, 'spoken'] as const)
      for (const decimal of DECIMALS) expect(baseOf(styleWith(style, decimal))).toBe(style);
  });

  test('misleads no choice between styles: those go by the base of a style', () => {
    const careless = filesBelow('src', code).filter(({ text }) =>
      /\bstyle [!=]== '(?:shown|ascii|unicode)'/.test(text),
    );
    expect(careless.map(({ path }) => path)).toEqual([]);
  });
});

describe('what the site puts into a field', () => {
  test('reads back as the same number with either sign', () => {
    fc.assert(
      fc.property(number(), ({ value, decimals }) => {
        const text = numberText('ascii', { value, decimals });
        expect(readQuantity(fieldText(text, 'comma'), LEVEL)).toEqual(readQuantity(text, LEVEL));
      }),
    );
  });

  test('reads back as the same column with either sign', () => {
    fc.assert(
      fc.property(fc.array(number(), { minLength: 1, maxLength: 6 }), (numbers) => {
        const column = numbers.map((each) => numberText('ascii', each)).join('\n');
        const [point, comma] = DECIMALS.map((sign) => readColumn(fieldText(column, sign), LEVEL));
        expect(comma?.values).toEqual(point?.values);
        expect(comma?.problems).toEqual([]);
      }),
    );
  });

  test('cannot be taken for thousands', () => {
    expect(fieldText('1.234', 'comma')).toBe('1,2340');
    expect(fieldText('0.125', 'comma')).toBe('0,125');
    expect(fieldText('1234.567', 'comma')).toBe('1234,5670');
    expect(fieldText('1.5 2.25', 'comma')).toBe('1,5 2,25');
    expect(fieldText('-23.45 dBm\n-23.5 dBm', 'comma')).toBe('-23,45 dBm\n-23,5 dBm');
    expect(fieldText('3.58; 0.12; 0.05', 'comma')).toBe('3,58; 0,12; 0,05');
    expect(fieldText('1.5', 'point')).toBe('1.5');
  });

  test('leaves alone what is no number with a fraction', () => {
    for (const text of ['', '27', 'version 1.2.3', '2026-05-09', 'abc.def', '1.', '.5'])
      expect(fieldText(text, 'comma')).toBe(text);
  });

  test('changes what the site filled in and nothing that stood there before', () => {
    const before = { title: 'Rig 2.0', amount: '0.5', links: [{ id: 'a', label: 'Pad 1.5', loss: '20.1' }] };
    const after = {
      ...before,
      amount: '0.7',
      links: [{ id: 'b', label: '1.5', loss: '3.2' }, ...before.links],
    };
    expect(fieldTexts(after, 'comma', before)).toEqual({
      title: 'Rig 2.0',
      amount: '0,7',
      links: [
        { id: 'b', label: '1.5', loss: '3,2' },
        { id: 'a', label: 'Pad 1.5', loss: '20.1' },
      ],
    });
    expect(fieldTexts(before, 'comma').links[0]?.loss).toBe('20,1');
    expect(fieldTexts(before, 'point')).toBe(before);
  });
});
