import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutText } from '../../src/figures/cut-text.ts';

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
