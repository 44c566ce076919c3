import {
  normalShareBelow,
  roundToPlace,
  roundUncertainty,
  statedResult,
  studentQuantile,
  welchSatterthwaite,
} from '#compute';
import type { Check } from './check.ts';
import { figure } from './figure.ts';
import { known, sumOf } from './worked.ts';

/** The three parts of G.4, in percent, with the degrees of freedom of 10, 5 and 15 readings. */
const parts = () => [known('a', 0, 0.25, 9), known('b', 0, 0.57, 4), known('c', 0, 0.82, 14)];

const g4 = (): Check[] => [
  {
    id: 'gum-g4',
    clause: 'G.4.1, example',
    title: 'three parts of 9, 4 and 14 degrees of freedom combine to 19 degrees',
    status: 'published',
    given: '0.25 %, 0.57 % and 0.82 % from 10, 5 and 15 readings',
    figures: [
      { what: 'combined u', printed: '1.03', unit: '%', compute: () => sumOf(parts()).standardUncertainty },
      { what: 'effective ν', printed: '19.0', unit: '', compute: () => sumOf(parts()).degreesOfFreedom },
      {
        what: 't for 95 %',
        printed: '2.09',
        unit: '',
        compute: () => sumOf(parts()).coverageFactor,
      },
      { what: 'expanded uncertainty', printed: '2.2', unit: '%', compute: () => sumOf(parts()).expanded },
    ],
    note: 'Unrounded, effective ν is 18.9987. The rule to cut it off at a whole number would give 18 and t = 2.10; the Guide prints 19.0 and uses 19. This site uses t at the real-valued degrees of freedom, so that nothing hangs on such an edge.',
  },
  {
    id: 'gum-g4-rounded',
    clause: 'G.4.1, example',
    title: 'the combined uncertainty must not be rounded before the degrees of freedom are computed',
    status: 'recomputed',
    figures: [
      {
        what: 'effective ν, unrounded',
        printed: '18.9987',
        unit: '',
        compute: () =>
          welchSatterthwaite([
            { contribution: 0.25, degreesOfFreedom: 9 },
            { contribution: 0.57, degreesOfFreedom: 4 },
            { contribution: 0.82, degreesOfFreedom: 14 },
          ]),
      },
      {
        what: 'effective ν, with 1.03 % instead',
        printed: '19.038',
        unit: '',
        compute: () => {
          const { degreesOfFreedom, standardUncertainty } = sumOf(parts());
          return degreesOfFreedom * (1.03 / standardUncertainty) ** 4;
        },
      },
    ],
  },
];

const g5 = (): Check => ({
  id: 'gum-g5',
  clause: 'G.5',
  title: 'limits of √3 standard uncertainties would cover 91.673 % of a normal distribution',
  status: 'published',
  figures: [
    {
      what: 'coverage of ±√3 u',
      printed: '91.673',
      unit: '%',
      compute: () => 100 * (2 * normalShareBelow(Math.sqrt(3)) - 1),
      differs: {
        exact: '91.6735',
        because: 'Cut off where it should be rounded: 91.673 55 % rounds to 91.674 %.',
        slip: true,
      },
    },
  ],
});

/** The mass of 7.2 as it is stated: estimate and interval in grams. */
function stated100g() {
  const { expanded } = sumOf([known('m', 0, 0.00035, 9)]);
  const estimate = 100.02147;
  return statedResult({ estimate, interval: { lower: estimate - expanded, upper: estimate + expanded } });
}

const reporting = (): Check[] => [
  {
    id: 'gum-7.2.4',
    clause: '7.2.4',
    title: 'a mass is stated with an expanded uncertainty for 9 degrees of freedom',
    status: 'published',
    given: 'u = 0.35 mg, 95 %',
    figures: [
      { what: 'k', printed: '2.26', unit: '', compute: () => sumOf([known('m', 0, 0.35, 9)]).coverageFactor },
      { what: 'U', printed: '0.79', unit: 'mg', compute: () => sumOf([known('m', 0, 0.35, 9)]).expanded },
    ],
  },
  {
    id: 'gum-7.2.2',
    clause: '7.2.2, 7.2.4',
    title: 'a mass and its expanded uncertainty are stated to the same place',
    status: 'published',
    given: 'u = 0.35 mg with 9 degrees of freedom, 95 %',
    figures: [
      figure('mass', '100.02147', 'g', () => stated100g().estimate),
      figure('plus and minus', '0.00079', 'g', () => stated100g().plus),
    ],
  },
  {
    id: 'gum-7.2.6',
    clause: '7.2.6',
    title: 'an uncertainty is rounded up with common sense, and the estimate to the same place',
    status: 'published',
    figures: [
      {
        what: 'rounded from 10.47 mΩ',
        printed: '11',
        unit: 'mΩ',
        compute: () => roundUncertainty({ uncertainty: 10.47, mode: 'up' }).value,
      },
      {
        what: 'rounded from 28.05 kHz',
        printed: '28',
        unit: 'kHz',
        compute: () => roundUncertainty({ uncertainty: 28.05, mode: 'up' }).value,
      },
      {
        what: 'rounded from 10.057 62 Ω, by 27 mΩ',
        printed: '10.058',
        unit: 'Ω',
        compute: () =>
          roundToPlace({ value: 10.05762, place: roundUncertainty({ uncertainty: 0.027 }).place ?? 0 }),
      },
    ].map((figure) => ({
      ...figure,
      tolerance: { within: 1e-9, because: 'the rounded value itself is compared' },
    })),
  },
];

/** GUM annex G and 7.2: coverage, degrees of freedom, reporting. */
export const annexG = (): Check[] => [...g4(), g5(), ...reporting()];

/** Student's factor as the Guide takes it from its table, at whole degrees of freedom. */
export const tableFactor = ({ percent, degrees }: { percent: number; degrees: number }): number =>
  studentQuantile({ share: (1 + percent / 100) / 2, degreesOfFreedom: degrees });
