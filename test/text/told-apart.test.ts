import { describe, expect, test } from 'vitest';
import { levelDbm, type OutOfRange, powerW } from '#compute';
import { outOfRangeText } from '../../src/text/out-of-range-text.ts';
import { toldApart } from '../../src/text/told-apart.ts';

const nb = '\u00a0';

describe('two numbers of which one is beyond the other', () => {
  const pair = (a: number, b: number) => toldApart((more) => [a.toFixed(1 + more), b.toFixed(1 + more)]);

  test('have their usual digits where these differ', () => {
    expect(pair(1.2, 1.1)).toEqual(['1.2', '1.1']);
  });

  test('have as few more as tell them apart', () => {
    expect(pair(1.14, 1.1)).toEqual(['1.14', '1.10']);
    expect(pair(1.104, 1.1)).toEqual(['1.104', '1.100']);
  });

  test('have three more at the most', () => {
    expect(pair(1.1 + 1e-9, 1.1)).toEqual(['1.1000', '1.1000']);
  });
});

describe('a method that is only just out of range', () => {
  const reasons: readonly (readonly [OutOfRange, readonly [string, string]])[] = [
    [{ code: 'aboveBandwidth', ratio: 0.3004, largest: 0.3 }, ['0.3004', '0.3000']],
    [{ code: 'belowDetector', power: powerW(0.0499), least: powerW(0.05) }, [`49.9${nb}mW`, `50.0${nb}mW`]],
    [
      { code: 'belowFloor', reading: levelDbm(-30.02), limit: levelDbm(-30) },
      [`\u221230.02${nb}dBm`, `\u221230.00${nb}dBm`],
    ],
    [
      { code: 'aboveLargest', reading: levelDbm(20.02), limit: levelDbm(20) },
      [`20.02${nb}dBm`, `20.00${nb}dBm`],
    ],
  ];

  test.each(reasons)('says by which numbers: %o', (reason, [there, limit]) => {
    const text = outOfRangeText('shown', reason);
    expect(text).toContain(there);
    expect(text).toContain(limit);
  });
});
