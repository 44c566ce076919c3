import { expect, test } from 'vitest';
import { LONGEST_QUERY, queryIn } from '../../src/search/query.ts';
import { hrefOf } from '../../src/search/result.ts';

test.each([
  ['?q=guard+band', 'guard band'],
  ['?a=1&q=50%20%CE%A9&q=2', '50 Ω'],
  ['?q=%E0%A4%A', '\ufffd%A'],
  ['', ''],
  ['?query=pad', ''],
])('an address %s asks for “%s”', (address, query) => expect(queryIn(address)).toBe(query));

test('of a long query an address asks for the beginning', () => {
  expect(queryIn(`?q=${'a'.repeat(5000)}`)).toBe('a'.repeat(LONGEST_QUERY));
});

test('a hit leads to the part of its page, unless it has a place of its own', () => {
  expect(hrefOf('/learn/a/', 'step')).toBe('/learn/a/#step');
  expect(hrefOf('/learn/a/', '')).toBe('/learn/a/');
  expect(hrefOf('/reference/words/#pad', 'step')).toBe('/reference/words/#pad');
});
