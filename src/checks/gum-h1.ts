import { secondOrder, welchSatterthwaite } from '#compute';
import type { Check } from './check.ts';
import { figure } from './figure.ts';
import { tableFactor } from './gum-annex-g.ts';
import { blocksOfH1 } from './gum-h1-blocks.ts';
import { endGauge, evaluated, gaugeInputs } from './gum-h1-model.ts';

/** The same budget in the figure of a lesson, rounded on the way as in print. */
const tried = { path: '/learn/stacking/writing-it-down/', state: 'su=g&n=5&k=99&r=w&v=1' } as const;

const contribution = (id: string): number =>
  evaluated().budget.find((row) => row.id === id)?.contribution ?? Number.NaN;

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
  tried,
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
  tried,
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
  gaugeInputs(),
  result(),
  degrees(),
  expanded(),
  secondOrderTerms(),
  recomputed(),
  blocksOfH1(),
];
