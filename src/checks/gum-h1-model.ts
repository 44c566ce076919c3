import { type FunctionModel, propagate } from '#compute';
import {
  DIFFERENCE_NM,
  differenceInputs as difference,
  gaugeInputs as inputsOfGauge,
  STANDARD_NM,
  temperatureInputs as temperature,
} from '../sheet/end-gauge.ts';
import type { Check } from './check.ts';
import { sumOf, uncertaintyOf } from './worked.ts';

/** l = lS + d - lS (dAlpha theta + alpha dTheta), in nm and kelvin. */
export const endGauge = (): FunctionModel => ({
  kind: 'function',
  inputs: inputsOfGauge(),
  f: ([standard = 0, d1 = 0, d2 = 0, d3 = 0, dAlpha = 0, dTheta = 0, alpha = 0, mean = 0, cycle = 0]) => {
    const length = STANDARD_NM + standard;
    return length + DIFFERENCE_NM + d1 + d2 + d3 - length * (dAlpha * (mean + cycle) + alpha * dTheta);
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
