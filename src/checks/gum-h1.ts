import {
  arcsine,
  type FunctionModel,
  propagate,
  rectangular,
  secondOrder,
  welchSatterthwaite,
} from '#compute';
import type { Check } from './check.ts';
import { figure } from './figure.ts';
import { tableFactor } from './gum-annex-g.ts';
import { known, stated, sumOf, uncertaintyOf } from './worked.ts';

/** The comparison of the two gauges: repeatability (pooled), comparator random and systematic, in nm. */
const difference = () => [
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
const temperature = () => [
  known('mean', -0.1, 0.2),
  {
    id: 'cycle',
    distribution: arcsine({ centre: 0, halfWidth: 0.5 }),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  },
];

/** l = lS + d - lS (dAlpha theta + alpha dTheta), in nm and kelvin. */
const endGauge = (): FunctionModel => ({
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

const evaluated = () => propagate({ model: endGauge(), coverageProbability: 0.99 });

const contribution = (id: string): number =>
  evaluated().budget.find((row) => row.id === id)?.contribution ?? Number.NaN;

const inputs = (): Check => ({
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

const result = (): Check => ({
  id: 'gum-h1-result',
  clause: 'H.1.4 to H.1.6',
  title: 'the gauge is 50.000 838 mm long, with the printed contributions and combined uncertainty',
  status: 'published',
  figures: [
    {
      what: 'contribution of the standard',
      printed: '25',
      unit: 'nm',
      compute: () => contribution('standard'),
    },
    {
      what: 'of the expansion difference',
      printed: '2.9',
      unit: 'nm',
      compute: () => contribution('expansion difference'),
    },
    {
      what: 'of the temperature difference',
      printed: '16.6',
      unit: 'nm',
      compute: () => contribution('temperature difference'),
    },
    {
      what: 'combined variance',
      printed: '1002',
      unit: 'nm²',
      compute: () => evaluated().standardUncertainty ** 2,
    },
    { what: 'combined u', printed: '32', unit: 'nm', compute: () => evaluated().standardUncertainty },
    {
      what: 'length',
      printed: '50 000 838',
      unit: 'nm',
      compute: () => (evaluated().interval.lower + evaluated().interval.upper) / 2,
    },
    {
      what: 't for 99 % and 16 degrees',
      printed: '2.92',
      unit: '',
      compute: () => tableFactor({ percent: 99, degrees: 16 }),
    },
  ],
});

/** The formula as H.1.6 displays it, with the contributions as printed and any combined uncertainty put in. */
function asDisplayed(combinedNm: number): number {
  const parts = [
    { contribution: 25, degreesOfFreedom: 18 },
    { contribution: 9.7, degreesOfFreedom: 25.6 },
    { contribution: 2.9, degreesOfFreedom: 50 },
    { contribution: 16.6, degreesOfFreedom: 2 },
  ];
  const variance = parts.reduce((sum, part) => sum + part.contribution ** 2, 0);
  return welchSatterthwaite(parts) * (combinedNm ** 2 / variance) ** 2;
}

const degrees = (): Check => ({
  id: 'gum-h1-degrees',
  clause: 'H.1.6',
  title: 'the effective degrees of freedom follow from the unrounded uncertainty only',
  status: 'published',
  figures: [
    {
      what: 'effective ν, unrounded u',
      printed: '16.7',
      unit: '',
      compute: () => evaluated().degreesOfFreedom,
    },
    { what: 'effective ν from (31.65 nm)⁴', printed: '16.7', unit: '', compute: () => asDisplayed(31.65) },
    {
      what: 'effective ν from (32 nm)⁴ as displayed',
      printed: '16.7',
      unit: '',
      compute: () => asDisplayed(32),
      differs: {
        exact: '17.47',
        because:
          'The Guide displays (32 nm)⁴ in the numerator and prints 16.7. With 32 nm it would be 17.47, cut off to 17; the printed value comes from the unrounded 31.65 nm. Never feed a rounded uncertainty into this formula: its fourth power counts.',
      },
    },
  ],
});

const expanded = (): Check => ({
  id: 'gum-h1-expanded',
  clause: 'H.1.6',
  title: 'the expanded uncertainty depends on what was rounded on the way',
  status: 'published',
  figures: [
    {
      what: 'U for 99 %, u and ν rounded as in print',
      printed: '93',
      unit: 'nm',
      compute: () => tableFactor({ percent: 99, degrees: 16 }) * 32,
    },
    {
      what: 'U for 99 %, nothing rounded',
      printed: '93',
      unit: 'nm',
      compute: () => evaluated().expanded,
      differs: {
        exact: '91.93',
        because:
          'Print cuts 16.7 degrees of freedom to 16 and rounds 31.66 nm to 32 before it multiplies; both make U larger. This site rounds once, at the end.',
      },
    },
  ],
});

const curvature = () => secondOrder({ model: endGauge() });

/** The mixed terms of one input with others, as one uncertainty. */
const mixed = (a: string, others: readonly string[]): number =>
  Math.hypot(
    ...curvature()
      .pairs.filter(
        (pair) => [pair.a, pair.b].includes(a) && others.some((b) => [pair.a, pair.b].includes(b)),
      )
      .map(({ uncertainty }) => uncertainty),
  );

const secondOrderTerms = (): Check => ({
  id: 'gum-h1-second-order',
  clause: 'H.1.7',
  title: 'products of two uncertainties are not negligible here: they bring the gauge to 34 nm',
  status: 'published',
  figures: [
    figure('expansion difference with temperature', '11.7', 'nm', () =>
      mixed('expansion difference', ['mean', 'cycle']),
    ),
    figure('expansion with temperature difference', '1.7', 'nm', () =>
      mixed('expansion', ['temperature difference']),
    ),
    figure('combined u', '34', 'nm', () =>
      Math.sqrt(evaluated().standardUncertainty ** 2 + curvature().variance),
    ),
  ],
});

const recomputed = (): Check => ({
  id: 'gum-h1-recomputed',
  clause: 'H.1.4 to H.1.6',
  title: 'without any rounding on the way the gauge comes out as worked out apart from this site',
  status: 'recomputed',
  figures: [
    { what: 'combined u', printed: '31.658', unit: 'nm', compute: () => evaluated().standardUncertainty },
    { what: 'effective ν', printed: '16.741', unit: '', compute: () => evaluated().degreesOfFreedom },
    {
      what: 'U for 99 %, ν cut to 16',
      printed: '92.47',
      unit: 'nm',
      compute: () => tableFactor({ percent: 99, degrees: 16 }) * evaluated().standardUncertainty,
    },
  ],
});

/** GUM H.1: calibration of an end gauge. */
export const annexH1 = (): Check[] => [
  inputs(),
  result(),
  degrees(),
  expanded(),
  secondOrderTerms(),
  recomputed(),
];
