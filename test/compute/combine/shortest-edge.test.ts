import { describe, expect, it } from 'vitest';
import { rice } from '../../../src/compute/distribution/rice.ts';
import { transformed } from '../../../src/compute/distribution/transformed.ts';
import { evaluate } from '../../../src/compute/evaluate.ts';

/** The square of a Rice length, in millionths: noncentral chi-square of two degrees times u^2. */
const squared = (offset: number) =>
  transformed({
    of: rice({ offset, scale: 0.005 }),
    forward: (length) => 1e6 * length ** 2,
    inverse: (loss) => Math.sqrt(loss / 1e6),
    slope: (length) => 2e6 * length,
  });

function shortestOf(offset: number, sensitivity = 1) {
  const input = {
    id: 'loss',
    distribution: squared(offset),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  };
  const { whole } = evaluate({
    model: { kind: 'sum', constant: 0, inputs: [input], sensitivities: [sensitivity] },
  });
  return 'unavailable' in whole ? undefined : whole.shortest;
}

describe('the shortest interval of values that stop at an end where they are still likely', () => {
  it('begins at that end, although the density jumps there (JCGM 101, 9.4, x1 = 0.010: exactly 366.005)', () => {
    const shortest = shortestOf(0.01);
    expect(shortest?.lower).toBeCloseTo(0, 6);
    expect(shortest?.upper).toBeCloseTo(366.005, 2);
  });

  it.each([1e-6, 1e-12])('is the same by a factor of %d in another unit', (factor) => {
    const shortest = shortestOf(0.01, factor);
    expect((shortest?.lower ?? Number.NaN) / factor).toBeCloseTo(0, 6);
    expect((shortest?.upper ?? Number.NaN) / factor).toBeCloseTo(366.005, 2);
  });

  it('begins there too where the density only falls (JCGM 101, annex F: 149.787)', () => {
    const shortest = shortestOf(0);
    expect(shortest?.lower).toBeCloseTo(0, 6);
    expect(shortest?.upper).toBeCloseTo(149.787, 2);
  });

  it('lies inside where the end is unlikely (x1 = 0.050: 1593.57 to 3548.57)', () => {
    const shortest = shortestOf(0.05);
    expect(shortest?.lower).toBeCloseTo(1593.57, 1);
    expect(shortest?.upper).toBeCloseTo(3548.57, 1);
  });
});
