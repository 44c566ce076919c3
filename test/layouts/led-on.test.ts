import { expect, test } from 'vitest';
import { ledOn } from '../../src/layouts/examples/led-on.ts';

const target = 'https://example.org/club/examples/new-name/';

test('an example that has moved keeps the numbers and the step of an old link', () => {
  expect(ledOn(target, { search: '?pa=19.8&v=1', hash: '#pad' })).toBe(`${target}?pa=19.8&v=1#pad`);
  expect(ledOn(target, { search: '', hash: '' })).toBe(target);
});

test('nothing in an old link leads anywhere else', () => {
  for (const search of ['?//elsewhere.example', '?@elsewhere.example', '?javascript:alert(1)'])
    expect(new URL(ledOn(target, { search, hash: '#//elsewhere.example' })).origin).toBe(
      'https://example.org',
    );
});
