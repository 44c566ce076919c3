import { describe, expect, test } from 'vitest';
import { type KindName, kindOf } from '../../src/text/read/kind.ts';
import { readQuantity } from '../../src/text/read/quantity.ts';
import { unitOf } from '../../src/text/read/spelling.ts';
import { saidUnits } from '../../src/text/said-units.ts';
import { unitNames, unitText } from '../../src/text/units.ts';
import { BARE } from './bare-symbols.ts';

const KINDS: readonly KindName[] = [
  'level',
  'power',
  'gain',
  'loss',
  'halfWidthDb',
  'halfWidth',
  'percent',
  'volts',
  'voltsDc',
  'voltsRms',
  'voltsPeakToPeak',
  'halfWidthVpp',
  'ohms',
  'kiloohms',
  'amperes',
  'halfWidthAmperes',
  'kilohertz',
  'megahertz',
  'kelvin',
  'rise',
  'celsius',
  'micrometres',
  'growth',
  'millimetres',
  'number',
];

const problemOf = (kind: KindName, text: string): string => {
  const read = readQuantity(text, { kind, min: -1e6, max: 1e6, decimals: 0 });
  if (read.ok) throw new Error(`problemOf: wish something wrong, got ${text}`);
  return read.problem;
};

describe('what is wrong with a number, as it is heard', () => {
  test('names every unit in words', () => {
    expect(saidUnits(problemOf('level', 'x'))).toBe(
      '“x” is not a number: a level is expected, in decibel-milliwatts, decibel-watts, watts, milliwatts or microwatts, for example 23\u00a0decibel-milliwatts.',
    );
  });

  test.each(KINDS)('leaves no symbol of a unit: %s', (name) => {
    const said = saidUnits(problemOf(name, 'x'));
    expect(said).not.toMatch(BARE);
    for (const unit of Object.keys(kindOf(name).units).filter((each) => each !== 'none'))
      expect(said).not.toMatch(
        new RegExp(`(?:in|or|,) ${unitText('shown', unit as never, '2')}(?:,| or|\\.)`),
      );
  });

  test('leaves words alone that look like a symbol', () => {
    expect(saidUnits('A level is expected.')).toBe('A level is expected.');
    expect(saidUnits('Write 1.5 or 15, or a range.')).toBe('Write 1.5 or 15, or a range.');
    expect(saidUnits('W and K, and so on')).toBe('W and K, and so on');
  });

  test('says a minus', () => {
    expect(saidUnits('for example \u221220\u00a0dB.')).toBe('for example minus 20\u00a0decibels.');
  });
});

describe('a unit that is heard', () => {
  const typed = unitNames().filter(
    (unit) => unitOf(unitText('shown', unit, '2')) === unit && unit !== 'none',
  );

  test.each(typed)('can be typed as it sounds: %s', (unit) => {
    for (const count of ['1', '2']) expect(unitOf(unitText('spoken', unit, count))).toBe(unit);
  });

  test('is any that can be typed, and is read behind its number', () => {
    expect(typed.length).toBeGreaterThan(20);
    const read = (text: string) => readQuantity(text, { kind: 'level', min: -100, max: 100, decimals: 0 });
    expect(read('23 decibel-milliwatts')).toEqual({ ok: true, value: 23, unit: 'dBm' });
    expect(read('\u22127 decibel-watts')).toEqual({ ok: true, value: 23, unit: 'dBm' });
  });
});
