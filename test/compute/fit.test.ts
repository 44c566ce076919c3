import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FitPoint, fitLine, readLine } from '../../src/compute/fit.ts';
import { norris } from './strd.ts';

/** GUM H.3: corrections of a thermometer, in degrees Celsius. */
const thermometer = (): FitPoint[] => {
  const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  return t.map((x, i) => ({ x, y: b[i] ?? Number.NaN }));
};

const points = fc
  .uniqueArray(fc.integer({ min: -50, max: 50 }), { minLength: 3, maxLength: 12 })
  .chain((xs) =>
    fc.tuple(
      ...xs.map((x) => fc.double({ min: -10, max: 10, noNaN: true }).map((y): FitPoint => ({ x, y }))),
    ),
  );

describe('laws of the line', () => {
  test('points on a line give that line without scatter', () => {
    fc.assert(
      fc.property(points, fc.double({ min: -5, max: 5, noNaN: true }), (data, slope) => {
        const line = fitLine({ points: data.map(({ x }) => ({ x, y: 2 + slope * x })) });
        expect(line.intercept).toBeCloseTo(2, 9);
        expect(line.slope).toBeCloseTo(slope, 9);
        expect(line.residualDeviation).toBeCloseTo(0, 9);
      }),
    );
  });

  test('where the intercept is taken changes nothing that is read off', () => {
    fc.assert(
      fc.property(
        points,
        fc.integer({ min: -90, max: 90 }),
        fc.integer({ min: -90, max: 90 }),
        (data, origin, at) => {
          const one = readLine({ line: fitLine({ points: data }), at });
          const other = readLine({ line: fitLine({ points: data, origin }), at });
          expect(other.value).toBeCloseTo(one.value, 7);
          expect(other.standardUncertainty).toBeCloseTo(one.standardUncertainty, 5);
        },
      ),
    );
  });

  test('a line is known best in the middle of its points', () => {
    fc.assert(
      fc.property(points, fc.integer({ min: -90, max: 90 }), (data, at) => {
        const line = fitLine({ points: data });
        const middle = data.reduce((sum, { x }) => sum + x, 0) / data.length;
        expect(readLine({ line, at: middle }).standardUncertainty).toBeLessThanOrEqual(
          readLine({ line, at }).standardUncertainty + 1e-6,
        );
      }),
    );
  });
});

describe("a thermometer's calibration line (GUM H.3)", () => {
  const line = fitLine({ points: thermometer(), origin: 20 });

  test('intercept, slope and their covariance are the published ones', () => {
    expect(line.intercept).toBeCloseTo(-0.1712, 4);
    expect(line.interceptUncertainty).toBeCloseTo(0.0028776, 7);
    expect(line.slope).toBeCloseTo(0.0021827, 7);
    expect(line.slopeUncertainty).toBeCloseTo(0.00066794, 8);
    expect(line.correlation).toBeCloseTo(-0.93043, 5);
    expect(line.covariance).toBeCloseTo(
      line.correlation * line.interceptUncertainty * line.slopeUncertainty,
      15,
    );
    expect(line.residualDeviation).toBeCloseTo(0.00349756, 8);
    expect(line.degreesOfFreedom).toBe(9);
    expect(line.range).toEqual({ lower: 21.521, upper: 26.511 });
  });

  test('at 30 degrees the correction is -0.1494 with 0.0041, and beyond the points', () => {
    const { value, standardUncertainty, ofReading, extrapolated, degreesOfFreedom } = readLine({
      line,
      at: 30,
    });
    expect(value).toBeCloseTo(-0.1494, 4);
    expect(standardUncertainty).toBeCloseTo(0.0041386, 7);
    expect(ofReading).toBeCloseTo(Math.hypot(0.0041386, 0.00349756), 6);
    expect(extrapolated).toBe(true);
    expect(degreesOfFreedom).toBe(9);
    // Without the covariance it would be 0.0073 (recomputed, not printed).
    expect(Math.hypot(line.interceptUncertainty, 10 * line.slopeUncertainty)).toBeCloseTo(0.0073, 4);
  });

  test('taken at the mean temperature, intercept and slope are uncorrelated (H.3.5)', () => {
    const points = thermometer();
    const origin = points.reduce((sum, { x }) => sum + x, 0) / points.length;
    const centred = fitLine({ points, origin });
    expect(origin).toBeCloseTo(24.0085, 4);
    expect(centred.correlation).toBeCloseTo(0, 10);
    expect(centred.intercept).toBeCloseTo(-0.1625, 4);
    expect(centred.interceptUncertainty).toBeCloseTo(0.00105456, 7);
  });

  test('the ends of the range still belong to it', () => {
    expect(readLine({ line, at: 21.521 }).extrapolated).toBe(false);
    expect(readLine({ line, at: 26.511 }).extrapolated).toBe(false);
    expect(readLine({ line, at: 21.52 }).extrapolated).toBe(true);
    expect(readLine({ line, at: 26.52 }).extrapolated).toBe(true);
  });
});

test('Norris keeps twelve digits of the certified values (NIST StRD)', () => {
  const line = fitLine({ points: norris() });
  const certified = [
    [line.intercept, -0.262323073774029],
    [line.interceptUncertainty, 0.232818234301152],
    [line.slope, 1.00211681802045],
    [line.slopeUncertainty, 0.000429796848199937],
    [line.residualDeviation, 0.884796396144373],
  ] as const;
  for (const [value, wanted] of certified) expect(Math.abs(value / wanted - 1)).toBeLessThan(1e-12);
});

test('what has no line is refused', () => {
  const p = (x: number, y = 0): FitPoint => ({ x, y });
  expect(() => fitLine({ points: [p(1), p(2)] })).toThrow('fitLine: there must be 3 or more points, got 2');
  expect(() => fitLine({ points: [p(1), p(1), p(1)] })).toThrow('fitLine: x must not all be equal, got 1');
  expect(() => fitLine({ points: [p(1), p(2), p(Number.NaN)] })).toThrow(
    'fitLine: x must be a finite number',
  );
  expect(() => fitLine({ points: [p(1), p(2), p(3, Number.NaN)] })).toThrow(
    'fitLine: y must be a finite number',
  );
  expect(() => fitLine({ points: [p(1), p(2), p(3)], origin: Number.NaN })).toThrow('fitLine: origin');
  const line = fitLine({ points: [p(1), p(2), p(3)] });
  expect(() => readLine({ line, at: Number.NaN })).toThrow('readLine: at must be a finite number, got NaN');
});
