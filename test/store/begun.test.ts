import { afterEach, describe, expect, it, vi } from 'vitest';
import { forgetBegun, keepBegun, keptBegun } from '../../src/store/begun.ts';

function storage(begun: Readonly<Record<string, string>> = {}) {
  const kept = new Map(Object.entries(begun));
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  };
}

const refuse = (): never => {
  throw new Error('SecurityError');
};

afterEach(() => vi.unstubAllGlobals());

describe('a paper that is not handed in', () => {
  it('comes back until it is forgotten', () => {
    vi.stubGlobal('localStorage', storage());
    expect(keptBegun()).toBeUndefined();
    expect(keepBegun({ seed: 7 })).toBe(true);
    expect(keptBegun()).toEqual({ seed: 7 });
    forgetBegun();
    expect(keptBegun()).toBeUndefined();
  });

  it('is none where something else lies', () => {
    vi.stubGlobal('localStorage', storage({ 'practice:paper': '{' }));
    expect(keptBegun()).toBeUndefined();
  });

  it('is none, and nothing breaks, where the browser keeps nothing', () => {
    vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse, removeItem: refuse });
    expect([keepBegun({}), keptBegun()]).toEqual([false, undefined]);
    expect(forgetBegun).not.toThrow();
  });
});
