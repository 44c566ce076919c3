import { expect, test } from 'vitest';
import { withBase } from '../../src/build/base-links.ts';

test.each([
  ['/', '/learn/', '/learn/'],
  ['/club/watt/', '/learn/', '/club/watt/learn/'],
  ['/club/watt', '/learn/#a', '/club/watt/learn/#a'],
])('under %s the address %s is %s', (base, url, wished) => {
  expect(withBase(base, url)).toBe(wished);
});

test.each(['//host.example/', 'https://host.example/', '#place', '?a=1', 'next/'])(
  '%s is left alone',
  (url) => {
    expect(withBase('/club/watt/', url)).toBe(url);
  },
);
