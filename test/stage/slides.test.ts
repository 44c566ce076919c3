import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NEXT_SLIDE, slideId, slidesOf } from '../../src/stage/slides.ts';

const notes = (inside: string): string => `<article class="slide-notes">${inside}</article>`;

describe('the slides of a step', () => {
  it('are one where nothing is cut', () => expect(slidesOf('<p>a</p>')).toEqual(['<p>a</p>']));

  it('begin at each mark, and not with nothing', () => {
    expect(slidesOf(`${NEXT_SLIDE}<p>a</p>${NEXT_SLIDE}<p>b</p>`)).toEqual(['<p>a</p>', '<p>b</p>']);
    expect(slidesOf(`<p>first</p>${NEXT_SLIDE}<p>a</p>`)).toEqual(['<p>first</p>', '<p>a</p>']);
    expect(slidesOf(` <!-- nothing --> ${NEXT_SLIDE}<p>a</p>`)).toEqual(['<p>a</p>']);
  });

  it('are not cut within the notes', () => {
    expect(slidesOf(`<p>a</p>${notes(`b${NEXT_SLIDE}${notes('c')}${NEXT_SLIDE}`)}`)).toEqual([
      `<p>a</p>${notes(`b${notes('c')}`)}`,
    ]);
  });

  it('together have everything but the marks', () => {
    const piece = fc.constantFrom('<p>a</p>', 'b', notes('c'), notes(`d${NEXT_SLIDE}e`), NEXT_SLIDE);
    fc.assert(
      fc.property(fc.array(piece), (pieces) => {
        const html = pieces.join('');
        expect(slidesOf(html).join('')).toBe(html.replaceAll(NEXT_SLIDE, ''));
      }),
    );
  });

  it('have ids of their own, the first that of the step', () => {
    expect([0, 1, 2].map((at) => slideId('mistakes', at))).toEqual(['mistakes', 'mistakes-2', 'mistakes-3']);
  });
});
