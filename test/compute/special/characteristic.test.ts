import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { besselJ0 } from '../../../src/compute/special/bessel.ts';
import { normalShareBelow } from '../../../src/compute/special/normal.ts';
import { normalsAlong } from '../../../src/compute/special/normals-along.ts';
import { studentShareBelow } from '../../../src/compute/special/student.ts';
import {
  studentCharacteristicAlong,
  studentMixture,
} from '../../../src/compute/special/student-characteristic.ts';
import { answerOf, offenders } from '../../golden/error.ts';
import special from '../../golden/special.json' with { type: 'json' };

describe('besselJ0', () => {
  test('agrees with 50-digit values to 1e-14, absolute', () => {
    expect(
      offenders(special.besselJ0, 1e-14, (row) =>
        Math.abs(besselJ0(row.inputs[0] as number) - answerOf(row)),
      ),
    ).toEqual([]);
  });

  test('is even, at most one, and fades as the root of x', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e4, noNaN: true }), (x) => {
        expect(besselJ0(-x)).toBe(besselJ0(x));
        expect(Math.abs(besselJ0(x))).toBeLessThanOrEqual(Math.min(1, Math.sqrt(2 / (Math.PI * x))) + 1e-14);
      }),
    );
  });
});

describe("the characteristic function of Student's t", () => {
  test('agrees with 50-digit values to 1e-11, absolute, however many steps lead there', () => {
    for (const multiple of [1, 31, 32, 500])
      expect(
        offenders(special.studentCharacteristic, 1e-11, (row) => {
          const along = studentCharacteristicAlong(
            row.inputs[1] as number,
            (row.inputs[0] as number) / multiple,
          );
          for (let j = 1; j < multiple; j++) along(j);
          return Math.abs(along(multiple) - answerOf(row));
        }),
      ).toEqual([]);
  });

  test('one degree fades as exp(-w)', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 20, noNaN: true }), (w) => {
        expect(studentCharacteristicAlong(1, w)(1)).toBeCloseTo(Math.exp(-w), 11);
      }),
    );
  });
});

describe('the characteristic function of a mixture of normals along steps', () => {
  const parts = fc.array(
    fc.tuple(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: 1e-12, max: 1e8, noNaN: true })),
    { minLength: 1, maxLength: 8 },
  );
  const step = fc.double({ min: 1e-6, max: 10, noNaN: true });

  test('is the sum of exp(-variance w^2/2), in turn and in any order', () => {
    fc.assert(
      fc.property(parts, step, fc.array(fc.integer({ min: 0, max: 5000 })), (list, w, jumps) => {
        const normals = {
          weight: Float64Array.from(list, ([weight]) => weight),
          variance: Float64Array.from(list, ([, variance]) => variance),
        };
        const along = normalsAlong(normals, w);
        for (const j of [...Array(100).keys(), ...jumps]) {
          const wanted = list.reduce(
            (sum, [weight, variance]) => sum + weight * Math.exp(-0.5 * variance * (w * j) ** 2),
            0,
          );
          expect(Math.abs(along(j) - wanted)).toBeLessThan(1e-12 * list.length);
        }
      }),
    );
  });

  test('is the sum of weights at 0', () => {
    const normals = { weight: Float64Array.of(3, -2), variance: Float64Array.of(1, 4) };
    expect(normalsAlong(normals, 0.1)(0)).toBe(1);
  });
});

describe("Student's t as a mixture of normals", () => {
  const belowBy = (n: number, fineness: 'fine' | 'coarse', t: number) => {
    const { weight, variance } = studentMixture(n, fineness);
    return weight.reduce((sum, w, k) => sum + w * normalShareBelow(t / Math.sqrt(variance[k] as number)), 0);
  };

  test('its shares sum to one and narrow normals come first', () => {
    const { weight, variance } = studentMixture(3, 'fine');
    expect(weight.reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 14);
    expect(variance.every((v, k) => k === 0 || v > (variance[k - 1] as number))).toBe(true);
  });

  test('has the share below of t: fine to 1e-11 anywhere, coarse to 1e-9 from 8 scales on', () => {
    for (const n of [1, 2, 3, 9, 30])
      for (const t of [-300, -20, -8, -3, -0.5]) {
        const wanted = studentShareBelow({ t, degreesOfFreedom: n });
        expect(Math.abs(belowBy(n, 'fine', t) - wanted)).toBeLessThan(1e-11);
        expect(Math.abs(belowBy(n, 'coarse', t) - wanted)).toBeLessThan(t <= -8 ? 1e-9 : 2e-5);
      }
  });

  test('the coarse one needs about half the nodes', () => {
    const nodes = (fineness: 'fine' | 'coarse') => studentMixture(4, fineness).weight.length;
    expect(nodes('coarse')).toBeLessThan(0.6 * nodes('fine'));
  });
});
