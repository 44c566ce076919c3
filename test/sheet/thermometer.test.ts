import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  thermometerAt,
  thermometerLine,
  thermometerPoints,
  withoutCovariance,
} from '../../src/sheet/thermometer.ts';

const celsius = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the thermometer of the GUM', () => {
  it('has eleven readings, and a mean at 24.0085 °C', () => {
    const points = thermometerPoints();
    expect(points).toHaveLength(11);
    expect(points.reduce((sum, { x }) => sum + x, 0) / 11).toBeCloseTo(24.0085, 4);
    expect(points[0]).toEqual({ x: 21.521, y: -0.171 });
  });

  it('gives one correction wherever the height of its line is taken', () => {
    fc.assert(
      fc.property(celsius(20, 32), celsius(15, 30), celsius(15, 30), (at, one, other) => {
        const [a, b] = [thermometerAt(at, one), thermometerAt(at, other)];
        expect(a.value).toBeCloseTo(b.value, 9);
        expect(a.standardUncertainty).toBeCloseTo(b.standardUncertainty, 9);
      }),
    );
  });

  it('is as uncertain with the covariance as without about the mean alone', () => {
    const { range } = thermometerLine(20);
    expect(range).toEqual({ lower: 21.521, upper: 26.511 });
    const mean = thermometerPoints().reduce((sum, { x }) => sum + x / 11, 0);
    expect(withoutCovariance(30, mean)).toBeCloseTo(thermometerAt(30, mean).standardUncertainty, 9);
    expect(withoutCovariance(30, 20)).toBeCloseTo(0.0073, 4);
  });
});
