import {
  arcsine,
  type Distribution,
  type Model,
  normal,
  randomFrom,
  rectangular,
  type StopRule,
  simulateAtOnce,
  student,
  studentQuantile,
  transformed,
  triangular,
  wholeDistribution,
} from '#compute';

/** One thing to be timed; `like` names the same thing done by numpy. */
export interface Measure {
  readonly name: string;
  readonly run: () => unknown;
  /** Repetitions to one sample, for what is quick. */
  readonly times?: number;
  readonly like?: string;
}

/** The first also names the same thing in numpy. */
export const MILLION = '1e6 trials, 8 inputs';
export const FOUR_MILLION = '4e6 trials, 8 inputs';
export const TEN_PARTS = 'whole distribution, 10 parts';

const within = (half: number) => rectangular({ lower: -half, upper: half });
const gauss = (standardDeviation: number) => normal({ mean: 0, standardDeviation });
const uShape = (halfWidth: number) => arcsine({ centre: 0, halfWidth });
const t = (degreesOfFreedom: number, scale: number) => student({ location: 0, scale, degreesOfFreedom });

/** A ratio of voltages in decibels. */
const inDecibels = (of: Distribution) =>
  transformed({
    of,
    forward: (x) => 20 * Math.log10(1 + x),
    inverse: (y) => 10 ** (y / 20) - 1,
    slope: (x) => 20 / (Math.LN10 * (1 + x)),
    domain: { lower: -1, upper: Number.POSITIVE_INFINITY },
  });

/** A chain in decibels, made anew each time, as a drag does it. */
const tenParts = () => [
  within(0.1),
  uShape(0.05),
  gauss(0.1),
  t(9, 0.03),
  inDecibels(within(0.03)),
  within(0.02),
  within(0.05),
  uShape(0.08),
  gauss(0.02),
  t(4, 0.02),
];

const tenInDecibels = () =>
  Array.from({ length: 10 }, (_, k) =>
    inDecibels(k % 2 === 0 ? within(0.01 + 0.003 * k) : gauss(0.01 + 0.001 * k)),
  );

const tenStudents = () => Array.from({ length: 10 }, (_, k) => t(3 + k, 0.005 + 0.001 * k));

const eightParts = () => [
  gauss(0.1),
  within(0.2),
  uShape(0.15),
  triangular({ lower: -0.1, upper: 0.1 }),
  t(9, 0.05),
  gauss(0.05),
  within(0.1),
  uShape(0.05),
];

function whole(parts: readonly Distribution[]) {
  const terms = parts.map((distribution) => ({ distribution, sensitivity: 1 }));
  return wholeDistribution({ constant: 27, terms, coverageProbability: 0.95 });
}

/** The sum of eight parts about 27, known as a sum or as a function like any other. */
function model(kind: 'sum' | 'function'): Model {
  const parts = eightParts();
  const inputs = parts.map((distribution, k) => ({
    id: `x${k}`,
    distribution,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  }));
  if (kind === 'sum') return { kind, constant: 27, inputs, sensitivities: parts.map(() => 1) };
  return {
    kind,
    inputs,
    f: ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0]) => 27 + a + b + c + d + e + f + g + h,
  };
}

function trials(kind: 'sum' | 'function', stop: StopRule) {
  return simulateAtOnce({ model: model(kind), coverageProbability: 0.95, random: randomFrom(1), stop });
}

const fixed = (count: number): StopRule => ({ kind: 'trials', trials: count });
/** Never settled to so small a part, so that all million are made and the rule is asked after each block. */
const unsettled: StopRule = { kind: 'settled', significantDigits: 2, part: 1e-6, mostTrials: 1_000_000 };

/** All that is timed. */
export function measures(): readonly Measure[] {
  return [
    { name: TEN_PARTS, run: () => whole(tenParts()), times: 30 },
    {
      name: 'the same with curve and shortest interval',
      run: () => [whole(tenParts()).curve, whole(tenParts()).shortest],
      times: 10,
    },
    { name: 'whole distribution, 10 parts in decibels', run: () => whole(tenInDecibels()), times: 30 },
    { name: 'whole distribution, 10 t of 3 to 12 degrees', run: () => whole(tenStudents()), times: 30 },
    {
      name: 'the same in percent of volts',
      run: () => whole(tenStudents().map(inDecibels)),
      times: 10,
    },
    { name: 'whole distribution, 2 U shapes', run: () => whole([uShape(0.1), uShape(0.2)]), times: 30 },
    { name: 'whole distribution, 40 parts', run: () => whole([1, 2, 3, 4].flatMap(tenParts)), times: 10 },
    {
      name: 'eight prefixes of a chain of 10',
      run: () => [3, 4, 5, 6, 7, 8, 9, 10].map((count) => whole(tenParts().slice(0, count))),
      times: 5,
    },
    {
      name: 't quantile, 4 degrees',
      run: () => studentQuantile({ share: 0.975, degreesOfFreedom: 4 }),
      times: 3000,
    },
    { name: MILLION, run: () => trials('sum', fixed(1_000_000)), like: MILLION },
    {
      name: 'the same, as a function',
      run: () => trials('function', fixed(1_000_000)),
      like: MILLION,
    },
    { name: 'the same, with the stop rule', run: () => trials('sum', unsettled), like: MILLION },
    { name: FOUR_MILLION, run: () => trials('sum', fixed(4_000_000)) },
  ];
}
