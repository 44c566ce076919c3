import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arcsine } from '../../src/compute/distribution/arcsine.ts';
import { constant } from '../../src/compute/distribution/constant.ts';
import { curvilinear } from '../../src/compute/distribution/curvilinear.ts';
import { normal } from '../../src/compute/distribution/normal.ts';
import { rectangular } from '../../src/compute/distribution/rectangular.ts';
import { risksOf } from '../../src/compute/risk.ts';
import { normalShareBelow } from '../../src/compute/special/normal.ts';

/** JCGM 106, 9.5: resistors of 1500 ohm +-0.2 ohm, made with a spread of 0.12 ohm, measured with u = 0.04 ohm. */
const resistors = (acceptance: number) =>
  risksOf({
    prior: normal({ mean: 1500, standardDeviation: 0.12 }),
    measurementUncertainty: 0.04,
    specification: { lower: 1499.8, upper: 1500.2 },
    acceptance: { lower: 1500 - acceptance, upper: 1500 + acceptance },
  });

describe('resistors sorted by measurement (JCGM 106, 9.5)', () => {
  test('a guard band of a quarter of U leaves 1 % bad accepted and rejects 7 % good ones', () => {
    const risks = resistors(0.18);
    expect(risks.conforming).toBeCloseTo(0.904419, 6);
    expect(risks.consumer).toBeCloseTo(0.0098783, 7);
    expect(risks.producer).toBeCloseTo(0.0690265, 7);
    expect(risks.accepted).toBeCloseTo(0.845271, 6);
    expect(risks.conformingAmongRejected).toBeCloseTo(0.44611, 5);
    const printed = [risks.conforming, risks.consumer, risks.producer].map((p) => Number(p.toFixed(2)));
    expect(printed).toEqual([0.9, 0.01, 0.07]);
  });

  test('simple acceptance shares the risks differently', () => {
    const risks = resistors(0.2);
    expect(risks.consumer).toBeCloseTo(0.0189422, 7);
    expect(risks.producer).toBeCloseTo(0.0372078, 7);
  });
});

describe('laws of the risks', () => {
  const acceptance = fc.double({ min: 0.05, max: 0.4, noNaN: true });

  test('accepted is the conforming less the wrongly rejected and more the wrongly accepted', () => {
    fc.assert(
      fc.property(acceptance, (a) => {
        const { conforming, accepted, consumer, producer } = resistors(a);
        expect(accepted).toBeCloseTo(conforming - producer + consumer, 9);
      }),
      { numRuns: 30 },
    );
  });

  test('a tighter acceptance moves risk from the consumer to the producer', () => {
    fc.assert(
      fc.property(acceptance, acceptance, (a, b) => {
        const [tight, wide] = [resistors(Math.min(a, b)), resistors(Math.max(a, b))];
        expect(tight.consumer).toBeLessThanOrEqual(wide.consumer + 1e-12);
        expect(tight.producer).toBeGreaterThanOrEqual(wide.producer - 1e-12);
      }),
      { numRuns: 30 },
    );
  });
});

describe('a prior that is narrow or wide beside limits and measurement', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  test('passes as often as two bells together lie within what is accepted', () => {
    fc.assert(
      fc.property(size(0.02, 3), size(0.02, 3), size(0.05, 2), (spread, u, half) => {
        const { accepted } = risksOf({
          prior: normal({ mean: 27, standardDeviation: spread }),
          measurementUncertainty: u,
          specification: { lower: 25.5, upper: 28.5 },
          acceptance: { lower: 27 - half, upper: 27 + half },
        });
        expect(accepted).toBeCloseTo(2 * normalShareBelow(half / Math.hypot(spread, u)) - 1, 9);
      }),
    );
  });
});

