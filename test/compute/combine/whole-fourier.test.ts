import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Complex,
  halfTurn,
  transformInPlace,
  transformPair,
} from '../../../src/compute/combine/fourier.ts';

const sizes = fc.constantFrom(2, 4, 8, 32, 64);
const values = fc.double({ min: -10, max: 10, noNaN: true });
const rowOf = (size: number) => fc.array(values, { minLength: size, maxLength: size });

/** The transform by its definition, term by term. */
function plain({ re, im }: Complex): Complex {
  const size = re.length;
  const sum = (j: number, part: 're' | 'im') => {
    let total = 0;
    for (let k = 0; k < size; k++) {
      const angle = (2 * Math.PI * j * k) / size;
      const [a, b] = [re[k] as number, im[k] as number];
      total +=
        part === 're' ? a * Math.cos(angle) - b * Math.sin(angle) : a * Math.sin(angle) + b * Math.cos(angle);
    }
    return total;
  };
  return {
    re: Float64Array.from({ length: size }, (_, j) => sum(j, 're')),
    im: Float64Array.from({ length: size }, (_, j) => sum(j, 'im')),
  };
}

function expectClose(got: Float64Array, wanted: Float64Array, slack = 1e-9): void {
  expect(got.length).toBe(wanted.length);
  for (const [k, value] of got.entries()) expect(Math.abs(value - (wanted[k] as number))).toBeLessThan(slack);
}

describe('the fast transform', () => {
  test('gives what its definition gives', () => {
    fc.assert(
      fc.property(
        sizes.chain((size) => fc.tuple(rowOf(size), rowOf(size))),
        ([a, b]) => {
          const row = { re: Float64Array.from(a), im: Float64Array.from(b) };
          const wanted = plain(row);
          transformInPlace(row, halfTurn(a.length));
          expectClose(row.re, wanted.re);
          expectClose(row.im, wanted.im);
        },
      ),
    );
  });

  test('keeps the sum of squares, times the length (Parseval)', () => {
    fc.assert(
      fc.property(
        sizes.chain((size) => rowOf(size)),
        (a) => {
          const row = { re: Float64Array.from(a), im: new Float64Array(a.length) };
          const before = a.reduce((sum, x) => sum + x * x, 0);
          transformInPlace(row, halfTurn(a.length));
          const after = row.re.reduce((sum, x, k) => sum + x * x + (row.im[k] as number) ** 2, 0);
          expect(after / a.length).toBeCloseTo(before, 6);
        },
      ),
    );
  });

  test('turns a single cell into a wave of the sign of a characteristic function', () => {
    const row = { re: new Float64Array(8), im: new Float64Array(8) };
    row.re[1] = 1;
    transformInPlace(row, halfTurn(8));
    expect(row.re[1]).toBeCloseTo(Math.SQRT1_2, 14);
    expect(row.im[1]).toBeCloseTo(Math.SQRT1_2, 14);
    expect(row.im[2]).toBeCloseTo(1, 14);
    expect(row.im[6]).toBeCloseTo(-1, 14);
  });
});

describe('two real rows by one transform', () => {
  test('come out as each would alone', () => {
    fc.assert(
      fc.property(
        sizes.chain((size) => fc.tuple(rowOf(size), rowOf(size))),
        ([a, b]) => {
          const turn = halfTurn(a.length);
          const count = a.length / 2;
          const alone = [a, b].map((list) => {
            const row = { re: Float64Array.from(list), im: new Float64Array(list.length) };
            transformInPlace(row, turn);
            return row;
          });
          const pair = transformPair(Float64Array.from(a), Float64Array.from(b), { turn, count });
          for (const [k, { re, im }] of pair.entries()) {
            expectClose(re, (alone[k] as Complex).re.slice(0, count + 1));
            expectClose(im, (alone[k] as Complex).im.slice(0, count + 1));
          }
        },
      ),
    );
  });
});

test('half a turn holds cosines and sines of the first half', () => {
  const { re, im } = halfTurn(8);
  expectClose(re, Float64Array.of(1, Math.SQRT1_2, 0, -Math.SQRT1_2), 1e-15);
  expectClose(im, Float64Array.of(0, Math.SQRT1_2, 1, Math.SQRT1_2), 1e-15);
});
