import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bytesOf, lettersOf } from '../../src/address/letters.ts';
import { packed, unpacked } from '../../src/address/packed.ts';
import { wordsOfVersion3 } from '../../src/bench/address/address-words.ts';

const WORDS = 'l1n=20-dB-pad&l1a=0.5&t=The-transmitter&';
const anyBytes = fc.uint8Array({ maxLength: 60 });
/** Addresses consist of these; words and repeats among them, so that there is something to fold. */
const anyPairs = fc
  .array(
    fc.oneof(
      fc.constantFrom('l1n=20-dB-pad', 'l1a=0.5', 'x1m=7.0_a-7.1', '&'),
      fc.stringMatching(/^[\w.&=-]{1,12}$/),
    ),
    { minLength: 1, maxLength: 30 },
  )
  .map((pieces) => pieces.join(''));
const pack = (pairs: string, words = WORDS): string => {
  const code = packed(pairs, words);
  if (code === undefined) throw new Error('pack: wish text that fits');
  return code;
};
/** What is behind the four letters of the check. */
const bodyOf = (code: string): string => code.replace(/^(?:z.|[^z]){4}/, '');

describe('bytes in letters', () => {
  test('come back as they were', () => {
    fc.assert(
      fc.property(anyBytes, (bytes) => {
        expect(bytesOf(lettersOf(bytes))).toEqual(bytes);
      }),
    );
  });

  test('are letters and digits alone', () => {
    fc.assert(
      fc.property(anyBytes, (bytes) => {
        expect(lettersOf(bytes)).toMatch(/^[0-9A-Za-z]*$/);
      }),
    );
  });

  test('take eight bits in six, and only the last three values of 64 take two signs', () => {
    expect(lettersOf(new Uint8Array([0, 0, 0]))).toBe('0000');
    expect(lettersOf(new Uint8Array([0xff, 0xff, 0xff]))).toBe('z2z2z2z2');
    expect(lettersOf(new Uint8Array([0b11110000]))).toBe('y0');
    expect(lettersOf(new Uint8Array([0b11110100]))).toBe('z00');
  });

  test.each(['a-b', 'zz', 'z', 'z3', 'ä', 'a b'])('%j is none of ours', (letters) => {
    expect(bytesOf(letters)).toBeUndefined();
  });
});

describe('a packed address', () => {
  test('comes back whole', () => {
    fc.assert(
      fc.property(anyPairs, (pairs) => {
        expect(unpacked(pack(pairs), WORDS)).toEqual({ text: pairs, whole: true });
      }),
    );
  });

  test('is read by another reader of RFC 1951, given the same words', () => {
    fc.assert(
      fc.property(anyPairs, (pairs) => {
        const body = bytesOf(bodyOf(pack(pairs)));
        expect(inflateRawSync(body ?? '', { dictionary: Buffer.from(WORDS) }).toString()).toBe(pairs);
      }),
    );
  });

  test('may come from another writer of RFC 1951', () => {
    fc.assert(
      fc.property(anyPairs, fc.integer({ min: 0, max: 9 }), (pairs, level) => {
        const check = pack(pairs).slice(0, -bodyOf(pack(pairs)).length);
        const body = deflateRawSync(pairs, { level, dictionary: Buffer.from(WORDS) });
        expect(unpacked(check + lettersOf(body), WORDS)).toEqual({ text: pairs, whole: true });
      }),
    );
  });

  test('of which one letter was changed is never taken for whole', () => {
    const place = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
    const letter = fc.constantFrom(...'0123456789ABCXYZabcxyz');
    fc.assert(
      fc.property(anyPairs, place, letter, (pairs, share, other) => {
        const code = pack(pairs);
        const at = Math.floor(share * code.length);
        const changed = code.slice(0, at) + other + code.slice(at + 1);
        const read = unpacked(changed, WORDS);
        // bits that only fill up the last letter say nothing
        expect(changed === code || read?.whole !== true || read.text === pairs).toBe(true);
      }),
    );
  });

  test('that was cut gives its beginning, and does not call it whole', () => {
    const pairs = Array.from({ length: 40 }, (_, index) => `l${index}a=${index * 37}`).join('&');
    const code = pack(pairs);
    for (const share of [0.3, 0.5, 0.9]) {
      const read = unpacked(code.slice(0, code.length * share), WORDS);
      expect(read?.whole).toBe(false);
      expect(pairs.startsWith(read?.text ?? '?')).toBe(true);
      expect(read?.text.length).toBeGreaterThan(pairs.length * share * 0.4);
    }
  });

  test('never throws, whatever is given for one', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.stringMatching(/^[0-9a-z]{0,80}$/)),
        (code) => void unpacked(code, WORDS),
      ),
    );
  });

  test('that would unfold to millions of letters is unfolded to a bounded length', () => {
    const bomb = lettersOf(
      deflateRawSync('a'.repeat(20_000_000), { level: 9, dictionary: Buffer.from(WORDS) }),
    );
    expect(bomb.length).toBeLessThan(100_000);
    expect(unpacked(`0000${bomb}`, WORDS)?.text.length).toBe(400_000);
    expect(packed('a'.repeat(400_001), WORDS)).toBeUndefined();
  });

  test('costs next to nothing for what both sides know', () => {
    const words = wordsOfVersion3();
    expect(pack(words.slice(500, 900), words).length).toBeLessThan(30);
  });
});

test('the words of version 3 are ASCII, and not longer than what a reader of RFC 1951 looks back on', () => {
  expect(wordsOfVersion3()).toMatch(/^[\w.&=-]+$/);
  expect(wordsOfVersion3().length).toBeLessThan(32_768);
});
