import {
  type Correlation,
  fitLine,
  type Input,
  mean,
  normal,
  type SumModel,
  summariseReadings,
} from '#compute';
import { bandOf } from './band.ts';

/** Five sets of simultaneous readings of one circuit: volts, milliamperes, phase in radians. Source: GUM, table H.2. */
export const SETS = {
  V: [5.007, 4.994, 5.005, 4.99, 4.999],
  I: [19.663, 19.639, 19.64, 19.685, 19.678],
  phi: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
} as const;
export type Read = keyof typeof SETS;

/** What is computed from them. */
export const OUTPUTS = ['R', 'X', 'Z'] as const;
export type ImpedanceOutput = (typeof OUTPUTS)[number];

const READ = ['V', 'I', 'phi'] as const satisfies readonly Read[];
const PAIRS = [
  ['V', 'I'],
  ['V', 'phi'],
  ['I', 'phi'],
] as const satisfies readonly (readonly [Read, Read])[];

/** Mean of a quantity's five readings. */
export const meanOf = (name: Read): number => mean(SETS[name]);

/** Standard deviation of that mean. */
export function uncertaintyOf(name: Read): number {
  const { standardDeviationOfMean } = summariseReadings(SETS[name]);
  if (standardDeviationOfMean === undefined)
    throw new RangeError('uncertaintyOf: readings must scatter, got none');
  return standardDeviationOfMean;
}

/** Correlation coefficient of two of the means, from how their readings rise and fall together (GUM 5.2.3). */
export function correlationBetween(a: Read, b: Read): number {
  const second: readonly number[] = SETS[b];
  const { slope } = fitLine({ points: SETS[a].map((x, i) => ({ x, y: second[i] ?? Number.NaN })) });
  return (slope * uncertaintyOf(a)) / uncertaintyOf(b);
}

/** R, X and Z at the means, in ohm; the readings of the current are milliamperes. */
function estimates(): Readonly<Record<ImpedanceOutput, number>> {
  const [v, i, phi] = [meanOf('V'), meanOf('I') / 1000, meanOf('phi')];
  return { R: (v / i) * Math.cos(phi), X: (v / i) * Math.sin(phi), Z: v / i };
}

/** How much an output moves with volts, milliamperes and radians: R = V cos(phi)/I, X = V sin(phi)/I, Z = V/I, each derived by hand. */
function sensitivities(output: ImpedanceOutput): readonly [number, number, number] {
  const value = estimates();
  const turned = { R: -value.X, X: value.R, Z: 0 };
  return [value[output] / meanOf('V'), -value[output] / meanOf('I'), turned[output]];
}

const inputOf = (name: Read): Input => ({
  id: name,
  distribution: normal({ mean: 0, standardDeviation: uncertaintyOf(name) }),
  degreesOfFreedom: SETS[name].length - 1,
});

/**
 * An output with its standard uncertainty, in ohm, where so much of the correlations between the readings is counted: none by 0, all
 * by 1. Source: GUM H.2, tables H.3 and H.5.
 */
export function impedanceOf({ output, counted }: { output: ImpedanceOutput; counted: number }): {
  readonly estimate: number;
  readonly standardUncertainty: number;
} {
  const correlations: readonly Correlation[] = PAIRS.map(([a, b]) => ({
    a,
    b,
    r: counted * correlationBetween(a, b),
  }));
  const model: SumModel = {
    kind: 'sum',
    constant: estimates()[output],
    inputs: READ.map(inputOf),
    sensitivities: sensitivities(output),
    correlations,
  };
  const { estimate, propagation } = bandOf(model, { coverageFactor: 1 });
  return { estimate, standardUncertainty: propagation.standardUncertainty };
}
