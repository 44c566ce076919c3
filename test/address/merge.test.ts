import { describe, expect, test } from 'vitest';
import { mergeQuery } from '../../src/address/merge.ts';

describe('a query with one state exchanged', () => {
  test('keeps the other instances in place', () => {
    expect(mergeQuery({ query: '?a.p=1&a.v=1&b.p=2&b.v=1', encoded: 'a.p=9&a.v=1', instance: 'a' })).toBe(
      'b.p=2&b.v=1&a.p=9&a.v=1',
    );
  });

  test('without an instance exchanges what has none, and begins an empty one', () => {
    expect(mergeQuery({ query: 'p=1&v=1&b.p=2&b.v=1', encoded: 'p=9&v=1' })).toBe('b.p=2&b.v=1&p=9&v=1');
    expect(mergeQuery({ query: '', encoded: 'v=1' })).toBe('v=1');
    expect(mergeQuery({ query: '?', encoded: '' })).toBe('');
  });
});
