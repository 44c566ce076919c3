import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cleanText, orList, quoted } from '../../src/text/clean.ts';
import { anyText } from './any-text.ts';

describe('text from outside', () => {
  test('is clean after one cleaning, in one line and well formed', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        const clean = cleanText(text);
        expect(cleanText(clean)).toBe(clean);
        expect(clean).not.toMatch(/[\n\r\u2028\u202a-\u202e\u2066-\u2069\p{Cc}]/u);
        expect(clean.isWellFormed()).toBe(true);
      }),
    );
  });

  test('keeps letters of every script, and the joiners that some need', () => {
    for (const text of [
      'D\u00e4mpfung 50 \u03a9',
      '\u0634\u0628\u06a9\u0647\u200c\u0627\u06cc',
      '\u964d\u8870\u5668',
    ])
      expect(cleanText(text)).toBe(text);
  });

  test('has ordinary spaces for all others', () => {
    expect(cleanText('a\u00a0b\tc\nd\u2009e\u0085f')).toBe('a b c d e f');
  });
});

describe('text repeated in a sentence', () => {
  test('stands in quotation marks, cut where it is long', () => {
    expect(quoted(' 23\u202edBm ')).toBe('\u201c23dBm\u201d');
    expect(quoted('x'.repeat(40))).toBe(`\u201c${'x'.repeat(40)}\u201d`);
    expect(quoted('x'.repeat(41))).toBe(`\u201c${'x'.repeat(40)}\u2026\u201d`);
    expect([...quoted('\u{1f4fb}'.repeat(1e5))]).toHaveLength(43);
  });
});

describe('a choice of words', () => {
  test('has commas and one "or"', () => {
    expect([[], ['W'], ['W', 'mW'], ['dBm', 'W', 'mW']].map(orList)).toEqual([
      '',
      'W',
      'W or mW',
      'dBm, W or mW',
    ]);
  });
});
