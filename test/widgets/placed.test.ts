import { afterEach, describe, expect, it, vi } from 'vitest';
import { placed } from '../../src/widgets/parts/address.ts';

/** A page with figures of these ids, looked at from this address. */
function at(pathname: string, hash: string, ...ids: readonly string[]): void {
  vi.stubGlobal('location', { pathname, hash });
  vi.stubGlobal('document', { getElementById: (id: string) => (ids.includes(id) ? {} : null) });
}

describe('an address that carries a changed figure', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('leads to the figure, so that a reader who is sent it does not take the top of the page for it', () => {
    at('/examples/low-on-the-scale/', '', 'figure', 'two');
    expect(placed('?sc=25&v=1', undefined)).toBe('?sc=25&v=1#figure');
    expect(placed('?two.ph=90&two.v=1', 'two')).toBe('?two.ph=90&two.v=1#two');
  });

  it('leaves a place that the reader came to, also where all is as prepared again', () => {
    at('/learn/a/', '#mistakes', 'figure');
    expect(placed('?a=1&v=1', undefined)).toBe('?a=1&v=1#mistakes');
    expect(placed('', undefined)).toBe('#mistakes');
  });

  it('names no place for what is as prepared, for a figure that stands alone, and where there is none', () => {
    at('/learn/a/', '', 'figure');
    expect(placed('', undefined)).toBe('');
    expect(placed('?two.a=1&two.v=1', 'two')).toBe('?two.a=1&two.v=1');
    at('/club/embed/a/', '', 'figure');
    expect(placed('?a=1&v=1', undefined)).toBe('?a=1&v=1');
  });
});
