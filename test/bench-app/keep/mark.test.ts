import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { aheadOf, idIn, KEPT_PLACE, markIn } from '../../../src/bench/keep/mark.ts';
import { markOf, type Standing, setMark } from '../../../src/bench/keep/set-mark.ts';
import { newId } from '../../../src/store/kept.ts';

afterEach(() => vi.unstubAllGlobals());

describe('the mark of a history entry', () => {
  it('is read whatever stands there, and is none where it says nothing of a sheet', () => {
    fc.assert(
      fc.property(fc.anything(), (state) => {
        const mark = markIn(state);
        if (mark !== undefined) expect(typeof mark.id).toBe('string');
      }),
    );
    for (const state of [
      null,
      7,
      {},
      { kept: null },
      { kept: { id: 'a' } },
      { kept: { id: 1, revision: 1 } },
    ])
      expect(markIn(state)).toBeUndefined();
    expect(markIn({ kept: { id: 'a', revision: 3, more: 1 } })).toEqual({ id: 'a', revision: 3 });
  });

  it('is ahead once the address was written after keeping, and an entry without one stays as it is', () => {
    const ahead = aheadOf({ other: 1, kept: { id: 'a', revision: 3 } });
    expect(ahead).toEqual({ other: 1, kept: { id: 'a', revision: 3, ahead: true } });
    expect(markIn(ahead)).toEqual({ id: 'a', revision: 3, ahead: true });
    expect(aheadOf(null)).toBeNull();
    expect(aheadOf({ other: 1 })).toEqual({ other: 1 });
  });

  it('is none as long as the sheet is not kept', () => {
    expect(markOf({ id: 'a', revision: undefined, clean: false }, undefined)).toBeUndefined();
  });

  it('stays ahead until the sheet is kept, and another sheet is not', () => {
    const now = { id: 'a', revision: 3, ahead: true } as const;
    expect(markOf({ id: 'a', revision: 3, clean: false }, now)).toEqual(now);
    expect(markOf({ id: 'a', revision: 4, clean: true }, now)).toEqual({ id: 'a', revision: 4 });
    expect(markOf({ id: 'b', revision: 3, clean: false }, now)).toEqual({ id: 'b', revision: 3 });
  });
});

describe('the place of a kept sheet in an address', () => {
  it('names any id that a sheet gets', () => {
    const id = newId();
    expect(idIn(`#${KEPT_PLACE}${id}`)).toBe(id);
  });

  it.each(['', '#', '#main', '#kept-', '#kept-a b', '#kept-a&v=2', '#t=kept-a&v=2', 'kept-a'])(
    'is none in %s',
    (hash) => expect(idIn(hash)).toBeUndefined(),
  );
});

describe('noting a mark', () => {
  /** As much of a browser's history as a mark needs. */
  function entry(state: unknown) {
    const history = {
      state,
      writes: 0,
      replaceState(next: unknown) {
        history.state = next;
        history.writes += 1;
      },
    };
    vi.stubGlobal('history', history);
    return history;
  }
  const kept: Standing = { id: 'a', revision: 3, clean: true };

  it('leaves the rest of the state alone, and writes only what is new', () => {
    const history = entry({ other: 1 });
    setMark(kept);
    setMark(kept);
    expect(history).toMatchObject({ writes: 1, state: { other: 1, kept: { id: 'a', revision: 3 } } });
    setMark({ ...kept, revision: undefined });
    expect(history).toMatchObject({ writes: 2, state: { other: 1 } });
    expect(history.state).not.toHaveProperty('kept');
  });

  it('does no harm where the browser takes no more changes', () => {
    const history = entry(null);
    history.replaceState = () => {
      throw new DOMException('too many', 'SecurityError');
    };
    expect(() => setMark(kept)).not.toThrow();
    expect(history.state).toBeNull();
  });
});
