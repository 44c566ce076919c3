import { type ManyOutputs, propagateMany, summariseReadings } from '#compute';
import {
  correlationBetween as between,
  meanOf,
  SETS as READINGS,
  uncertaintyOf,
} from '../sheet/simultaneous.ts';
import type { Check, Figure } from './check.ts';
import { figure } from './figure.ts';
import { known } from './worked.ts';

/** R, X and Z from volts, milliamperes and phase. */
const resistance = ([v = 0, i = 0, phi = 0]: readonly number[]) => (1000 * v * Math.cos(phi)) / i;
const reactance = ([v = 0, i = 0, phi = 0]: readonly number[]) => (1000 * v * Math.sin(phi)) / i;
const impedance = ([v = 0, i = 0]: readonly number[]) => (1000 * v) / i;
const OUTPUTS = [
  { id: 'R', f: resistance },
  { id: 'X', f: reactance },
  { id: 'Z', f: impedance },
] as const;

/** The law of propagation for all three outputs, with the correlations of the readings or without. */
function propagated({ correlated }: { correlated: boolean }): ManyOutputs {
  const names = ['V', 'I', 'phi'] as const;
  const pairs = [
    ['V', 'I'],
    ['V', 'phi'],
    ['I', 'phi'],
  ] as const;
  return propagateMany({
    inputs: names.map((name) => known(name, meanOf(name), uncertaintyOf(name), 4)),
    correlations: correlated ? pairs.map(([a, b]) => ({ a, b, r: between(a, b) })) : [],
    outputs: OUTPUTS,
  });
}

/** The second approach: each output from each set of readings, then mean and scatter. */
const fromSets = (output: number): number[] =>
  READINGS.V.map((v, k) => OUTPUTS[output]?.f([v, READINGS.I[k] ?? 0, READINGS.phi[k] ?? 0]) ?? Number.NaN);

const byBoth = () => propagated({ correlated: true });
const uOf = (of: ManyOutputs, output: number): number =>
  of.outputs[output]?.standardUncertainty ?? Number.NaN;
const rOf = (of: ManyOutputs, i: number, j: number): number => of.correlation[i]?.[j] ?? Number.NaN;

const inputs = (): Check => ({
  id: 'gum-h2-inputs',
  clause: 'Table H.2',
  title: 'five sets of readings have the printed means, uncertainties and correlations',
  status: 'published',
  figures: [
    figure('mean of V', '4.9990', 'V', () => meanOf('V')),
    figure('mean of I', '19.6610', 'mA', () => meanOf('I')),
    figure('mean of φ', '1.04446', 'rad', () => meanOf('phi')),
    figure('u(V)', '0.0032', 'V', () => uncertaintyOf('V')),
    figure('u(I)', '0.0095', 'mA', () => uncertaintyOf('I')),
    figure('u(φ)', '0.00075', 'rad', () => uncertaintyOf('phi')),
    figure('r(V, I)', '-0.36', '', () => between('V', 'I')),
    figure('r(V, φ)', '0.86', '', () => between('V', 'phi')),
    figure('r(I, φ)', '-0.65', '', () => between('I', 'phi')),
  ],
});

/** T2: the print of u(X) is that of the second approach. */
const reactanceByPropagation = (): Figure => ({
  ...figure('u(X)', '0.295', 'Ω', () => uOf(byBoth(), 1)),
  differs: {
    exact: '0.29558',
    because:
      'By the law of propagation u(X) is 0.2956 Ω, which rounds to 0.296. The printed 0.295 is what the second approach gives, the scatter of five values of X: 0.2955. The two are not the same sum for a curved function; half a unit of the last digit is what it makes here.',
  },
});

/** One output with its uncertainty, as the figure of the lesson has it. */
const outputOf = (id: 'r' | 'x' | 'z', title: string, figures: readonly Figure[]): Check => ({
  id: `gum-h2-${id}`,
  clause: 'Table H.3',
  title,
  status: 'published',
  figures,
  tried: { path: '/learn/stacking/shared-causes/', state: `of=${id}&v=1` },
});

