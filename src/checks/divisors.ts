import {
  arcsine,
  curvilinear,
  type Distribution,
  normalQuantile,
  normalShareBelow,
  rectangular,
  trapezoidal,
  triangular,
} from '#compute';
import type { Check, Figure } from './check.ts';

const unit = { lower: -1, upper: 1 } as const;

/** What a half-width of 1 is divided by to give the standard uncertainty. */
const divisorOf = ({ standardDeviation }: Distribution): number => 1 / (standardDeviation ?? Number.NaN);

const shape = (what: string, printed: string, distribution: () => Distribution): Figure => ({
  what,
  printed,
  unit: '',
  compute: () => divisorOf(distribution()),
  tolerance: { within: 1e-14, because: 'the last bits of a double' },
});

const normalFigure = (percent: string, printed: string, probability: () => number): Figure => ({
  what: `normal, ${percent} %`,
  printed,
  unit: '',
  compute: () => normalQuantile((1 + probability()) / 2),
  tolerance: { within: 1e-12, because: 'the last bits of a double, widened by the slope of the quantile' },
});

const shapes = (): Check[] => [
  {
    id: 'divisor-shapes',
    clause: '4.3.7 to 4.3.9, H.1.3.4',
    title: 'limits are divided by √3, √6 or √2 according to their shape',
    status: 'published',
    figures: [
      shape('rectangular, √3', '1.7320508075688772', () => rectangular(unit)),
      shape('triangular, √6', '2.449489742783178', () => triangular(unit)),
      shape('arcsine (U-shaped), √2', '1.4142135623730951', () => arcsine({ centre: 0, halfWidth: 1 })),
    ],
    note: 'A common error divides a mismatch, which is U-shaped, by √3: its standard uncertainty then comes out 18 % too small.',
  },
  {
    id: 'divisor-trapezoid',
    clause: '4.3.9',
    title: 'a trapezoid runs from the triangle to the rectangle with the width of its top',
    status: 'published',
    given: 'u = a √((1 + β²)/6), β the top over the base',
    figures: [
      shape('β = 1', '1.7320508075688772', () => trapezoidal({ ...unit, topRatio: 1 })),
      shape('β = 0', '2.449489742783178', () => trapezoidal({ ...unit, topRatio: 0 })),
      shape('β = 0.5', '2.190890230020664', () => trapezoidal({ ...unit, topRatio: 0.5 })),
    ],
  },
];

const factors = (): Check[] => [
  {
    id: 'divisor-normal',
    clause: '4.3.4 to 4.3.6',
    title: 'an expanded uncertainty is divided by the normal factor of its coverage probability',
    status: 'published',
    figures: [
      normalFigure('95', '1.959963984540054', () => 0.95),
      normalFigure('95.45', '2.0', () => 2 * normalShareBelow(2) - 1),
      normalFigure('99', '2.5758293035489004', () => 0.99),
      normalFigure('99.73', '3.0', () => 2 * normalShareBelow(3) - 1),
    ],
  },
  {
    id: 'divisor-half',
    clause: '4.3.5',
    title: 'limits that hold half of the values give 1.48 times their half-width',
    status: 'published',
    figures: [{ what: 'u/a', printed: '1.48', unit: '', compute: () => 1 / normalQuantile(0.75) }],
  },
  {
    id: 'divisor-resolution',
    clause: 'F.2.2.1',
    title: 'a display step counts as 0.29 of itself',
    status: 'published',
    figures: [
      {
        what: 'u/δx',
        printed: '0.29',
        unit: '',
        compute: () => rectangular({ lower: -0.5, upper: 0.5 }).standardDeviation ?? Number.NaN,
      },
    ],
  },
];

/** The divisors between limits and standard uncertainty. */
export const divisors = (): Check[] => [...shapes(), ...factors()];

/** JCGM 101, 6.4.3.4: limits that are only known to so much. */
export function curvilinearExample(): Check {
  return {
    id: 's1-curvilinear',
    clause: '6.4.3.4',
    title: 'limits of ±0.1 V that are themselves only known to half of it give 0.060 V',
    status: 'published',
    given: '10.0 V ± 0.1 V, d = 0.05 V',
    figures: [
      {
        what: 'u',
        printed: '0.060',
        unit: 'V',
        compute: () =>
          curvilinear({ lower: 9.9, upper: 10.1, limitHalfWidth: 0.05 }).standardDeviation ?? Number.NaN,
      },
    ],
  };
}
