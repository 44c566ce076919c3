import { Decimal } from 'decimal.js';
import { all, create, type MathNode } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  type Correlation,
  type FunctionModel,
  type Input,
  normal,
  propagate,
  sensitivitiesOf,
} from '#compute';

/**
 * Second opinion on the law of propagation: mathjs differentiates each formula symbolically, decimal.js evaluates
 * derivatives and sums at 40 digits.
 */
const math = create(all ?? {}, { number: 'BigNumber', precision: 40 });
const Big = Decimal.clone({ precision: 40 });

interface Case {
  readonly title: string;
  readonly formula: string;
  readonly f: FunctionModel['f'];
  readonly quantities: readonly (readonly [id: string, value: number, u: number, degrees: number])[];
  readonly correlations?: readonly Correlation[];
}

const cases: Case[] = [
  {
    title: 'power from peak-to-peak volts across a load',
    formula: 'V^2 / (8 * R)',
    f: ([v = 0, r = 0]) => v ** 2 / (8 * r),
    quantities: [
      ['V', 20.4, 0.37, 12],
      ['R', 49.6, 0.29, 50],
    ],
  },
  {
    title: 'level in dBm from a peak detector',
    formula: '10 * log10((V + D)^2 / 100 / 0.001)',
    f: ([v = 0, d = 0]) => 10 * Math.log10((v + d) ** 2 / 100 / 0.001),
    quantities: [
      ['V', 6.58, 0.02, 4],
      ['D', 0.55, 0.0577, 8],
    ],
  },
  {
    title: 'heat by substitution of direct current',
    formula: 'U * I * T / S * (1 + L)',
    f: ([u = 0, i = 0, t = 0, s = 0, l = 0]) => ((u * i * t) / s) * (1 + l),
    quantities: [
      ['U', 10, 0.029, 30],
      ['I', 0.1995, 0.00115, 30],
      ['T', 14.2, 0.0577, 9],
      ['S', 14, 0.0577, 9],
      ['L', 0, 0.00577, 1e9],
    ],
  },
  {
    title: 'reactance from correlated volts, amperes and phase',
    formula: 'V / I * sin(P)',
    f: ([v = 0, i = 0, p = 0]) => (v / i) * Math.sin(p),
    quantities: [
      ['V', 4.999, 0.0032093613, 4],
      ['I', 0.019661, 0.0000094710084, 4],
      ['P', 1.04446, 0.00075206383, 4],
    ],
    correlations: [
      { a: 'V', b: 'I', r: -0.3553 },
      { a: 'V', b: 'P', r: 0.8576 },
      { a: 'I', b: 'P', r: -0.6451 },
    ],
  },
  {
    title: 'mismatch of two reflections at a stated phase',
    formula: '10 * log10(1 - 2 * A * B * cos(P) + (A * B)^2)',
    f: ([a = 0, b = 0, p = 0]) => 10 * Math.log10(1 - 2 * a * b * Math.cos(p) + (a * b) ** 2),
    quantities: [
      ['A', 0.333, 0.05, 6],
      ['B', 0.111, 0.02, 6],
      ['P', 0.7, 0.2, 3],
    ],
  },
];

const inputsOf = ({ quantities }: Case): Input[] =>
  quantities.map(([id, mean, standardDeviation, degreesOfFreedom]) => ({
    id,
    distribution: normal({ mean, standardDeviation }),
    degreesOfFreedom,
  }));

/** Value of a formula or derivative at the means, at 40 digits. */
function exactly(node: MathNode, { quantities }: Case): Decimal {
  const scope = Object.fromEntries(quantities.map(([id, value]) => [id, math.bignumber(value)]));
  return new Big(node.evaluate(scope).toString());
}

function exactResult(item: Case) {
  const node = math.parse(item.formula);
  const slopes = item.quantities.map(([id]) => exactly(math.derivative(node, id), item));
  const weights = item.quantities.map(([, , u], i) => (slopes[i] ?? new Big(0)).times(u));
  const r = (i: number, j: number) => {
    const [a, b] = [item.quantities[i]?.[0], item.quantities[j]?.[0]];
    const found = item.correlations?.find((c) => (c.a === a && c.b === b) || (c.a === b && c.b === a));
    return i === j ? 1 : (found?.r ?? 0);
  };
  let variance = new Big(0);
  weights.forEach((wi, i) => {
    weights.forEach((wj, j) => {
      variance = variance.plus(wi.times(wj).times(r(i, j)));
    });
  });
  const doubt = weights.reduce(
    (sum, w, i) => sum.plus(w.pow(4).div(item.quantities[i]?.[3] ?? 1)),
    new Big(0),
  );
  const degrees = item.correlations ? (item.quantities[0]?.[3] ?? 0) : variance.pow(2).div(doubt).toNumber();
  return { slopes, u: variance.sqrt().toNumber(), estimate: exactly(node, item).toNumber(), degrees };
}

describe.each(cases)('$title', (item) => {
  const model: FunctionModel = {
    kind: 'function',
    inputs: inputsOf(item),
    f: item.f,
    ...(item.correlations ? { correlations: item.correlations } : {}),
  };
  const exact = exactResult(item);

  test('sensitivities agree with symbolic derivatives to nine digits, within their error bounds', () => {
    sensitivitiesOf({ model }).forEach(({ value, errorBound }, i) => {
      const slope = exact.slopes[i]?.toNumber() ?? Number.NaN;
      expect(Math.abs(value / slope - 1)).toBeLessThan(1e-9);
      expect(Math.abs(value - slope)).toBeLessThan(errorBound + 1e-10 * Math.abs(slope));
    });
  });

  test('estimate, uncertainty and degrees of freedom agree with 40-digit sums', () => {
    const result = propagate({ model });
    expect(Math.abs(result.standardUncertainty / exact.u - 1)).toBeLessThan(1e-9);
    expect(Math.abs(result.degreesOfFreedom / exact.degrees - 1)).toBeLessThan(1e-8);
    const middle = (result.interval.lower + result.interval.upper) / 2;
    expect(Math.abs(middle - exact.estimate)).toBeLessThan(1e-12 * Math.max(1, Math.abs(exact.estimate)));
  });
});
