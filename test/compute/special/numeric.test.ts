import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lineNodes, unitNodes } from '../../../src/compute/special/integrate.ts';
import { polynomial } from '../../../src/compute/special/rational.ts';
import { solveRising, solveSign } from '../../../src/compute/special/solve.ts';

describe('solveRising', () => {
  const cube = (x: number) => ({ value: x ** 3, slope: 3 * x * x });

  test('finds the place of any value inside the bracket', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (wanted) => {
        const x = solveRising(cube, { wanted, lower: -3, upper: 2.5 });
        expect(Math.abs(x ** 3 - wanted)).toBeLessThan(1e-13);
      }),
    );
  });

  test('needs no slope: with an infinite one it halves', () => {
    const x = solveRising((y) => ({ value: y ** 3, slope: Number.POSITIVE_INFINITY }), {
      wanted: 2,
      lower: 0,
      upper: 2,
    });
    expect(x).toBeCloseTo(Math.cbrt(2), 14);
  });

  test('starts where it is told, unless that lies outside', () => {
    const asked: number[] = [];
    const spy = (x: number) => {
      asked.push(x);
      return { value: x, slope: 1 };
    };
    expect(solveRising(spy, { wanted: 3, lower: 0, upper: 10, start: 7 })).toBe(3);
    expect(asked[0]).toBe(7);
    asked.length = 0;
    solveRising(spy, { wanted: 3, lower: 0, upper: 10, start: 12 });
    expect(asked[0]).toBe(5);
    for (const start of [-1, 0, 10]) {
      asked.length = 0;
      solveRising(spy, { wanted: 3, lower: 0, upper: 10, start });
      expect(asked[0]).toBe(5);
    }
  });

  test('stops once a step is within the tolerance', () => {
    let calls = 0;
    const counted = (x: number) => {
      calls++;
      return { value: Math.exp(x), slope: Math.exp(x) };
    };
    const x = solveRising(counted, { wanted: 5, lower: 0, upper: 3, tolerance: 0.01 });
    expect(Math.abs(x - Math.log(5))).toBeLessThan(0.01);
    expect(calls).toBeLessThan(6);
  });

  test('asked to be no closer than a step, takes that step alone', () => {
    let calls = 0;
    const counted = (x: number) => {
      calls++;
      return { value: x ** 3, slope: 3 * x * x };
    };
    // Newton's step from 1.5 leads to 1.5 + (4 - 1.5^3)/(3 x 1.5^2), 0.093 further.
    const x = solveRising(counted, { wanted: 4, lower: 0, upper: 3, tolerance: 0.1 });
    expect(x).toBeCloseTo(1.5 + 0.625 / 6.75, 14);
    expect(calls).toBe(1);
  });

  test("where Newton's steps hardly shrink, as at a root of many folds, it halves instead", () => {
    const at = (x: number) => ({ value: (x - 1) ** 21, slope: 21 * (x - 1) ** 20 });
    expect(solveRising(at, { wanted: 0, lower: 0, upper: 3 })).toBeCloseTo(1, 12);
  });

  test('a step in the function is closed in upon', () => {
    const x = solveRising((y) => ({ value: y < 1 / 3 ? 0 : 1, slope: 0 }), {
      wanted: 0.5,
      lower: 0,
      upper: 1,
    });
    expect(x).toBeCloseTo(1 / 3, 14);
  });
});

