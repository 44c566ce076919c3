import { propagate, secondOrder } from '#compute';
import { massModel } from '../sheet/published-models.ts';
import type { Check } from './check.ts';
import { figure } from './figure.ts';

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
    tried: { path: '/learn/stacking/a-million-tries/', state: 'm=k&iv=s&tr=6&sd=101&v=1' },
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
    tried: { path: '/learn/stacking/a-million-tries/', state: 'm=k&iv=s&tr=6&or=2&sd=101&v=1' },
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
