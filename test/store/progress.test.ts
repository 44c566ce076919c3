import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { forgetLearning, remembers } from '../../src/store/learning.ts';
import { beginLesson, keepProgress, keptProgress } from '../../src/store/progress.ts';
import { refusing, storage } from './any-storage.ts';

afterEach(() => vi.unstubAllGlobals());

describe('progress', () => {
  it('begins when a lesson is opened, and comes back for that lesson alone', () => {
    vi.stubGlobal('localStorage', storage());
    expect(keptProgress('a/b')).toBeUndefined();
    expect(beginLesson('a/b')).toBe(true);
    expect(keptProgress('a/b')).toBe('begun');
    expect(keptProgress('a/c')).toBeUndefined();
  });

  it('is not undone by opening a finished lesson again', () => {
    vi.stubGlobal('localStorage', storage());
    keepProgress('a/b', 'finished');
    beginLesson('a/b');
    expect(keptProgress('a/b')).toBe('finished');
  });

  it('that another tab finishes while a lesson is opened again stays finished', () => {
    const store = storage({ 'lesson:a/b': 'begun' });
    const readThenFinished = (key: string): string | null => {
      const before = store.getItem(key);
      store.setItem(key, 'finished');
      return before;
    };
    vi.stubGlobal('localStorage', { ...store, getItem: readThenFinished });
    beginLesson('a/b');
    expect(store.kept.get('lesson:a/b')).toBe('finished');
  });

  it('is kept under a key that stays the same for ever', () => {
    const store = storage();
    vi.stubGlobal('localStorage', store);
    keepProgress('traceability/the-chain-to-the-definition', 'finished');
    expect([...store.kept]).toEqual([['lesson:traceability/the-chain-to-the-definition', 'finished']]);
  });

  it('of a kind that nobody knows is none', () => {
    vi.stubGlobal('localStorage', storage({ 'lesson:a/b': 'half' }));
    expect(keptProgress('a/b')).toBeUndefined();
  });

  it('is forgotten with the guesses, and nothing else that is kept is', () => {
    const key = fc.oneof(
      fc.string({ minLength: 1 }),
      fc.string().map((rest) => `lesson:${rest}`),
      fc.string().map((rest) => `guess:${rest}`),
    );
    fc.assert(
      fc.property(fc.uniqueArray(key), (keys) => {
        const store = storage();
        for (const one of keys) store.setItem(one, 'x');
        vi.stubGlobal('localStorage', store);
        expect(forgetLearning()).toBe(true);
        expect([...store.kept.keys()]).toEqual(keys.filter((one) => !/^(lesson|guess):/.test(one)));
      }),
    );
  });

  it('leaves nothing behind when it asks whether the browser remembers', () => {
    const store = storage();
    vi.stubGlobal('localStorage', store);
    expect(remembers()).toBe(true);
    expect(store.kept.size).toBe(0);
  });
});

describe.each([
  ['refuses', refusing],
  ['has no storage', undefined],
])('where the browser %s, progress', (_, store) => {
  it('does no harm and says that it is not kept', () => {
    vi.stubGlobal('localStorage', store);
    expect(keptProgress('a/b')).toBeUndefined();
    expect(beginLesson('a/b')).toBe(false);
    expect(keepProgress('a/b', 'finished')).toBe(false);
    expect(forgetLearning()).toBe(false);
    expect(remembers()).toBe(false);
  });
});
