import { type FunctionModel, type Input, propagate, rectangular, secondOrder } from '#compute';
import type { Check } from './check.ts';
import { figure } from './figure.ts';
import { known } from './worked.ts';

/** A quantity within limits. */
const within = (id: string, lower: number, upper: number): Input => ({
  id,
  distribution: rectangular({ lower, upper }),
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

const NOMINAL_MG = 100_000;
const REFERENCE_AIR = 1.2;

/** Deviation of a weight from 100 g in mg, weighed in air; densities in kg/m3. */
export const massModel = (): FunctionModel => ({
  kind: 'function',
  inputs: [
    known('reference', 100_000, 0.05),
    known('difference', 1.234, 0.02),
    within('air', 1.1, 1.3),
    within('weight', 7000, 9000),
    within('reference density', 7950, 8050),
  ],
  f: ([reference = 0, difference = 0, air = 0, weight = 1, standard = 1]) =>
    (reference + difference) * (1 + (air - REFERENCE_AIR) * (1 / weight - 1 / standard)) - NOMINAL_MG,
});

const first = () => propagate({ model: massModel() });
const secondU = (): number =>
  Math.sqrt(first().standardUncertainty ** 2 + secondOrder({ model: massModel() }).variance);
const middle = (): number => (first().interval.lower + first().interval.upper) / 2;

/** JCGM 101, 9.3: calibration of a weight. */
export const mass = (): Check[] => [
  {
    id: 's1-9.3-first-order',
    clause: '9.3, Table 6',
    title: 'propagation of first order gives the weight the printed interval, which is too narrow',
    status: 'published',
    figures: [
      figure('deviation from 100 g', '1.2340', 'mg', middle),
      figure('u', '0.0539', 'mg', () => first().standardUncertainty),
      figure('95 % interval, lower end', '1.1285', 'mg', () => first().interval.lower),
      figure('upper end', '1.3395', 'mg', () => first().interval.upper),
    ],
    note: 'The sensitivities to the densities are all zero at an air density of 1.2 kg/m³, so that first order misses 29 % of the standard uncertainty.',
  },
  {
    id: 's1-9.3-second-order',
    clause: '9.3, Table 6',
    title: 'with second-order terms the weight gets the printed, wider interval',
    status: 'published',
    figures: [
      figure('u', '0.0750', 'mg', secondU),
      figure('95 % interval, lower end', '1.0870', 'mg', () => middle() - first().coverageFactor * secondU()),
      figure('upper end', '1.3810', 'mg', () => middle() + first().coverageFactor * secondU()),
    ].map((one, i) =>
      i === 0
        ? one
        : {
            ...one,
            tolerance: {
              within: 1e-4,
              because:
                'print multiplies the rounded 0.0750 by 1.96; unrounded both ends lie a unit of the last digit further in',
            },
          },
    ),
  },
  {
    id: 's1-9.3-recomputed',
    clause: '9.3',
    title: 'both orders come out to the digits of a calculation apart from this site',
    status: 'recomputed',
    figures: [
      figure('u, first order', '0.0538516', 'mg', () => first().standardUncertainty),
      figure('lower end, first order', '1.128453', 'mg', () => first().interval.lower),
      figure('upper end, first order', '1.339547', 'mg', () => first().interval.upper),
      figure('u, second order', '0.07496', 'mg', secondU),
    ],
  },
];
