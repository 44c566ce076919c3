import { describe, expect, it } from 'vitest';
import {
  finite,
  gainDb,
  levelDbm,
  notNegative,
  ohms,
  positive,
  powerW,
  rangeError,
  voltsRms,
} from '../../src/compute/quantity.ts';

const notFinite = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

describe('the makers of quantities', () => {
  it('return the very number that they were given, where it is allowed', () => {
    expect(levelDbm(-13.4)).toBe(-13.4);
    expect(gainDb(-20)).toBe(-20);
    expect(powerW(0)).toBe(0);
    expect(powerW(0.5)).toBe(0.5);
    expect(voltsRms(0)).toBe(0);
    expect(voltsRms(5)).toBe(5);
    expect(ohms(50)).toBe(50);
  });

  it.each(notFinite)('refuse %s and say who refused it', (bad) => {
    expect(() => levelDbm(bad)).toThrow(
      new RangeError(`levelDbm: value must be a finite number, got ${bad}`),
    );
    expect(() => gainDb(bad)).toThrow(new RangeError(`gainDb: value must be a finite number, got ${bad}`));
    expect(() => powerW(bad)).toThrow(new RangeError(`powerW: value must be >= 0, got ${bad}`));
    expect(() => voltsRms(bad)).toThrow(new RangeError(`voltsRms: value must be >= 0, got ${bad}`));
    expect(() => ohms(bad)).toThrow(new RangeError(`ohms: value must be > 0, got ${bad}`));
  });

  it('refuse what lies below their range, the edge included where it is out', () => {
    expect(() => powerW(-1e-300)).toThrow('powerW: value must be >= 0, got -1e-300');
    expect(() => voltsRms(-1)).toThrow('voltsRms: value must be >= 0, got -1');
    expect(() => ohms(0)).toThrow('ohms: value must be > 0, got 0');
    expect(() => ohms(-50)).toThrow('ohms: value must be > 0, got -50');
  });
});

describe('the checks of arguments', () => {
  it('pass an allowed value through unchanged', () => {
    expect(finite('f', 'x', -1.5)).toBe(-1.5);
    expect(positive('f', 'x', Number.MIN_VALUE)).toBe(Number.MIN_VALUE);
    expect(notNegative('f', 'x', 0)).toBe(0);
  });

  it('name the function, the parameter, the wish and the value', () => {
    expect(() => finite('f', 'x', Number.NaN)).toThrow(
      new RangeError('f: x must be a finite number, got NaN'),
    );
    expect(() => positive('f', 'x', 0)).toThrow(new RangeError('f: x must be > 0, got 0'));
    expect(() => notNegative('f', 'x', -1)).toThrow(new RangeError('f: x must be >= 0, got -1'));
  });

  it('write what is no number as JSON', () => {
    expect(rangeError({ where: 'f', wish: 'x must be more', got: [] }).message).toBe(
      'f: x must be more, got []',
    );
    expect(rangeError({ where: 'f', wish: 'x must be less', got: 'a to b' }).message).toBe(
      'f: x must be less, got "a to b"',
    );
  });
});
