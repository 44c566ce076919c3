import {
  arcsine,
  type Distribution,
  normalQuantile,
  normalShareBelow,
  rectangular,
  studentQuantile,
  trapezoidal,
  triangular,
} from '#compute';
import { fewestDecimals } from '../text/place.ts';
import { numberText } from '../text/quantity-text.ts';
import { type PrintTable, steps } from './print-table.ts';

/** The share of a bell within so many standard deviations. */
const within = (deviations: number): number => 2 * normalShareBelow(deviations) - 1;
/** Coverage probabilities: those that budgets use, and those of one, two and three standard deviations of a bell. */
const coverages = () => [within(1), 0.9, 0.95, within(2), 0.99, within(3)];
const DEGREES = [...steps(1, 20, 1), 25, 30, 35, 40, 50, 100, Number.POSITIVE_INFINITY];

const number = (value: number, decimals: number): string => numberText('shown', { value, decimals });
/** A share in percent, to two decimals where it is no whole number of them. */
const percent = (share: number): string => number(100 * share, fewestDecimals(100 * share, 2));

function factor(probability: number, degreesOfFreedom: number): number {
  const share = (1 + probability) / 2;
  return Number.isFinite(degreesOfFreedom)
    ? studentQuantile({ share, degreesOfFreedom })
    : normalQuantile(share);
}

/** Coverage factors from Student's t, by degrees of freedom and coverage probability. */
export const studentTable = (): PrintTable => ({
  id: 'student',
  title: 'Student’s t as coverage factor',
  words:
    'What a standard uncertainty is multiplied by for an interval that holds so many percent, by degrees of freedom: one less than the number of readings, or the effective ones of a budget.',
  source: 'GUM (JCGM 100:2008), table G.2.',
  checks: 'gum',
  columns: [
    { what: 'Degrees of freedom' },
    ...coverages().map((probability) => ({ what: percent(probability), unit: '%' })),
  ],
  rows: DEGREES.map((degrees) => [
    Number.isFinite(degrees) ? number(degrees, 0) : '∞',
    ...coverages().map((probability) => number(factor(probability, degrees), 2)),
  ]),
});

const unit = { lower: -1, upper: 1 } as const;
const divisor = ({ standardDeviation }: Distribution): string =>
  number(1 / (standardDeviation ?? Number.NaN), 4);
const trapezoid = (topRatio: number): string => divisor(trapezoidal({ ...unit, topRatio }));

/** What a stated half-width is divided by to give a standard uncertainty. */
export const divisorTable = (): PrintTable => ({
  id: 'divisors',
  title: 'Divisors: from what is stated to a standard uncertainty',
  words: 'What is stated, divided by this, is the standard uncertainty that goes into the budget.',
  source: 'GUM (JCGM 100:2008), 4.3.7 to 4.3.9; the U shape H.1.3.4.',
  checks: 'gum',
  columns: [{ what: 'What is stated' }, { what: 'Shape taken' }, { what: 'Divisor' }],
  rows: [
    [
      'Limits, nothing else known; the last digit of a display',
      'rectangular, √3',
      divisor(rectangular(unit)),
    ],
    [
      'Limits, the middle more likely; two even limits of one size added',
      'triangular, √6',
      divisor(triangular(unit)),
    ],
    [
      'A mismatch of unknown phase; whatever swings like a sine',
      'U-shaped (arcsine), √2',
      divisor(arcsine({ centre: 0, halfWidth: 1 })),
    ],
    ['A sum of two limits, one half of the other', 'trapezoid, top 1/3 of the base', trapezoid(1 / 3)],
    ['Limits, the ends less likely', 'trapezoid, top 1/2 of the base', trapezoid(1 / 2)],
    ['Expanded uncertainty with k = 2', 'as its k says', number(2, 0)],
    ['95 %, a bell', 'normal', number(factor(0.95, Number.POSITIVE_INFINITY), 4)],
    ['99 %, a bell', 'normal', number(factor(0.99, Number.POSITIVE_INFINITY), 4)],
  ],
});
