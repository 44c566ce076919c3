import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { fold, tokensOf, wordsOf } from '../../src/search/terms.ts';

describe('the words of a text', () => {
  it.each([
    ['a 20 dB pad, 50 Ω', ['a', '20', 'dB', 'pad', '50', 'Ω']],
    ['−13.4 dBm ±0.5 dB', ['13.4', 'dBm', '0.5', 'dB']],
    ['can’t tell', ['can’t', 'tell']],
    ['“in-line” meters’', ['in', 'line', 'meters']],
    ['k=2', ['k', '2']],
    ['50\u2126', ['50', 'Ω']],
    ['', []],
    ['±…—/', []],
  ])('%s', (text, words) => expect(wordsOf(text)).toEqual(words));

  it('stand where they are said to stand', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (text) => {
        for (const { word, from } of tokensOf(text)) expect(text.slice(from, from + word.length)).toBe(word);
      }),
    );
  });
});

describe('words are compared in a form that is the same', () => {
  test.each([
    ['for both sides of the Atlantic', ['colour', 'Color', 'COLOURS']],
    ['for both sides of the Atlantic', ['realisation', 'realization', 'realised', 'realize']],
    ['for both sides of the Atlantic', ['labelled', 'labeled', 'labelling']],
    ['for both sides of the Atlantic', ['kilometre', 'kilometers']],
    ['for both sides of the Atlantic', ['licence', 'license', 'licenced']],
    ['for one and several', ['pad', 'pads']],
    ['for one and several', ['loss', 'losses']],
    ['for one and several', ['box', 'boxes']],
    ['for one and several', ['uncertainty', 'uncertainties']],
    ['for doing and done', ['calibrate', 'calibrated', 'calibration', 'calibrating', 'calibrations']],
    ['for doing and done', ['measure', 'measured', 'measuring']],
    ['with apostrophes and accents or without', ['can’t', "can't", 'cant', 'CÁNT']],
    ['of one letter in either code', ['\u00b5', '\u03bc']],
  ])('%s: %o', (_why, words) => {
    expect(new Set(words.map(fold)).size).toBe(1);
    expect(fold(words[0] ?? '')).toBeDefined();
  });

  test.each([
    ['bias', 'bia'],
    ['gauss', 'gaus'],
    ['load', 'loss'],
    ['metre', 'met'],
    ['hour', 'hor'],
    ['1.5', '15'],
  ])('and not for two different ones: %s, %s', (one, other) => expect(fold(one)).not.toBe(fold(other)));

  it.each(['the', 'What', 'IS', '', '’'])('and not for what says nothing: %s', (word) =>
    expect(fold(word)).toBeUndefined(),
  );

  it('is never longer by more than its letters take to be written out, and never fails', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (word) => {
        const term = fold(word);
        expect(term === undefined || term.length > 0).toBe(true);
      }),
    );
  });
});
