import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  isPart,
  MOST_PARTS,
  movedBy,
  partAddress,
  readTalk,
  talkQuery,
  withoutAt,
  withPart,
} from '../../src/stage/talk.ts';

const word = fc.stringMatching(/^[a-z0-9-]{1,12}$/);
const part = fc.tuple(word, word, word).map((words) => words.join('.'));
const talk = fc.array(part, { maxLength: 12 });

describe('a talk in an address', () => {
  it('comes back as it was', () => {
    fc.assert(
      fc.property(talk, (parts) => {
        expect(readTalk(talkQuery(parts))).toEqual(parts);
      }),
    );
  });

  it('needs nothing escaped, and has its version last', () => {
    fc.assert(
      fc.property(talk, (parts) => {
        const query = talkQuery(parts);
        expect(new URL(query, 'https://example.org/').search).toBe(query);
        if (parts.length > 0) expect(query.endsWith('&v=1')).toBe(true);
      }),
    );
  });

  it('leaves out what is no part, and what is too much', () => {
    expect(readTalk('?parts=a.b.c~..~../x~a.b~A.b.c~a.b.c/d~&v=1')).toEqual(['a.b.c']);
    const many = Array.from({ length: MOST_PARTS + 5 }, () => 'a.b.c');
    expect(readTalk(talkQuery(many))).toHaveLength(MOST_PARTS);
    expect(readTalk('')).toEqual([]);
  });

  it('leads to pages of this site alone, whatever it says', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const here = new URL('https://example.org/stage/talk/');
        for (const one of readTalk(`?parts=${encodeURIComponent(text)}`)) {
          const { origin, pathname } = new URL(partAddress(one, { isNotes: false, turn: 1 }), here);
          expect(origin).toBe(here.origin);
          expect(pathname).toMatch(/^\/stage\/(learn\/[a-z0-9-]+|examples)\/[a-z0-9-]+\/$/);
        }
      }),
    );
  });
});

describe('a part', () => {
  it('is shown from its lesson or its example', () => {
    expect(partAddress('decibels.halves.guess', { isNotes: false, turn: 2 })).toBe(
      '../learn/decibels/halves/?part=2#guess',
    );
    expect(partAddress('examples.two-pads.answer', { isNotes: true, turn: 12 })).toBe(
      '../examples/two-pads/?part=12&notes#answer',
    );
  });

  it.each(['', 'a.b', 'a.b.c.d', 'a b.c.d', '../a.b.c', `a.${'b'.repeat(61)}.c`])('is not %j', (text) =>
    expect(isPart(text)).toBe(false),
  );
});

describe('a talk that is put together', () => {
  it('takes a part at its end, and no more than fit', () => {
    expect(withPart(['a.b.c'], 'a.b.d')).toEqual(['a.b.c', 'a.b.d']);
    expect(withPart(['a.b.c'], 'nonsense')).toEqual(['a.b.c']);
    const full = Array.from({ length: MOST_PARTS }, () => 'a.b.c');
    expect(withPart(full, 'a.b.d')).toBe(full);
  });

  it('loses one part where one is taken out', () => {
    expect(withoutAt(['a.b.c', 'a.b.d', 'a.b.c'], 0)).toEqual(['a.b.d', 'a.b.c']);
  });

  it('has the same parts in another order where one is moved, and moving back undoes it', () => {
    const placed = fc.integer({ min: -3, max: 14 });
    fc.assert(
      fc.property(talk, placed, fc.constantFrom(-1, 1), (parts, at, by) => {
        const moved = movedBy(parts, at, by);
        expect([...moved].sort()).toEqual([...parts].sort());
        const isWithin = at >= 0 && at < parts.length && at + by >= 0 && at + by < parts.length;
        expect(isWithin ? movedBy(moved, at + by, -by) : moved).toEqual(parts);
      }),
    );
  });
});
