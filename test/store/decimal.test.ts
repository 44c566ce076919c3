import { afterEach, describe, expect, it, vi } from 'vitest';

let page: EventTarget;
const refuse = (): never => {
  throw new Error('SecurityError');
};

/** As much of a browser as the choice needs: what is kept, and other tabs to hear of. */
function browser(kept: Map<string, string> | undefined): void {
  vi.stubGlobal('localStorage', {
    getItem: kept ? (key: string) => kept.get(key) ?? null : refuse,
    setItem: kept ? (key: string, value: string) => void kept.set(key, value) : refuse,
  });
  page = new EventTarget();
  for (const name of ['addEventListener', 'removeEventListener', 'dispatchEvent'] as const)
    vi.stubGlobal(name, page[name].bind(page));
}

/** The store as a page that was just opened has it. */
const opened = async () => {
  vi.resetModules();
  vi.stubGlobal('decimalSign', undefined);
  return {
    ...(await import('../../src/store/decimal.ts')),
    ...(await import('../../src/store/keep-decimal.ts')),
  };
};

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

describe('the decimal sign of a reader', () => {
  it('is a point until chosen, and what was chosen comes back on the next page', async () => {
    const kept = new Map<string, string>();
    browser(kept);
    const first = await opened();
    expect(first.keptDecimal()).toBe('point');
    first.keepDecimal('comma');
    const next = await opened();
    expect(next.keptDecimal()).toBe('comma');
    next.keepDecimal('point');
    expect((await opened()).keptDecimal()).toBe('point');
  });

  it('holds for this page alone where the browser keeps nothing', async () => {
    browser(undefined);
    const store = await opened();
    expect(store.keptDecimal()).toBe('point');
    store.keepDecimal('comma');
    expect(store.keptDecimal()).toBe('comma');
    expect((await opened()).keptDecimal()).toBe('point');
  });

  it('is a point where something else is kept', async () => {
    const kept = new Map<string, string>();
    browser(kept);
    const store = await opened();
    store.keepDecimal('comma');
    for (const key of kept.keys()) kept.set(key, 'apostrophe');
    expect((await opened()).keptDecimal()).toBe('point');
  });

  it('is told to whoever listens, from this page and from another tab', async () => {
    const kept = new Map<string, string>();
    browser(kept);
    const store = await opened();
    const heard: string[] = [];
    const follow = () => heard.push(store.keptDecimal());
    addEventListener('storage', follow);
    store.keepDecimal('comma');
    const [key = ''] = kept.keys();
    kept.set(key, 'point');
    // what a browser says when another tab has kept something
    page.dispatchEvent(new Event('storage'));
    expect(heard).toEqual(['comma', 'point']);
  });
});
