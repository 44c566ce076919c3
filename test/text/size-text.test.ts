import { expect, test } from 'vitest';
import { sizeText } from '../../src/text/size-text.ts';

test('a file’s size is told in bytes, kB and MB with two digits or three', () => {
  expect([0, 999, 1000, 9_949, 812_400, 999_499, 999_500, 5_000_000, 123_456_789].map(sizeText)).toEqual([
    '0 bytes',
    '999 bytes',
    '1.0\u00a0kB',
    '9.9\u00a0kB',
    '812\u00a0kB',
    '999\u00a0kB',
    '1.0\u00a0MB',
    '5.0\u00a0MB',
    '123\u00a0MB',
  ]);
});
