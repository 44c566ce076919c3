import { componentOf } from '../../../src/compute/component.ts';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import type { FunctionModel, Input } from '../../../src/compute/model.ts';

/** A quantity known by mean and standard uncertainty, as the tables of the GUM give it. */
export const quantity = (
  id: string,
  mean: number,
  standardDeviation: number,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
): Input => ({ id, distribution: normal({ mean, standardDeviation }), degreesOfFreedom });

/** One part of a chain in decibels, limits +-halfWidth. */
export const limited = (
  id: string,
  halfWidth: number,
  more: {
    shape?: 'rectangular' | 'triangular' | 'arcsine';
    cause?: string;
    unit?: 'dB' | 'percentOfVolts';
  } = {},
): Input =>
  componentOf({
    id,
    statement: { form: 'limits', shape: more.shape ?? 'rectangular', halfWidth },
    unit: more.unit ?? 'dB',
    cause: more.cause,
  });

/** GUM H.1: the length of an end gauge against a standard of the same nominal length; lengths in nm, kelvin. */
export const endGauge = (): FunctionModel => {
  const uD = Math.hypot(5.8, 3.9, 6.7);
  const nuD = uD ** 4 / (5.8 ** 4 / 24 + 3.9 ** 4 / 5 + 6.7 ** 4 / 8);
  return {
    kind: 'function',
    inputs: [
      quantity('standard', 50_000_623, 25, 18),
      quantity('difference', 215, uD, nuD),
      {
        id: 'expansion difference',
        distribution: rectangular({ lower: -1e-6, upper: 1e-6 }),
        degreesOfFreedom: 50,
      },
      {
        id: 'temperature difference',
        distribution: rectangular({ lower: -0.05, upper: 0.05 }),
        degreesOfFreedom: 2,
      },
      {
        id: 'expansion',
        distribution: rectangular({ lower: 9.5e-6, upper: 13.5e-6 }),
        degreesOfFreedom: Number.POSITIVE_INFINITY,
      },
      quantity('mean temperature', -0.1, 0.2),
      {
        id: 'cycle of temperature',
        distribution: arcsine({ centre: 0, halfWidth: 0.5 }),
        degreesOfFreedom: Number.POSITIVE_INFINITY,
      },
    ],
    f: ([lS = 0, d = 0, da = 0, dt = 0, aS = 0, theta = 0, cycle = 0]) =>
      lS + d - lS * (da * (theta + cycle) + aS * dt),
  };
};

/** GUM H.2: five simultaneous observations of volts, amperes and phase. */
export const impedance = {
  volts: [5.007, 4.994, 5.005, 4.99, 4.999],
  milliamperes: [19.663, 19.639, 19.64, 19.685, 19.678],
  phase: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
} as const;

const meanOf = (x: readonly number[]) => x.reduce((a, b) => a + b, 0) / x.length;
const covarianceOf = (x: readonly number[], y: readonly number[]) => {
  const [mx, my] = [meanOf(x), meanOf(y)];
  return x.reduce((sum, xi, i) => sum + (xi - mx) * ((y[i] ?? 0) - my), 0) / (x.length - 1) / x.length;
};

/** Inputs and correlations of the means, unrounded. */
export const impedanceInputs = () => {
  const series = [
    ['V', impedance.volts],
    ['I', impedance.milliamperes.map((i) => i / 1000)],
    ['phi', impedance.phase],
  ] as const;
  const inputs = series.map(([id, x]) => quantity(id, meanOf(x), Math.sqrt(covarianceOf(x, x)), 4));
  const r = (a: number, b: number) => {
    const [[, x], [, y]] = [series[a] ?? ['', []], series[b] ?? ['', []]];
    return covarianceOf(x, y) / Math.sqrt(covarianceOf(x, x) * covarianceOf(y, y));
  };
  const correlations = [
    { a: 'V', b: 'I', r: r(0, 1) },
    { a: 'V', b: 'phi', r: r(0, 2) },
    { a: 'I', b: 'phi', r: r(1, 2) },
  ];
  return { inputs, correlations };
};

/** Resistance, reactance and impedance from volts, amperes and phase. */
export const impedanceOutputs = [
  { id: 'R', f: ([v = 0, i = 0, phi = 0]: readonly number[]) => (v / i) * Math.cos(phi) },
  { id: 'X', f: ([v = 0, i = 0, phi = 0]: readonly number[]) => (v / i) * Math.sin(phi) },
  { id: 'Z', f: ([v = 0, i = 0]: readonly number[]) => v / i },
] as const;