describe('other priors', () => {
  test('a rectangular prior inside the specification holds no risk for the consumer', () => {
    const risks = risksOf({
      prior: rectangular({ lower: -1, upper: 1 }),
      measurementUncertainty: 0.1,
      specification: { lower: -1, upper: 1 },
      acceptance: { lower: -1, upper: 1 },
    });
    expect(risks.conforming).toBe(1);
    expect(risks.consumer).toBeCloseTo(0, 12);
    // Two edges, each losing u/sqrt(2 pi) of the width 2.
    expect(risks.producer).toBeCloseTo(0.1 / Math.sqrt(2 * Math.PI), 6);
    expect(risks.conformingAmongRejected).toBeCloseTo(1, 9);
  });

  test('a prior that is infinitely dense at its ends or in its middle counts there too', () => {
    const u = risksOf({
      prior: arcsine({ centre: 0, halfWidth: 2 }),
      measurementUncertainty: 0.1,
      specification: { lower: -2, upper: 1 },
      acceptance: { upper: 1 },
    });
    // mpmath 1.3, over the angle of which the value is the cosine
    expect(u.accepted).toBeCloseTo(0.666976634988, 7);
    expect(u.consumer).toBeCloseTo(0.007503175651, 9);
    expect(u.conforming).toBeCloseTo(2 / 3, 12);
    const peaked = risksOf({
      prior: curvilinear({ lower: -1, upper: 1, limitHalfWidth: 1 }),
      measurementUncertainty: 0.1,
      specification: { lower: 0 },
      acceptance: { lower: 0 },
    });
    expect(peaked.accepted).toBeCloseTo(0.5, 7);
    expect(peaked.consumer).toBeCloseTo(peaked.producer, 7);
  });

  test('one limit is enough, and half of those on it pass', () => {
    const risks = risksOf({
      prior: normal({ mean: 0, standardDeviation: 1 }),
      measurementUncertainty: 1,
      specification: { upper: 0 },
      acceptance: { upper: 0 },
    });
    expect(risks.accepted).toBeCloseTo(0.5, 9);
    // Two normals of equal spread: one good and the sum not, or the other way round, an eighth each.
    expect(risks.consumer).toBeCloseTo(1 / 8, 9);
    expect(risks.producer).toBeCloseTo(1 / 8, 9);
  });

  test('a small blur beside a wide prior is not overlooked: values and errors add as normals', () => {
    const u = 1e-3;
    for (const [lower, upper] of [
      [-1, 1.5],
      [0.2, 0.9],
    ] as const) {
      const { accepted } = risksOf({
        prior: normal({ mean: 0, standardDeviation: 1 }),
        measurementUncertainty: u,
        specification: { lower: -1, upper: 1 },
        acceptance: { lower, upper },
      });
      const measured = Math.hypot(1, u);
      const exact = normalShareBelow(upper / measured) - normalShareBelow(lower / measured);
      expect(Math.abs(accepted - exact)).toBeLessThan(1e-10);
    }
  });

  test('a measurement without blur makes no wrong decision', () => {
    const risks = risksOf({
      prior: normal({ mean: 0, standardDeviation: 1 }),
      measurementUncertainty: 1e-6,
      specification: { lower: -1, upper: 1 },
      acceptance: { lower: -1, upper: 1 },
    });
    expect(risks.consumer).toBeLessThan(1e-6);
    expect(risks.producer).toBeLessThan(1e-6);
    expect(risks.accepted).toBeCloseTo(risks.conforming, 6);
  });

  test('where everything is accepted nothing good is among the rejected', () => {
    const risks = risksOf({
      prior: rectangular({ lower: -1, upper: 1 }),
      measurementUncertainty: 0.01,
      specification: { lower: -2, upper: 2 },
      acceptance: { lower: -2, upper: 2 },
    });
    expect(risks.accepted).toBeCloseTo(1, 12);
    expect(risks.producer).toBeCloseTo(0, 12);
  });
});

test('what cannot be is refused', () => {
  const fine = {
    prior: normal({ mean: 0, standardDeviation: 1 }),
    measurementUncertainty: 1,
    specification: { upper: 0 },
    acceptance: { upper: 0 },
  };
  expect(() => risksOf({ ...fine, measurementUncertainty: 0 })).toThrow(
    'risksOf: measurementUncertainty must be > 0, got 0',
  );
  expect(() => risksOf({ ...fine, specification: {} })).toThrow('risksOf: specification must have a limit');
  expect(() => risksOf({ ...fine, acceptance: { lower: 2, upper: 1 } })).toThrow(
    'risksOf: specification.lower',
  );
  expect(() => risksOf({ ...fine, prior: constant(3) })).toThrow('risksOf: prior must have a width, got 3');
});
