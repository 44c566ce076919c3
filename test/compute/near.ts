import { expect } from 'vitest';

/** Asserts that `actual` differs from `expected` by at most the given fraction of `expected`. */
export function expectNear(actual: number, expected: number, relative = 1e-12): void {
  expect(
    Math.abs(actual - expected),
    `${actual} is not within ${relative} of ${expected}`,
  ).toBeLessThanOrEqual(relative * Math.abs(expected));
}

/** Asserts that `actual` differs from `expected` by at most `absolute`, in the unit of both. */
export function expectWithin(actual: number, expected: number, absolute: number): void {
  expect(
    Math.abs(actual - expected),
    `${actual} is not within ${absolute} of ${expected}`,
  ).toBeLessThanOrEqual(absolute);
}

/** Asserts that `actual` rounds to the value as printed in a table, to within half of its last printed digit. */
export function expectPrinted(actual: number, printed: number, decimals: number): void {
  expectWithin(actual, printed, 0.5 * 10 ** -decimals + 1e-9);
}
