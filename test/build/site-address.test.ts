import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { siteAddress } from '../../src/build/site-address.ts';

const part = fc.stringMatching(/^[a-z0-9]{1,8}$/);

describe('where the site is published', () => {
  test('comes from one setting: its path becomes the base, with or without slashes at its end', () => {
    const address = { origin: 'https://club.example', base: '/club/watt/', stated: true };
    expect(siteAddress('https://club.example/club/watt/')).toEqual(address);
    expect(siteAddress('https://club.example/club/watt')).toEqual(address);
    expect(siteAddress('https://club.example').base).toBe('/');
    expect(siteAddress('http://club.example:8080/x').origin).toBe('http://club.example:8080');
  });

  test('takes a base that is given apart before the path of the address', () => {
    expect(siteAddress('https://club.example', '/watt/').base).toBe('/watt/');
    expect(siteAddress('https://club.example/else/', 'watt').base).toBe('/watt/');
    expect(siteAddress('https://club.example/else/', '/').base).toBe('/');
  });

  test('makes an address of origin and base that is the stated one, for any path', () => {
    fc.assert(
      fc.property(fc.array(part, { maxLength: 4 }), fc.boolean(), (parts, slash) => {
        const url = `https://club.example/${parts.join('/')}${slash ? '/' : ''}`;
        const { origin, base } = siteAddress(url);
        expect(new URL(base, origin).href).toBe(url.replace(/\/*$/, '/'));
        expect(siteAddress(origin, base)).toEqual(siteAddress(url));
      }),
    );
  });

  test('is a host reserved for examples, and known as such, where nobody said it', () => {
    expect(siteAddress(undefined)).toEqual({ origin: 'https://example.org', base: '/', stated: false });
    expect(siteAddress('', '/watt/')).toEqual({
      origin: 'https://example.org',
      base: '/watt/',
      stated: false,
    });
  });

  test.each([
    'club.example',
    'ftp://club.example/',
    'https://',
    'https://club.example/?a=1',
    'https://club.example/#a',
    'https://club.example/watt/index.html',
  ])('is refused as %s, which no page can be fetched from', (url) => {
    expect(() => siteAddress(url)).toThrow(RangeError);
  });
});
