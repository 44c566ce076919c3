import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countText } from '../../src/text/count-text.ts';

const nb = '\u00a0';

describe('how many there are', () => {
  it('is grouped by threes from five digits on, where it is seen', () => {
    expect(countText('shown', 1000)).toBe('1000');
    expect(countText('shown', 10_000)).toBe(`10${nb}000`);
    expect(countText('shown', 100_000)).toBe(`100${nb}000`);
    expect(countText('shown', 1_000_000)).toBe(`1${nb}000${nb}000`);
  });

  it('is one run of digits where it is copied or spoken', () => {
    expect(countText('ascii', 1_000_000)).toBe('1000000');
    expect(countText('spoken', 40_000)).toBe('40000');
  });

  it('is the same number once the gaps are gone', () => {
    fc.assert(
      fc.property(fc.nat(), (count) => {
        expect(Number(countText('shown', count).replaceAll(nb, ''))).toBe(count);
      }),
    );
  });
});
