import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mendedPath } from '../../src/address/mended-path.ts';

const at = (pathname: string, search = '') => mendedPath({ pathname, search });

describe('an address whose # was written as %23', () => {
  it('is mended to the page and its state', () => {
    expect(at('/bench/%23l=2&l1g=20&v=1')).toBe('/bench/#l=2&l1g=20&v=1');
    expect(at('/club/watt/bench%23l=2&v=1')).toBe('/club/watt/bench/#l=2&v=1');
  });

  it('keeps what came after a question mark with it', () => {
    expect(at('/bench/%23t=a', '?b&v=1')).toBe('/bench/#t=a?b&v=1');
  });

  it('never leads to another host', () => {
    expect(at('//elsewhere.example/%23a=1')).toBe('/elsewhere.example/#a=1');
    expect(at('/\\\\elsewhere.example/%23a=1')).toBe('/elsewhere.example/#a=1');
    fc.assert(
      fc.property(fc.string(), (tail) => {
        const mended = at(`//${tail}%23x=1`);
        if (mended !== undefined) expect(new URL(mended, 'https://club.example').host).toBe('club.example');
      }),
    );
  });

  it('is left alone where there is nothing to mend', () => {
    expect(at('/no/such/page/', '?a=%23')).toBeUndefined();
  });
});
