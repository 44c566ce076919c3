import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcsine, normal, rectangular, wholeDistribution } from '../../../src/compute/index.ts';

const shape = fc
  .record({
    kind: fc.constantFrom('normal', 'rectangular', 'arcsine'),
    width: fc.double({ min: 5e-324, max: 1e-100, noNaN: true }),
  })
  .map(({ kind, width }) => {
    if (kind === 'normal') return normal({ mean: 0, standardDeviation: width });
    return kind === 'arcsine'
      ? arcsine({ centre: 0, halfWidth: width })
      : rectangular({ lower: -width, upper: width });
  });

describe('parts so narrow that their squares vanish', () => {
  it('leave a sum where it stands, however many there are', () => {
    fc.assert(
      fc.property(fc.array(shape, { minLength: 1, maxLength: 5 }), (shapes) => {
        const terms = shapes.map((distribution) => ({ distribution, sensitivity: 1 }));
        const { symmetric } = wholeDistribution({ constant: 27, terms, coverageProbability: 0.95 });
        expect(symmetric).toEqual({ lower: 27, upper: 27 });
      }),
    );
  });

  it('change nothing beside a part of ordinary width', () => {
    const wide = { distribution: rectangular({ lower: -3, upper: 3 }), sensitivity: 1 };
    const narrow = { distribution: normal({ mean: 0, standardDeviation: 1e-200 }), sensitivity: 1 };
    const { symmetric } = wholeDistribution({
      constant: 0,
      terms: [wide, narrow],
      coverageProbability: 0.95,
    });
    expect(symmetric.lower).toBeCloseTo(-2.85, 9);
    expect(symmetric.upper).toBeCloseTo(2.85, 9);
  });
});
