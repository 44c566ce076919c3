import { describe, expect, test } from 'vitest';
import { characteristicAlong } from '../../../src/compute/combine/characteristic.ts';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { curvilinear } from '../../../src/compute/distribution/curvilinear.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { trapezoidal } from '../../../src/compute/distribution/trapezoidal.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';

const limits = { lower: -1, upper: 1 };
const shapes = {
  normal: normal({ mean: 0, standardDeviation: 1 }),
  arcsine: arcsine({ centre: 0, halfWidth: 1 }),
  rectangular: rectangular(limits),
  triangular: triangular(limits),
  trapezoidal: trapezoidal({ ...limits, topRatio: 0.4 }),
  student: student({ location: 0, scale: 1, degreesOfFreedom: 5 }),
};

/** E cos(w z) counted directly: over the middles of so many equal shares. */
const SHARES = 100_000;
function counted(quantile: (share: number) => number, w: number): number {
  let sum = 0;
  for (let k = 0; k < SHARES; k++) sum += Math.cos(w * quantile((k + 0.5) / SHARES));
  return sum / SHARES;
}

describe('a characteristic function', () => {
  test.each(Object.entries(shapes))('of the %s shape is the mean of cos(w z)', (_, shape) => {
    const along = characteristicAlong(shape.standard, 0.7);
    for (const multiple of [1, 2, 5])
      expect(along?.(multiple)).toBeCloseTo(counted(shape.quantile, 0.7 * multiple), 4);
  });

  test('is not known of a shape with uncertain limits', () => {
    const blurred = curvilinear({ ...limits, limitHalfWidth: 0.2 });
    expect(characteristicAlong(blurred.standard, 0.7)).toBeUndefined();
  });
});
