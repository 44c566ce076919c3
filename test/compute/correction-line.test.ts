import { describe, expect, test } from 'vitest';
import { propagate } from '../../src/compute/combine/propagate.ts';
import { componentOf } from '../../src/compute/component.ts';
import { correctionLine } from '../../src/compute/correction-line.ts';
import { LINE_ID, readCorrection } from '../../src/compute/read-correction.ts';

const lender = () =>
  componentOf({
    id: 'lender',
    statement: { form: 'expanded', expanded: 0.2, coverageFactor: 2 },
    unit: 'dB',
  });
const uOf = (model: Parameters<typeof propagate>[0]['model']) => propagate({ model }).standardUncertainty;

describe('a line of corrections', () => {
  const point = (at: number, correction: number, standardUncertainty = 0.05) => ({
    at,
    correction,
    standardUncertainty,
  });
  const straight = [0, 10, 20, 30].map((at) => point(at, -0.5 + 0.01 * at));

  test('points on a line are met, and read off between them', () => {
    const line = correctionLine(straight);
    expect(line.slope).toBeCloseTo(0.01, 12);
    expect(line.middle).toBe(15);
    expect(line.birgeRatio).toBeCloseTo(0, 9);
    expect(line.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    expect(readCorrection({ line, at: 12, common: [] }).constant).toBeCloseTo(-0.38, 12);
  });

  test("averaging shrinks what is each point's own and never what they share", () => {
    const line = correctionLine(straight);
    expect(line.correctionUncertainty).toBeCloseTo(0.025, 12);
    // Sum of squared distances from the middle: 500.
    expect(line.slopeUncertainty).toBeCloseTo(0.05 / Math.sqrt(500), 12);
    const middle = readCorrection({ line, at: 15, common: [lender()] });
    expect(uOf(middle)).toBeCloseTo(Math.hypot(0.025, 0.1), 12);
    const many = correctionLine(Array.from({ length: 4000 }, (_, i) => point(i % 31, 0)));
    expect(uOf(readCorrection({ line: many, at: 15, common: [lender()] }))).toBeCloseTo(0.1, 4);
  });

  test('it is known worse towards its ends, by the slope and the covariance it keeps', () => {
    const line = correctionLine(straight);
    const at = (x: number) => uOf(readCorrection({ line, at: x, common: [] }));
    expect(at(0)).toBeCloseTo(Math.hypot(0.025, 15 * line.slopeUncertainty), 12);
    expect(at(0)).toBeCloseTo(at(30), 12);
    expect(at(0)).toBeGreaterThan(at(15));
  });

  test('two points make a line with the uncertainty of either at its ends', () => {
    const line = correctionLine([point(0, 1, 0.1), point(10, 2, 0.3)]);
    expect(line.birgeRatio).toBe(1);
    expect(uOf(readCorrection({ line, at: 0, common: [] }))).toBeCloseTo(0.1, 12);
    expect(uOf(readCorrection({ line, at: 10, common: [] }))).toBeCloseTo(0.3, 12);
    // Halfway both count half: sqrt(0.1^2 + 0.3^2) / 2.
    expect(uOf(readCorrection({ line, at: 5, common: [] }))).toBeCloseTo(Math.hypot(0.1, 0.3) / 2, 12);
  });

  test('points that scatter more than they say widen the line, with n - 2 degrees', () => {
    const noisy = [point(0, 0), point(10, 0.4), point(20, -0.4), point(30, 0)];
    const line = correctionLine(noisy);
    // The residuals about the line of slope -0.008: 0.12 + 0, 0.44, -0.28 and -0.12 + 0.08 apart from the mean 0.
    const middle = 15;
    const slope = (-5 * 0.4 + 5 * -0.4) / 500;
    const squares = [0, 0.4, -0.4, 0].map((y, i) => (y - slope * (10 * i - middle)) ** 2);
    const scatter = Math.sqrt(squares.reduce((a, b) => a + b, 0) / 2);
    expect(line.birgeRatio).toBeCloseTo(scatter / 0.05, 10);
    expect(line.correctionUncertainty).toBeCloseTo(0.025 * line.birgeRatio, 12);
    expect(line.degreesOfFreedom).toBe(2);
    const [input] = readCorrection({ line, at: 15, common: [] }).inputs;
    expect(input).toMatchObject({ id: LINE_ID, degreesOfFreedom: 2 });
    expect(input?.distribution.shape).toBe('student');
    // The same noise within the stated uncertainty changes nothing.
    const calm = correctionLine(noisy.map((p) => ({ ...p, standardUncertainty: 10 })));
    expect(calm.birgeRatio).toBeLessThan(1);
    expect(calm.correctionUncertainty).toBeCloseTo(5, 12);
    expect(calm.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    const [calmInput] = readCorrection({ line: calm, at: 15, common: [] }).inputs;
    expect(calmInput?.distribution.shape).toBe('normal');
  });

  test('the better known point draws the line', () => {
    const line = correctionLine([point(0, 0, 0.01), point(0, 1, 0.1), point(10, 0, 0.01)]);
    expect(readCorrection({ line, at: 0, common: [] }).constant).toBeCloseTo(0.01, 2);
  });

  test('beyond its points nothing is said', () => {
    const line = correctionLine(straight);
    for (const at of [-0.001, 30.001, Number.NaN])
      expect(() => readCorrection({ line, at, common: [] })).toThrow(
        `readCorrection: at must be from 0 to 30, got ${at}`,
      );
    for (const at of [0, 30]) expect(() => readCorrection({ line, at, common: [] })).not.toThrow();
  });

  test('what makes no line is refused', () => {
    expect(() => correctionLine([point(1, 0), point(1, 1)])).toThrow(
      'correctionLine: there must be points at 2 or more places, got 2',
    );
    expect(() => correctionLine([point(0, 0, 0), point(1, 1)])).toThrow(
      'correctionLine: standardUncertainty must be > 0',
    );
    expect(() => correctionLine([point(Number.NaN, 0), point(1, 1)])).toThrow('correctionLine: at must be');
    expect(() => correctionLine([point(0, Number.NaN), point(1, 1)])).toThrow(
      'correctionLine: correction must be',
    );
  });
});
