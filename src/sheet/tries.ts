import {
  coverageOf,
  estimateOf,
  type FunctionModel,
  type Input,
  type Interval,
  ohms,
  powerOfVolts,
  propagate,
  rectangular,
  reflectionOfSwr,
  secondOrder,
  voltsRms,
} from '#compute';
import { gaugeModel, lossModel, massModel } from './published-models.ts';

/** What is tried: volts into watts, reflections of unknown phase, and three published examples. */
export const TRIED = ['watts', 'phase', 'loss', 'weight', 'gauge'] as const;
export type TriedModel = (typeof TRIED)[number];

/** How many trials are made: so many, or until the results have settled. */
export const TRIALS = ['100', '1000', '10000', '100000', '1000000', 'settled'] as const;
export type Trials = (typeof TRIALS)[number];

/** All that a run is made from: plain data, so that it can be sent. */
export interface TryOrder {
  readonly model: TriedModel;
  /** Limits of the volts and of the load's resistance, in percent. */
  readonly voltsPercent: number;
  readonly ohmsPercent: number;
  /** Standing wave ratios of transmitter and meter. */
  readonly sourceSwr: number;
  readonly meterSwr: number;
  /** Real part of the reflection, in thousandths, and how its two parts are correlated. */
  readonly reflection: number;
  readonly correlation: number;
  /** Whether propagation counts second-order terms. */
  readonly order: 'first' | 'second';
  readonly coverage: 'ninetyFive' | 'ninetyNine';
  readonly trials: Trials;
  readonly seed: number;
}

/** What the club reads across its dummy load, and what the load is said to have: both invented. */
export const READ_VOLTS = 4.9;
export const LOAD_OHMS = 50;

/** What somebody asks first. */
export const clubTry = (): TryOrder => ({
  model: 'watts',
  voltsPercent: 3,
  ohmsPercent: 5,
  sourceSwr: 3,
  meterSwr: 1.5,
  reflection: 0,
  correlation: 0,
  order: 'first',
  coverage: 'ninetyFive',
  trials: '100000',
  seed: 1,
});

const within = (id: string, lower: number, upper: number): Input => ({
  id,
  distribution: rectangular({ lower, upper }),
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

const about = (id: string, middle: number, percent: number): Input =>
  within(id, middle * (1 - percent / 100), middle * (1 + percent / 100));

/** Power in milliwatts from volts across a load. */
const wattsModel = ({ voltsPercent, ohmsPercent }: TryOrder): FunctionModel => ({
  kind: 'function',
  inputs: [about('volts', READ_VOLTS, voltsPercent), about('load', LOAD_OHMS, ohmsPercent)],
  f: ([volts = 0, load = 1]) => 1000 * powerOfVolts({ volts: voltsRms(volts), resistance: ohms(load) }),
});

/** What reflections put on an indication of power into an ideal load, in dB: -20 lg |1 - product of reflections|. */
function phaseModel({ sourceSwr, meterSwr }: TryOrder): FunctionModel {
  const product = reflectionOfSwr(sourceSwr) * reflectionOfSwr(meterSwr);
  return {
    kind: 'function',
    inputs: [within('phase', -Math.PI, Math.PI)],
    f: ([phase = 0]) => -10 * Math.log10(1 + product ** 2 - 2 * product * Math.cos(phase)),
  };
}

const MILLIONTHS = 1e6;

/** A model's output in millionths. */
const inMillionths = (model: FunctionModel): FunctionModel => ({
  ...model,
  f: (values) => MILLIONTHS * model.f(values),
});

/** The model of an order: in mW, dB, millionths, mg or nm. */
export function triedModelOf(order: TryOrder): FunctionModel {
  switch (order.model) {
    case 'watts':
      return wattsModel(order);
    case 'phase':
      return phaseModel(order);
    case 'loss':
      return inMillionths(lossModel(order.reflection / 1000, order.correlation));
    case 'weight':
      return massModel();
    case 'gauge':
      return gaugeModel();
  }
}

/** The probability that intervals are to hold. */
export const triedCoverage = ({ coverage }: TryOrder): number => (coverage === 'ninetyFive' ? 0.95 : 0.99);

/** Propagation as a few numbers. */
export interface Propagated {
  readonly estimate: number;
  readonly standardUncertainty: number;
  readonly interval: Interval;
}

/**
 * What propagation makes of an order, with second-order terms if they are asked for. Inputs with few degrees of freedom count with
 * the scale of their t, and the factor is that of the effective degrees of freedom, where they are stated.
 */
export function propagatedOf(order: TryOrder): Propagated {
  const model = triedModelOf(order);
  const coverageProbability = triedCoverage(order);
  const estimate = estimateOf(model);
  const { standardUncertainty: first, degreesOfFreedom } = propagate({ model, coverageProbability });
  const more = order.order === 'second' ? secondOrder({ model }) : { variance: 0, estimateShift: 0 };
  const standardUncertainty = Math.sqrt(Math.max(0, first ** 2 + more.variance));
  const { coverageFactor } = coverageOf({ coverageProbability, degreesOfFreedom });
  const reach = coverageFactor * standardUncertainty;
  return {
    estimate,
    standardUncertainty,
    interval: { lower: estimate - reach, upper: estimate + reach },
  };
}