describe('solveSign', () => {
  test('finds where a rising function changes sign', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (root) => {
        const at = (x: number) => x ** 3 - root ** 3;
        expect(Math.abs(solveSign(at, { lower: 0, upper: 1, tolerance: 1e-10 }) - root)).toBeLessThan(1e-8);
      }),
    );
  });

  test('gives the end where the function has no sign to change', () => {
    expect(solveSign((x) => x + 1, { lower: 0, upper: 2, tolerance: 1e-9 })).toBe(0);
    expect(solveSign((x) => x - 5, { lower: 0, upper: 2, tolerance: 1e-9 })).toBe(2);
  });

  test('an end that is the place itself is given as it is', () => {
    expect(solveSign((x) => x, { lower: 0, upper: 2, tolerance: 1e-9 })).toBe(0);
    expect(solveSign((x) => x - 2, { lower: 0, upper: 2, tolerance: 1e-9 })).toBe(2);
  });

  /** Where the search ends, and how often it looked on its way. */
  const counted = (
    at: (x: number) => number,
    bracket: { lower: number; upper: number; tolerance: number },
  ) => {
    let calls = 0;
    const x = solveSign((place) => {
      calls++;
      return at(place);
    }, bracket);
    return { x, calls };
  };

  test('a straight line is met at its third look, the ends included', () => {
    const bracket = { lower: -1, upper: 3, tolerance: 1e-12 };
    expect(counted((x) => x - 0.5, bracket)).toEqual({ x: 0.5, calls: 3 });
  });

  test('a curve bent either way is met in far fewer looks than halving takes', () => {
    const bracket = { lower: 0.5, upper: 3, tolerance: 1e-10 };
    for (const at of [(x: number) => x ** 5 - 2, (x: number) => 2 ** -5 - x ** -5]) {
      const { x, calls } = counted(at, bracket);
      expect(Math.abs(at(x))).toBeLessThan(1e-9);
      expect(calls).toBeLessThan(25); // Halving takes 37.
    }
  });

  test('a jump is closed in upon, at halves, until the bracket is as narrow as asked', () => {
    const jump = (x: number) => (x < 1 / 3 ? -1 : 1);
    // 1/2, 1/4, 3/8, 5/16: the bracket is then 1/16 wide.
    expect(counted(jump, { lower: 0, upper: 1, tolerance: 0.1 })).toEqual({ x: 5 / 16, calls: 6 });
    expect(counted(jump, { lower: 0, upper: 1, tolerance: 0 }).x).toBeCloseTo(1 / 3, 15);
  });

  test('copes with infinite values at an end', () => {
    expect(solveSign((y) => 1 - 1 / (y - 1), { lower: 1, upper: 4, tolerance: 1e-10 })).toBeCloseTo(2, 8);
    const x = solveSign((y) => 1 - 1 / y, { lower: 0, upper: 3, tolerance: 1e-10 });
    expect(x).toBeCloseTo(1, 8);
  });
});

describe('nodes for integrals', () => {
  test('over 0 to 1: powers, and infinities at either end', () => {
    const integral = (f: (u: number, rest: number) => number) =>
      unitNodes().reduce((sum, { u, complement, weight }) => sum + weight * f(u, complement), 0);
    expect(integral(() => 1)).toBeCloseTo(1, 12);
    expect(integral((u) => u ** 4)).toBeCloseTo(1 / 5, 12);
    expect(integral((u) => 1 / Math.sqrt(u))).toBeCloseTo(2, 11);
    expect(integral((_, rest) => 1 / Math.sqrt(rest))).toBeCloseTo(2, 11);
    expect(integral((u) => Math.log(u))).toBeCloseTo(-1, 11);
  });

  test('over the whole line: light tails and heavy ones', () => {
    const integral = (f: (x: number) => number) =>
      lineNodes().reduce((sum, { x, weight }) => sum + (weight === 0 ? 0 : weight * f(x)), 0);
    expect(integral((x) => Math.exp(-x * x))).toBeCloseTo(Math.sqrt(Math.PI), 11);
    expect(integral((x) => x * x * Math.exp(-x * x))).toBeCloseTo(Math.sqrt(Math.PI) / 2, 10);
    expect(integral((x) => 1 / (1 + x * x))).toBeCloseTo(Math.PI, 9);
  });
});

test('a polynomial is read from its highest power down', () => {
  expect(polynomial(2, [3, -1, 5])).toBe(15);
  expect(polynomial(2, [])).toBe(0);
});
