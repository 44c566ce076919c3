import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brokenText, cutText, fittingText } from '../../src/figures/cut-text.ts';

test('a name that fits stays as it is', () => {
  expect(cutText('Spread of the transmitter', 30)).toBe('Spread of the transmitter');
  expect(cutText('', 30)).toBe('');
});

test('a longer one ends where its place does, with a sign that something is left out', () => {
  expect(cutText('The pad that the neighbours lent us in May', 20)).toBe('The pad that the n…');
});

test('capitals and ideographs take more room, accents none', () => {
  expect([...cutText('W'.repeat(40), 20)]).toHaveLength(11);
  expect([...cutText('電'.repeat(40), 20)]).toHaveLength(11);
  expect(cutText('e\u0301'.repeat(20), 20)).toBe('e\u0301'.repeat(20));
});

test('no name is longer than its place, whatever it is, and none is cut that fits', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 80 }),
      fc.integer({ min: 4, max: 40 }),
      (text, letters) => {
        const cut = cutText(text, letters);
        if (cut === text) return;
        expect(cut.endsWith('…')).toBe(true);
        expect(text.startsWith(cut.slice(0, -1))).toBe(true);
        expect([...cut.replace(/\p{M}/gu, '')].length).toBeLessThanOrEqual(letters + 1);
        expect(cutText(text, 2 * [...text].length)).toBe(text);
      },
    ),
  );
});

const anyText = () => fc.string({ unit: 'grapheme', maxLength: 80 });
const STATEMENT = 'adds ±0.1234\u00a0dB, limits known to ±0.0123\u00a0dB · most';

test('words that have no room in one line are broken at a space into two', () => {
  expect(brokenText(STATEMENT, [33, 22])).toBe(
    'adds ±0.1234\u00a0dB, limits known\nto ±0.0123\u00a0dB · most',
  );
  expect(brokenText('adds ±0.5\u00a0dB, limits', [33, 22])).toBe('adds ±0.5\u00a0dB, limits');
  expect(brokenText('a'.repeat(40), [33, 22]), 'without a space').toBe(`${'a'.repeat(32)}…`);
});

test('both lines fit, nothing is lost but what is marked as left out', () => {
  fc.assert(
    fc.property(
      anyText(),
      fc.integer({ min: 4, max: 40 }),
      fc.integer({ min: 4, max: 40 }),
      (text, one, two) => {
        fc.pre(!text.includes('\n'));
        const lines = brokenText(text, [one, two]).split('\n');
        expect(lines.length).toBeLessThanOrEqual(2);
        expect([...(lines[0] ?? '').replace(/\p{M}/gu, '')].length).toBeLessThanOrEqual(one + 1);
        const joined = lines.join(' ');
        if (joined !== text)
          expect(text.startsWith(joined.slice(0, joined.lastIndexOf('…')).trimEnd())).toBe(true);
      },
    ),
  );
});

test('a name that is kept no longer than its place is its beginning, without a sign', () => {
  expect(fittingText('MY OWN DIRECTIONAL COUPLER', 29)).toBe('MY OWN DIRECTIONA');
  expect(fittingText('My own directional coupler', 29)).toBe('My own directional coupler');
  fc.assert(
    fc.property(anyText(), fc.integer({ min: 1, max: 40 }), (text, letters) => {
      expect(text.startsWith(fittingText(text, letters))).toBe(true);
      expect(cutText(fittingText(text, letters), letters)).toBe(fittingText(text, letters));
    }),
  );
});
