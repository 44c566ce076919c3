import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { starts } from '../../src/examples/starts.ts';
import { keyedSpec } from '../../src/widgets/envelope/spec.ts';
import { summarise } from '../../src/widgets/envelope/words.ts';
import { stairsSpec } from '../../src/widgets/level-diagram/spec.ts';
import { rowSpec } from '../../src/widgets/pads-in-a-row/spec.ts';
import { startingAt } from '../../src/widgets/parts/starting.ts';
import { scopeSpec } from '../../src/widgets/scope/spec.ts';
import { backSpec } from '../../src/widgets/what-comes-back/spec.ts';

describe('a widget that begins with other values', () => {
  it('has them as its state and as what it goes back to, and keeps the others', () => {
    const spec = startingAt(scopeSpec, { peakToPeak: 20.4, end: 'open' });
    expect(defaultState(spec.fields)).toEqual({
      ...defaultState(scopeSpec.fields),
      peakToPeak: 20.4,
      end: 'open',
    });
  });

  it('is the very same where nothing else is said', () => {
    expect(startingAt(scopeSpec, undefined)).toBe(scopeSpec);
  });

  it.each([
    ['a field that there is not', { volts: 3 }],
    ['a number below the least', { peakToPeak: 0 }],
    ['a number above the most', { peakToPeak: 1e3 }],
    ['a choice that is none', { end: 'nowhere' }],
    ['a name that every object has', { toString: 1 }],
    ['a word for a number', { peakToPeak: 'many' }],
    ['a number for a choice', { end: 1 }],
  ])('is refused for %s', (_, start) => {
    expect(() => startingAt(scopeSpec, start)).toThrow(RangeError);
  });

  it('takes what every example begins with', () => {
    const begins = [
      () => startingAt(scopeSpec, starts['load-forgotten']()),
      () => startingAt(scopeSpec, starts['beyond-the-bandwidth']()),
      () => startingAt(rowSpec('straight'), starts['pad-measured-at-dc']()),
      () => startingAt(backSpec, starts['swr-of-a-whip']()),
      () => startingAt(keyedSpec, starts['keyed-and-spoken']()),
      () => startingAt(stairsSpec, starts['thirty-decibels-forgotten']()),
    ];
    expect(begins).toHaveLength(Object.keys(starts).length);
    for (const begin of begins) expect(begin).not.toThrow();
  });

  it('lets no more come out of the keyed transmitter than its supply gives', () => {
    const { fields } = startingAt(keyedSpec, starts['keyed-and-spoken']());
    // 12 V and 0.4 A are 4.8 W, key down, of which 2 W come out: 42 %.
    expect(summarise(defaultState(fields))).toContain('42 percent efficiency');
  });
});
