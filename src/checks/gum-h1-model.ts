import { arcsine, type FunctionModel, propagate, rectangular } from '#compute';
import type { Check } from './check.ts';
import { known, stated, sumOf, uncertaintyOf } from './worked.ts';

/** The comparison of the two gauges: repeatability (pooled), comparator random and systematic, in nm. */
export const difference = () => [
  known('repeatability', 0, 13 / Math.sqrt(5), 24),
  stated('comparator, random', {
    form: 'coverage',
    expanded: 10,
    probability: 0.95,
    degreesOfFreedom: 5,
  }),
  stated('comparator, systematic', { form: 'expanded', expanded: 20, coverageFactor: 3 }, 0.25),
];

/** Temperature of the bench: its mean, and the cycle about it whose phase nobody noted. */
export const temperature = () => [
  known('mean', -0.1, 0.2),
  {
    id: 'cycle',
    distribution: arcsine({ centre: 0, halfWidth: 0.5 }),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  },
];

/** l = lS + d - lS (dAlpha theta + alpha dTheta), in nm and kelvin. */
export const endGauge = (): FunctionModel => ({
  kind: 'function',
  inputs: [
    stated('standard', { form: 'expanded', expanded: 75, coverageFactor: 3, degreesOfFreedom: 18 }),
    ...difference(),
    stated('expansion difference', { form: 'limits', shape: 'rectangular', halfWidth: 1e-6 }, 0.1),
    stated('temperature difference', { form: 'limits', shape: 'rectangular', halfWidth: 0.05 }, 0.5),
    {
      id: 'expansion',
      distribution: rectangular({ lower: 9.5e-6, upper: 13.5e-6 }),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    },
    ...temperature(),
  ],
  f: ([standard = 0, d1 = 0, d2 = 0, d3 = 0, dAlpha = 0, dTheta = 0, alpha = 0, mean = 0, cycle = 0]) => {
    const length = 50_000_623 + standard;
    return length + 215 + d1 + d2 + d3 - length * (dAlpha * (mean + cycle) + alpha * dTheta);
  },
});

/** The gauge by the law of propagation, for 99 %. */
export const evaluated = () => propagate({ model: endGauge(), coverageProbability: 0.99 });

/** GUM H.1.3: the inputs of the calibration. */
export const gaugeInputs = (): Check => ({
  id: 'gum-h1-inputs',
  clause: 'H.1.3',
  title: 'the inputs of the gauge calibration have the printed standard uncertainties',
  status: 'published',
  figures: [
    {
      what: 'u of the standard',
      printed: '25',
      unit: 'nm',
      compute: () => uncertaintyOf({ form: 'expanded', expanded: 75, coverageFactor: 3 }),
    },
    {
      what: 'u of the repeatability',
      printed: '5.8',
      unit: 'nm',
      compute: () => uncertaintyOf({ form: 'readings', standardDeviation: 13, count: 5 }),
    },
    {
      what: 'u of the comparator, random',
      printed: '3.9',
      unit: 'nm',
      compute: () =>
        uncertaintyOf({ form: 'coverage', expanded: 10, probability: 0.95, degreesOfFreedom: 5 }),
    },
    {
      what: 'u of the comparator, systematic',
      printed: '6.7',
      unit: 'nm',
      compute: () => uncertaintyOf({ form: 'expanded', expanded: 20, coverageFactor: 3 }),
    },
    {
      what: 'u of the difference',
      printed: '9.7',
      unit: 'nm',
      compute: () => sumOf(difference()).standardUncertainty,
    },
    {
      what: 'ν of the difference',
      printed: '25.6',
      unit: '',
      compute: () => sumOf(difference()).degreesOfFreedom,
    },
    {
      what: 'u of the temperature',
      printed: '0.41',
      unit: '°C',
      compute: () => sumOf(temperature()).standardUncertainty,
    },
  ],
});
