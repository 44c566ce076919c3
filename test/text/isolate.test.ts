import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutText } from '../../src/figures/cut-text.ts';
import { cleanText, quoted } from '../../src/text/clean.ts';
import { cleanedApart, inDirection, isolated, withoutIsolates } from '../../src/text/isolate.ts';
import { asciiWords, bbcodeWords, markdownWords, plainWords } from '../../src/text/summary/escape.ts';
import { anyText } from './any-text.ts';

const [OPEN, CLOSE] = ['\u2068', '\u2069'];
/** Invented names in Hebrew and in Arabic letters, with a number at the end, where a sentence's own numbers would move. */
const HEBREW = '\u05de\u05e9\u05d3\u05e8 7';
const ARABIC = '\u0645\u0631\u0633\u0644 12';
const names = fc.oneof(
  anyText(30),
  fc.constantFrom(HEBREW, ARABIC, `a ${HEBREW}`, `${OPEN}${HEBREW}`, CLOSE, `${CLOSE}${OPEN}`),
);

/** Whether isolates open and close in turn, each closed. */
function isBalanced(text: string): boolean {
  let depth = 0;
  for (const sign of text) {
    if (sign === OPEN) depth += 1;
    if (sign === CLOSE) depth -= 1;
    if (depth < 0 || depth > 1) return false;
  }
  return depth === 0;
}

describe('a name that runs from right to left', () => {
  test.each([HEBREW, ARABIC, '\ufe8d', '\u{10840}'])('is kept apart: %s', (name) => {
    expect(isolated(name)).toBe(`${OPEN}${name}${CLOSE}`);
    expect(isolated(isolated(name))).toBe(isolated(name));
    expect(withoutIsolates(isolated(name))).toBe(name);
  });

  test.each(['', 'Pad A', '20 dB pad', '\u0416\u0443\u043a 3', '\u7535\u529b', 'm\u00fc\u00df'])(
    'is no other: “%s” stays as it is',
    (name) => expect(isolated(name)).toBe(name),
  );

  test('is kept apart as words of a sentence too, which follow its decimal sign', () => {
    expect(inDirection(HEBREW)).toBe(isolated(HEBREW));
    expect(inDirection('3.58 MHz, key down')).toBe('3.58 MHz, key down');
  });

  test('stands in a copied sentence with as many isolates opened as closed, whatever it is', () => {
    fc.assert(
      fc.property(names, (name) => {
        for (const words of [plainWords, markdownWords, bbcodeWords]) {
          expect(isBalanced(words(name))).toBe(true);
          expect(isBalanced(words(`${isolated(cleanText(name))}, 27.1 dBm`))).toBe(true);
        }
      }),
    );
  });

  test('is kept apart in every form of text but ASCII, which has no sign for it', () => {
    expect(plainWords(HEBREW)).toBe(`${OPEN}${HEBREW}${CLOSE}`);
    expect(plainWords(`${isolated(ARABIC)}: 3 dB`)).toBe(`${OPEN}${ARABIC}${CLOSE}: 3 dB`);
    expect(asciiWords(`${isolated('\u0645')}: 3 dB`)).toBe('?: 3 dB');
    expect(asciiWords(isolated(HEBREW))).toMatch(/^[ -~]*$/);
  });

  test('loses marks of its own that would turn what stands around it', () => {
    expect(plainWords(`\u202e${HEBREW}\u2067`)).toBe(`${OPEN}${HEBREW}${CLOSE}`);
    expect(cleanedApart(`${OPEN}\u202e${HEBREW}${CLOSE}, 3`, cleanText)).toBe(`${OPEN}${HEBREW}${CLOSE}, 3`);
    expect(cleanedApart(`${OPEN}a`, cleanText)).toBe('a');
  });

  test('is kept apart where it is repeated in a sentence, and where it is cut', () => {
    expect(quoted(HEBREW)).toBe(`\u201c${OPEN}${HEBREW}${CLOSE}\u201d`);
    const cut = cutText(isolated('\u05d0'.repeat(60)), 20);
    expect(isBalanced(cut)).toBe(true);
    expect(cut.endsWith(`\u2026${CLOSE}`)).toBe(true);
  });
});

describe('a name with a number that has a point', () => {
  const NAME = 'Pad 1.5';

  test('is kept apart on the page, once', () => {
    expect(isolated(NAME)).toBe(`${OPEN}${NAME}${CLOSE}`);
    expect(isolated(isolated(NAME))).toBe(isolated(NAME));
    expect(isolated(`${HEBREW}.5`)).toBe(`${OPEN}${HEBREW}.5${CLOSE}`);
  });

  test('leaves the page bare: as text of any form, and as words of a picture', () => {
    for (const words of [plainWords, asciiWords, bbcodeWords]) expect(words(isolated(NAME))).toBe(NAME);
    expect(markdownWords(isolated(NAME))).toBe(markdownWords(NAME));
    expect(cleanedApart(`${isolated(NAME)} and ${isolated(HEBREW)}`, cleanText)).toBe(
      `${NAME} and ${OPEN}${HEBREW}${CLOSE}`,
    );
  });
});
