import { describe, expect, it } from 'vitest';
import { controlId, linkPath } from '../../src/bench/keys.ts';
import { readAs } from '../../src/bench/read-as.ts';

/** Spaces of every kind as ordinary ones. */
const plain = (text: string | undefined): string | undefined => text?.replace(/\s/g, ' ');

describe('how a typed level was understood', () => {
  it('is told where it was typed in watts', () => {
    expect(plain(readAs('nominal', '500 mW'))).toBe('= 26.99 dBm'); // 10 lg 500 = 26.9897
    expect(plain(readAs('damage', '0,1 W'))).toBe('= 20.00 dBm');
    expect(plain(readAs('readings', '5 mW'))).toBe('= 6.99 dBm'); // 10 lg 5 = 6.9897
  });

  it('goes without saying where it is a level already, is no number, or is no level at all', () => {
    for (const text of ['27 dBm', '27', 'mW', '-5 mW', '']) expect(readAs('nominal', text)).toBeUndefined();
    expect(readAs('readings', '7 dBm')).toBeUndefined();
    expect(readAs('tolerance', '1 W')).toBeUndefined();
    expect(readAs('title', 'A transmitter of 5 W')).toBeUndefined();
  });

  it('is told as number and mean of several readings, and not at all where one of them is none', () => {
    expect(plain(readAs('readings', '7.0\n7,1 dBm\n7.2'))).toBe('3 readings, mean 7.10 dBm');
    expect(readAs('readings', '7.0\nabc\n7.2')).toBeUndefined();
  });
});

it('gives every field of a link a control of its own', () => {
  expect(controlId(linkPath('pad', 'amount'))).toBe('field-pad-amount');
  expect(controlId('nominal')).toBe('field-nominal');
});
