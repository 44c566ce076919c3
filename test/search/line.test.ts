import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineOf } from '../../src/search/line.ts';
import { fold } from '../../src/search/terms.ts';

const part = (text: string, title = '', at = '') => ({ at, title, text });
const text = (line: ReturnType<typeof lineOf>): string => line.pieces.map((piece) => piece.text).join('');
const hits = (line: ReturnType<typeof lineOf>): readonly string[] =>
  line.pieces.filter(({ isHit }) => isHit).map((piece) => piece.text);
const terms = (...words: string[]): readonly string[] => words.map((word) => fold(word) ?? '');

describe('the line of a hit', () => {
  it('is from the part that has most of the words, with its place', () => {
    const parts = [
      part('One pad.'),
      part('A hot pad, hotter pads.', 'Heat', 'heat'),
      part('hot pad', 'Later', 'later'),
    ];
    const line = lineOf(parts, terms('hot', 'pad'));
    expect(line).toMatchObject({ at: 'heat', title: 'Heat' });
    expect(text(line)).toBe('A hot pad, hotter pads.');
    expect(hits(line)).toEqual(['hot', 'pad', 'pads']);
  });

  it('counts what the heading of a part says', () => {
    const parts = [part('The pad.', 'Cables', 'a'), part('The pad.', 'Heat', 'b')];
    expect(lineOf(parts, terms('pad', 'heat')).at).toBe('b');
    expect(lineOf([part('Nothing.'), part('', 'Heat', 'b')], terms('heat')).at).toBe('b');
  });

  it('points at other names of what was asked for', () => {
    expect(hits(lineOf([part('An attenuator in front')], terms('pad')))).toEqual(['attenuator']);
  });

  it('is the beginning where no word stands in the text', () => {
    expect(text(lineOf([part('It begins here.'), part('And ends.')], terms('pad')))).toBe('It begins here.');
    expect(lineOf([], terms('pad'))).toEqual({ at: '', title: '', pieces: [] });
  });

  it('is cut at words out of a long text, and says so', () => {
    const long = `${'before '.repeat(60)}the pad ${'after '.repeat(60)}`.trim();
    const line = lineOf([part(long)], terms('pad'));
    expect(text(line)).toMatch(/^… before .*\bthe pad after .* after …$/);
    expect(hits(line)).toEqual(['pad']);
    expect(text(line).length).toBeLessThan(180);
  });

  it('takes the stretch with most of the words out of a long text', () => {
    const long = `pad ${'and so on '.repeat(60)} a hot pad`;
    expect(hits(lineOf([part(long)], terms('hot', 'pad')))).toEqual(['hot', 'pad']);
  });

  it('is a piece of the text whatever the text, never much longer than a line', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 600 }), fc.array(fc.string()), (any, more) => {
        const line = text(lineOf([part(`${any} pad ${any}`)], ['pad', ...more]));
        expect(`${any} pad ${any}`).toContain(line.replace(/^… | …$/g, ''));
        expect(line.length).toBeLessThanOrEqual(175);
      }),
    );
  });
});
