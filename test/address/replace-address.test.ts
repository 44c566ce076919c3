import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addressToBe, replaceAddress } from '../../src/address/replace-address.ts';

/** A browser that refuses as long as it is told to. */
const page = { refuses: false, href: 'https://club.example/bench/', state: { kept: 1 } as unknown };
let tries = 0;

beforeEach(() => {
  vi.useFakeTimers();
  tries = 0;
  Object.assign(page, { refuses: false, href: 'https://club.example/bench/', state: { kept: 1 } });
  vi.stubGlobal('location', page);
  vi.stubGlobal('history', {
    get state() {
      return page.state;
    },
    replaceState: (state: unknown, _title: string, url: string): void => {
      tries += 1;
      if (page.refuses) throw new DOMException('too many', 'SecurityError');
      Object.assign(page, { state, href: new URL(url, page.href).href });
    },
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('an address that is put in place of another', () => {
  it('is there at once, beside what its entry knew', () => {
    replaceAddress('#a=1');
    expect(page).toMatchObject({ href: 'https://club.example/bench/#a=1', state: { kept: 1 } });
    replaceAddress('#a=2', () => null);
    expect(page).toMatchObject({ href: 'https://club.example/bench/#a=2', state: null });
  });

  it('comes later where the browser refuses it, with what its entry knows by then', () => {
    page.refuses = true;
    expect(() => replaceAddress('#a=1', (now) => ({ before: now }))).not.toThrow();
    expect(page.href).toBe('https://club.example/bench/');
    Object.assign(page, { refuses: false, state: { kept: 2 } });
    vi.advanceTimersByTime(60_000);
    expect(page).toMatchObject({ href: 'https://club.example/bench/#a=1', state: { before: { kept: 2 } } });
    expect(tries).toBe(2);
  });

  it('is what a later one adds to, as long as the reader has not moved on', () => {
    page.refuses = true;
    replaceAddress('/bench/?a=1#figure');
    expect(addressToBe().href).toBe('https://club.example/bench/?a=1#figure');
    page.refuses = false;
    replaceAddress(`${addressToBe().search}&b=2`);
    expect(page.href).toBe('https://club.example/bench/?a=1&b=2');
    expect(addressToBe().href).toBe(page.href);
    page.refuses = true;
    replaceAddress('?c=3');
    Object.assign(page, { href: 'https://club.example/bench/#b=1' });
    expect(addressToBe().href).toBe(page.href);
  });

  it('is overtaken by a later one, and by the reader who follows another link', () => {
    page.refuses = true;
    replaceAddress('#a=1');
    page.refuses = false;
    replaceAddress('#a=2');
    vi.advanceTimersByTime(60_000);
    expect(page.href).toBe('https://club.example/bench/#a=2');
    page.refuses = true;
    replaceAddress('#a=3');
    Object.assign(page, { refuses: false, href: 'https://club.example/bench/#b=1' });
    vi.advanceTimersByTime(60_000);
    expect(page.href).toBe('https://club.example/bench/#b=1');
  });

  it('is given up where it is refused for good', () => {
    page.refuses = true;
    replaceAddress('#a=1');
    vi.advanceTimersByTime(600_000);
    expect(tries).toBe(8);
    expect(vi.getTimerCount()).toBe(0);
  });
});
