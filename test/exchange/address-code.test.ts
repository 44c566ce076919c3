import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addressCode } from '../../src/exchange/address-code.ts';
import { modulesOf, readCode } from '../site/read-code.ts';

const codeOf = (address: string): string => {
  const { size, path } = addressCode(address);
  return readCode(modulesOf(size, path));
};
const part = fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,20}$/);

describe('the code of an address', () => {
  test('reads back as that address, by a reader that shares nothing with it', () => {
    const address = 'https://club.example/watt/examples/two-pads-into-a-receiver/';
    expect(codeOf(address)).toBe(address);
  });

  test('does so for any address that a page of a site may have, of up to 180 letters', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 7 }), (parts) => {
        const address = `https://club.example/${parts.join('/')}/`;
        expect(codeOf(address)).toBe(address);
      }),
    );
  });

  test('takes every size that such addresses need', () => {
    const sizes = new Set<number>();
    for (let length = 20; length <= 180; length++) {
      const address = `https://a.example/${'b'.repeat(length - 18)}`;
      sizes.add(addressCode(address).size);
      expect(codeOf(address)).toBe(address);
    }
    expect([...sizes]).toEqual([33, 37, 41, 45, 49, 53, 57, 61]);
  });

  test('is held by the reader to every module: one that is turned is noticed', () => {
    const { size, path } = addressCode('https://club.example/');
    const modules = modulesOf(size, path);
    const last = modules.length - 1;
    for (const [x, y] of [
      [last, last],
      [12, 12],
      [8, 2],
      [last, 10],
    ] as const) {
      const turned = modules.map((row, i) => row.map((dark, j) => (i === y && j === x ? !dark : dark)));
      expect(() => readCode(turned), `${x} ${y}`).toThrow(RangeError);
    }
  });
});
