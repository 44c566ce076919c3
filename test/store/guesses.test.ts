import { afterEach, describe, expect, it, vi } from 'vitest';
import { keepGuess, keptGuess } from '../../src/store/guesses.ts';

/** As much of a browser's storage as a guess needs. */
function storage() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

const refusing = {
  getItem: () => {
    throw new Error('SecurityError');
  },
  setItem: () => {
    throw new Error('QuotaExceededError');
  },
};

afterEach(() => vi.unstubAllGlobals());

describe('a guess', () => {
  it('comes back as it was kept, for its own question alone', () => {
    vi.stubGlobal('localStorage', storage());
    expect(keepGuess('one', 'b')).toBe(true);
    expect(keptGuess('one')).toBe('b');
    expect(keptGuess('two')).toBeUndefined();
    keepGuess('one', 'c');
    expect(keptGuess('one'), 'the last one counts').toBe('c');
  });

  it('is kept under a key that stays the same for ever', () => {
    const store = storage();
    vi.stubGlobal('localStorage', store);
    keepGuess('chain-weakest-rung', 'd');
    expect([...store.kept]).toEqual([['guess:chain-weakest-rung', 'd']]);
  });

  it('is lost without a word where the browser keeps nothing', () => {
    vi.stubGlobal('localStorage', refusing);
    expect(keepGuess('one', 'b')).toBe(false);
    expect(keptGuess('one')).toBeUndefined();
  });

  it('is lost without a word where there is no storage at all', () => {
    vi.stubGlobal('localStorage', undefined);
    expect(keepGuess('one', 'b')).toBe(false);
    expect(keptGuess('one')).toBeUndefined();
  });
});
