import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillOf, partsOf } from '../../src/stage/fill.ts';

const notes = (inside: string): string => `<article class="slide-notes">${inside}</article>`;

describe('the parts of a step', () => {
  it('are what is for the wall, and the notes in their order', () => {
    expect(partsOf(`<p>a</p>${notes('<p>one</p>')}<p>b</p>${notes('<p>two</p>')}`)).toEqual({
      wall: '<p>a</p><p>b</p>',
      notes: '<p>one</p><p>two</p>',
    });
  });

  it('keep notes within notes where they stand', () => {
    const { wall, notes: told } = partsOf(`<p>a</p>${notes(`<b>what</b>${notes('why')}!`)}${notes('end')}`);
    expect(wall).toBe('<p>a</p>');
    expect(told).toBe('<b>what</b>why!end');
  });

  it('take signs of a replacement as plain text', () => {
    expect(partsOf(notes(`$& ${notes('$1')}`)).notes).toBe('$& $1');
  });

  it('together have every letter, whatever is nested in what', () => {
    const tree = fc.letrec<{ text: string }>((tie) => ({
      text: fc
        .array(
          fc.oneof(
            { depthSize: 'small' },
            fc.constantFrom('a', 'b ', '<p>c</p>'),
            (tie('text') as fc.Arbitrary<string>).map(notes),
          ),
          { maxLength: 4 },
        )
        .map((parts) => parts.join('')),
    }));
    const letters = (html: string): string => [...html.replace(/<[^>]*>/g, '')].sort().join('');
    fc.assert(
      fc.property(tree.text as fc.Arbitrary<string>, (html) => {
        const parts = partsOf(html);
        expect(letters(parts.wall + parts.notes)).toBe(letters(html));
        expect(parts.wall + parts.notes).not.toContain('slide-notes');
      }),
    );
  });
});

describe('how full a wall is', () => {
  const text = (letters: number): string => `<p>${'x'.repeat(letters)}</p>`;

  it('follows the letters that are seen', () => {
    expect([text(20), text(150), text(300)].map(fillOf)).toEqual(['few', 'some', 'many']);
    expect(fillOf(`<p title="${'x'.repeat(300)}">few</p>`)).toBe('few');
  });

  it('is the figure’s where there is one', () => {
    expect(fillOf('<p>x</p><astro-island><svg></svg></astro-island>')).toBe('figure');
  });

  it('of a question leaves out the answer and scripts', () => {
    const guess = (letters: number): string =>
      `<script>${text(900)}</script><astro-island><section class="stage-guess">${text(letters)}
      <details class="answer">${text(900)}</details></section></astro-island>`;
    expect([guess(100), guess(400)].map(fillOf)).toEqual(['guess-few', 'guess']);
  });
});