const eachOutput = (): Check[] => [
  outputOf('r', 'the resistance comes out as printed', [
    figure('R', '127.732', 'Ω', () => byBoth().outputs[0]?.estimate ?? Number.NaN),
    figure('u(R)', '0.071', 'Ω', () => uOf(byBoth(), 0)),
  ]),
  outputOf('x', 'the reactance comes out as printed, but for the last digit of its uncertainty', [
    figure('X', '219.847', 'Ω', () => byBoth().outputs[1]?.estimate ?? Number.NaN),
    reactanceByPropagation(),
  ]),
  outputOf('z', 'the impedance comes out as printed', [
    figure('Z', '254.260', 'Ω', () => byBoth().outputs[2]?.estimate ?? Number.NaN),
    figure('u(Z)', '0.236', 'Ω', () => uOf(byBoth(), 2)),
  ]),
];

const outputs = (): Check => ({
  id: 'gum-h2-outputs',
  clause: 'Table H.3',
  title: 'resistance, reactance and impedance are correlated among each other as printed',
  status: 'published',
  figures: [
    figure('r(R, X)', '-0.588', '', () => rOf(byBoth(), 0, 1)),
    figure('r(R, Z)', '-0.485', '', () => rOf(byBoth(), 0, 2)),
    figure('r(X, Z)', '0.993', '', () => rOf(byBoth(), 1, 2)),
  ],
});

const BY_SET = [
  ['R', '127.67 127.89 127.51 127.71 127.88', '0.071'],
  ['X', '220.32 219.79 220.64 218.97 219.51', '0.295'],
  ['Z', '254.64 254.29 254.84 253.49 254.04', '0.236'],
] as const;

const secondApproach = (): Check => ({
  id: 'gum-h2-sets',
  clause: 'Table H.4',
  title: 'each set of readings gives the printed values, and their scatter the printed uncertainties',
  status: 'published',
  figures: BY_SET.flatMap(([name, values, u], output) => [
    ...values
      .split(' ')
      .map((printed, k) =>
        figure(`${name}, set ${k + 1}`, printed, 'Ω', () => fromSets(output)[k] ?? Number.NaN),
      ),
    figure(
      `u(${name})`,
      u,
      'Ω',
      () => summariseReadings(fromSets(output)).standardDeviationOfMean ?? Number.NaN,
    ),
  ]),
});

const uncorrelated = (): Check => ({
  id: 'gum-h2-uncorrelated',
  clause: 'Table H.5',
  title: 'leaving out the correlations makes one uncertainty too large and others too small',
  status: 'published',
  figures: (
    [
      ['u(R)', '0.195', (of: ManyOutputs) => uOf(of, 0)],
      ['u(X)', '0.201', (of: ManyOutputs) => uOf(of, 1)],
      ['u(Z)', '0.204', (of: ManyOutputs) => uOf(of, 2)],
      ['r(R, X)', '0.056', (of: ManyOutputs) => rOf(of, 0, 1)],
      ['r(R, Z)', '0.527', (of: ManyOutputs) => rOf(of, 0, 2)],
      ['r(X, Z)', '0.878', (of: ManyOutputs) => rOf(of, 1, 2)],
    ] as const
  ).map(([what, printed, of]) =>
    figure(what, printed, what.startsWith('u') ? 'Ω' : '', () => of(propagated({ correlated: false }))),
  ),
  note: 'Without the correlations u(R) comes out 2.7 times too large and u(X) 0.68 times its size.',
});

/** GUM H.2: resistance and reactance measured at once. */
export const annexH2 = (): Check[] => [
  inputs(),
  ...eachOutput(),
  outputs(),
  secondApproach(),
  uncorrelated(),
];
