import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gainAs, limitsAs, readAs } from '../../src/bench/form/read-as.ts';
import { LEVEL } from '../../src/bench/read/spec.ts';
import { blankLink, blankPoint, type PointEntries } from '../../src/sheet/entries.ts';

/** Spaces of every kind as ordinary ones. */
const plain = (text: string | undefined): string | undefined => text?.replace(/\s/g, ' ');
const point = (change: Partial<PointEntries>): PointEntries => ({ ...blankPoint('point1'), ...change });

describe('how a typed level was understood', () => {
  it('is told in dBm where it was typed in watts', () => {
    expect(plain(readAs('500 mW', LEVEL))).toBe('= 26.99 dBm'); // 10 lg 500 = 26.9897
    expect(plain(readAs('0,1 W', LEVEL))).toBe('= 20.00 dBm');
    expect(plain(readAs('-3 dBW', LEVEL))).toBe('= 27.00 dBm'); // dBW + 30
  });

  it('is told in watts where it was typed in dBm', () => {
    expect(plain(readAs('27', LEVEL))).toBe('= 501 mW'); // 10^2.7 = 501.19
    expect(plain(readAs('30 dBm', LEVEL))).toBe('= 1.00 W');
  });

  it('goes without saying where it is no number, or no level at all', () => {
    for (const text of ['mW', '-5 mW', '', '27 dB']) expect(readAs(text, LEVEL), text).toBeUndefined();
    expect(readAs('1', { ...LEVEL, kind: 'halfWidthDb' })).toBeUndefined();
  });

  it('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(readAs(text, LEVEL) ?? '= ').toMatch(/^= /);
      }),
    );
  });
});

describe('limits about a nominal level', () => {
  it('are told in dBm and in watts, lopsided there', () => {
    const even = point({ specification: 'around', nominal: '27 dBm', tolerance: '±1,5' });
    // 10^2.55 = 354.8, 10^2.85 = 707.9
    expect(plain(limitsAs(even))).toBe('25.50 dBm to 28.50 dBm: 350 to 710 mW');
    const uneven = point({ specification: 'uneven', nominal: '500 mW', above: '1', below: '2' });
    expect(plain(limitsAs(uneven))).toMatch(/^24\.99 dBm to 27\.99 dBm: /);
  });

  it('are not told as long as a part of them is missing, or they are the wrong way round', () => {
    const even = point({ specification: 'around', nominal: '27 dBm', tolerance: '1' });
    expect(limitsAs({ ...even, tolerance: 'much' })).toBeUndefined();
    expect(limitsAs({ ...even, nominal: '' })).toBeUndefined();
    expect(limitsAs({ ...even, specification: 'uneven', above: '-3', below: '1' })).toBeUndefined();
  });
});

it('a negative loss is told to be a gain, and no other loss is told anything', () => {
  const gain = (loss: string) => plain(gainAs({ ...blankLink('amplifier'), loss }));
  expect(gain('-20')).toBe('= a gain of 20.00 dB');
  expect(gain('−12,5 dB')).toBe('= a gain of 12.50 dB');
  for (const loss of ['20', '0', '-', 'a lot']) expect(gain(loss), loss).toBeUndefined();
});
