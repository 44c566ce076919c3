import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  forgetPaper,
  forgetPapers,
  keepPaper,
  lyingPaper,
  lyingPapers,
  newPaperId,
  standingOf,
} from '../../src/store/begun.ts';
import { refusing, storage } from './any-storage.ts';

beforeEach(() => {
  vi.stubGlobal('localStorage', storage());
});
afterEach(() => vi.unstubAllGlobals());

const first = { id: 'a1', text: 'first' };
const second = { id: 'b2', text: 'second' };

describe('papers that are not handed in', () => {
  it('lie beside each other, each by its id, until they are forgotten', () => {
    expect([first, second].map((each) => keepPaper(each, undefined))).toEqual(['kept', 'kept']);
    expect(lyingPapers()).toEqual([first, second]);
    expect(lyingPaper('b2')).toBe('second');
    forgetPaper(first);
    expect(lyingPapers()).toEqual([second]);
  });

  it('are found where one was kept before papers had ids, and nothing else is', () => {
    vi.stubGlobal(
      'localStorage',
      storage({
        'practice:paper': 'old',
        'practice:paper:a1': 'first',
        'practice:papers': 'no',
        other: 'no',
      }),
    );
    expect(lyingPapers()).toEqual([{ id: '', text: 'old' }, first]);
    expect(keepPaper({ id: '', text: 'gone on with' }, 'old')).toBe('kept');
    expect(lyingPaper('')).toBe('gone on with');
  });

  it('are all forgotten at once, and nothing else is', () => {
    const browser = storage({ 'practice:paper': '{', 'practice:paper:a1': 'first', 'lesson:a/b': 'begun' });
    vi.stubGlobal('localStorage', browser);
    forgetPapers();
    expect([...browser.kept.keys()]).toEqual(['lesson:a/b']);
  });

  it('have ids of their own', () => {
    const ids = Array.from({ length: 50 }, newPaperId);
    expect(new Set(ids).size).toBe(50);
    for (const id of ids) expect(id).toMatch(/^[0-9a-f]{16}$/);
  });
});

describe('a paper that two tabs have', () => {
  beforeEach(() => {
    keepPaper(first, undefined);
  });

  it('is kept by the tab that saw it last', () => {
    expect(keepPaper({ ...first, text: 'more' }, 'first')).toBe('kept');
    expect(standingOf({ ...first, text: 'more' })).toBe('kept');
  });

  it('is not written over by a tab that has not seen what the other kept', () => {
    keepPaper({ ...first, text: 'of the other' }, 'first');
    expect(keepPaper({ ...first, text: 'of this one' }, 'first')).toBe('changed');
    expect(keepPaper({ ...first, text: 'of a third' }, undefined)).toBe('changed');
    expect(lyingPaper('a1')).toBe('of the other');
    expect(standingOf(first)).toBe('changed');
  });

  it('does not come back from a tab that has not seen it go', () => {
    forgetPaper(first);
    expect(keepPaper({ ...first, text: 'more' }, 'first')).toBe('gone');
    expect(standingOf(first)).toBe('gone');
    expect(lyingPapers()).toEqual([]);
  });

  it('is not forgotten by a tab that has not seen what the other kept', () => {
    keepPaper({ ...first, text: 'of the other' }, 'first');
    forgetPaper(first);
    expect(lyingPaper('a1')).toBe('of the other');
  });
});

describe('a browser that keeps nothing', () => {
  it('has no papers, says so, and nothing breaks', () => {
    vi.stubGlobal('localStorage', refusing);
    expect(keepPaper(first, undefined)).toBe('refused');
    expect([lyingPapers(), lyingPaper('a1')]).toEqual([[], undefined]);
    expect(() => {
      forgetPaper(first);
      forgetPapers();
    }).not.toThrow();
  });

  it('or has no room left keeps what it had', () => {
    const full = storage({ 'practice:paper:a1': 'first' });
    vi.stubGlobal('localStorage', {
      ...full,
      setItem: () => {
        throw new Error('QuotaExceededError');
      },
    });
    expect(keepPaper({ ...first, text: 'more' }, 'first')).toBe('refused');
    expect(lyingPaper('a1')).toBe('first');
  });
});
