import { afterEach, describe, expect, it, vi } from 'vitest';
import { keepHands, keptHands } from '../../src/store/hands.ts';
import { keepSigns, keptSigns } from '../../src/store/signs.ts';
import { keepTalk, keptTalk } from '../../src/store/talk.ts';

/** As much of a browser's storage as the stage needs. */
function storage(begun: Readonly<Record<string, string>> = {}) {
  const kept = new Map(Object.entries(begun));
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

const refuse = (): never => {
  throw new Error('SecurityError');
};
const refusing = { getItem: refuse, setItem: refuse };

afterEach(() => vi.unstubAllGlobals());

describe('hands of a room', () => {
  it('come back in the same sitting, for their own question alone', () => {
    vi.stubGlobal('sessionStorage', storage());
    expect(keepHands('one', { a: '7', b: '' })).toBe(true);
    expect(keptHands('one')).toEqual({ a: '7', b: '' });
    expect(keptHands('two')).toEqual({});
  });

  it.each(['{', '7', 'null', '{"a":7}'])('are none where something else lies: %s', (found) => {
    vi.stubGlobal('sessionStorage', storage({ 'hands:one': found }));
    expect(keptHands('one')).toEqual({});
  });

  it('are none, and nothing breaks, where the browser keeps nothing', () => {
    vi.stubGlobal('sessionStorage', refusing);
    expect([keepHands('one', { a: '7' }), keptHands('one')]).toEqual([false, {}]);
  });
});

describe('keys of one sign', () => {
  it('are heard until they are switched off, and again when switched on', () => {
    vi.stubGlobal('localStorage', storage());
    expect(keptSigns()).toBe(true);
    expect([keepSigns(false), keptSigns()]).toEqual([true, false]);
    expect([keepSigns(true), keptSigns()]).toEqual([true, true]);
  });

  it('are heard where the browser keeps nothing', () => {
    vi.stubGlobal('localStorage', refusing);
    expect([keepSigns(false), keptSigns()]).toEqual([false, true]);
  });
});

describe('a talk', () => {
  it('comes back as it was kept', () => {
    vi.stubGlobal('localStorage', storage());
    expect(keptTalk()).toEqual([]);
    expect(keepTalk(['a.b.c', 'a.b.d'])).toBe(true);
    expect(keptTalk()).toEqual(['a.b.c', 'a.b.d']);
  });

  it.each(['{', '7', '{"a":1}', '[1,null]'])('is none where something else lies: %s', (found) => {
    vi.stubGlobal('localStorage', storage({ 'stage:talk': found }));
    expect(keptTalk()).toEqual([]);
  });

  it('is none, and nothing breaks, where the browser keeps nothing', () => {
    vi.stubGlobal('localStorage', refusing);
    expect([keepTalk(['a.b.c']), keptTalk()]).toEqual([false, []]);
  });
});
