import { chiSquareQuantile, propagate, secondOrder } from '#compute';
import { lossModel, PART_U } from '../sheet/published-models.ts';
import type { Check } from './check.ts';
import { checksOfTable } from './family.ts';
import { figure } from './figure.ts';
import { printedRows } from './rows.ts';

const MILLIONTHS = 1e6;

const firstU = (x1: number, r = 0): number => propagate({ model: lossModel(x1, r) }).standardUncertainty;
const secondU = (x1: number, r = 0): number =>
  Math.sqrt(firstU(x1, r) ** 2 + secondOrder({ model: lossModel(x1, r) }).variance);
const meanLoss = (x1: number): number => x1 ** 2 + secondOrder({ model: lossModel(x1) }).estimateShift;

/** Estimate and uncertainty of first and second order, in millionths. */
const columns = [
  'mean, second order',
  'u, first order',
  'u, second order',
  'lower end, first order',
  'upper end, first order',
  'lower end, second order',
  'upper end, second order',
];
const K95 = () => propagate({ model: lossModel(0.01) }).coverageFactor;

const uncorrelated = (): Check[] =>
  checksOfTable({
    id: 's1-9.4-r0',
    heading: 'Tables 7 and 8: comparison loss, parts independent, in millionths',
    clause: '9.4, Tables 7 and 8',
    status: 'published',
    columns: columns.map((what) => ({ what, unit: '' })),
    rows: printedRows(
      '0.000 50 0 50 0 0 -98 98\n0.010 150 100 112 -96 296 -119 319\n0.050 2550 500 502 1520 3480 1515 3485',
    ),
    row: (x1) => `x₁ = ${x1}`,
    title: (x1) =>
      `a reflection of ${x1} costs what is printed, with the printed uncertainties of both orders`,
    compute: (row, column) => {
      const x1 = Number(row);
      const [one, two] = [firstU(x1), secondU(x1)];
      const all = [
        meanLoss(x1),
        one,
        two,
        x1 ** 2 - K95() * one,
        x1 ** 2 + K95() * one,
        x1 ** 2 - K95() * two,
        x1 ** 2 + K95() * two,
      ];
      return MILLIONTHS * (all[column] ?? Number.NaN);
    },
  });

const correlated = (): Check[] =>
  checksOfTable({
    id: 's1-9.4-r09',
    heading: 'Comparison loss, parts correlated by r = 0.9, in millionths',
    clause: '9.4.3, closed form 2u√(x₁² + (1 + r²)u²)',
    status: 'recomputed',
    columns: [{ what: 'u, second order', unit: '' }],
    rows: printedRows('0.000 67.268\n0.010 120.520\n0.050 504.505'),
    row: (x1) => `x₁ = ${x1}`,
    title: (x1) => `a reflection of ${x1} with correlated parts has the uncertainty of the closed form`,
    compute: (x1) => MILLIONTHS * secondU(Number(x1), 0.9),
  });

/** For x1 = 0 the loss over u^2 is chi-square of two degrees of freedom. */
const quantile = (share: number): number =>
  MILLIONTHS * PART_U ** 2 * chiSquareQuantile({ share, degreesOfFreedom: 2 });

const annexF = (): Check[] => [
  {
    id: 's1-f-intervals',
    clause: 'Annex F',
    title: 'without reflection the loss follows chi-square, with the printed 95 % intervals',
    status: 'published',
    given: 'x₁ = 0, parts independent, in millionths',
    tried: { path: '/learn/stacking/a-million-tries/', state: 'm=l&iv=s&tr=6&sd=101&v=1' },
    figures: [
      figure('shortest interval, upper end', '149.8', '10⁻⁶', () => quantile(0.95)),
      figure('symmetric interval, lower end', '1.3', '10⁻⁶', () => quantile(0.025)),
      figure('symmetric interval, upper end', '184.4', '10⁻⁶', () => quantile(0.975)),
    ],
    note: 'The annex writes ±2u where its tables use 1.96, and 4u₁²u₂² for the second-order term 2u₁⁴ + 2u₂⁴: the two are equal only where both parts are equally uncertain, as they are here.',
  },
  {
    id: 's1-f-recomputed',
    clause: 'Annex F',
    title: 'without reflection the intervals end at the exact quantiles of chi-square',
    status: 'recomputed',
    figures: [
      figure('shortest interval, upper end', '149.787', '10⁻⁶', () => quantile(0.95)),
      figure('symmetric interval, lower end', '1.2659', '10⁻⁶', () => quantile(0.025)),
      figure('symmetric interval, upper end', '184.444', '10⁻⁶', () => quantile(0.975)),
    ],
  },
];

/** JCGM 101, 9.4: comparison loss in the calibration of a microwave power meter. */
export const comparisonLoss = (): Check[] => [...uncorrelated(), ...correlated(), ...annexF()];
