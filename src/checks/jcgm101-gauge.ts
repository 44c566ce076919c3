import { arcsine, curvilinear, type FunctionModel, rectangular, student } from '#compute';
import type { Check, Figure } from './check.ts';
import { figure } from './figure.ts';
import { simulatedOnce } from './simulated.ts';
import { known } from './worked.ts';

const exactly = (id: string, distribution: FunctionModel['inputs'][number]['distribution']) => ({
  id,
  distribution,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

const t = (id: string, location: number, scale: number, degreesOfFreedom: number) =>
  exactly(id, student({ location, scale, degreesOfFreedom }));

/** The end gauge of GUM H.1 with the shapes that clause 9.5 gives its inputs; deviation from 50 mm in nm. */
const gaugeModel = (): FunctionModel => ({
  kind: 'function',
  inputs: [
    t('standard', 50_000_623, 25, 18),
    t('difference', 215, 6, 24),
    t('comparator, random', 0, 4, 5),
    t('comparator, systematic', 0, 7, 8),
    exactly('expansion', rectangular({ lower: 9.5e-6, upper: 13.5e-6 })),
    known('mean temperature', -0.1, 0.2),
    exactly('cycle', arcsine({ centre: 0, halfWidth: 0.5 })),
    exactly('expansion difference', curvilinear({ lower: -1e-6, upper: 1e-6, limitHalfWidth: 0.1e-6 })),
    exactly('temperature difference', curvilinear({ lower: -0.05, upper: 0.05, limitHalfWidth: 0.025 })),
  ],
  f: ([standard = 0, d = 0, d1 = 0, d2 = 0, alpha = 0, mean = 0, cycle = 0, dAlpha = 0, dTheta = 0]) =>
    standard + d + d1 + d2 - standard * (dAlpha * (mean + cycle) + alpha * dTheta) - 50_000_000,
});

const within = (of: Figure, amount: number): Figure => ({
  ...of,
  tolerance: { within: amount, because: 'both are simulations, each with its own noise' },
});

/** JCGM 101, 9.5: the end gauge by simulation. */
export function gaugeBlock(): Check[] {
  const simulated = simulatedOnce(gaugeModel, 0.99);
  return [
    {
      id: 's1-9.5-simulated',
      clause: '9.5, Table 11',
      title: 'a simulation of the end gauge gives the printed length, uncertainty and 99 % interval',
      status: 'published',
      given: 'deviation from 50 mm',
      figures: [
        figure('deviation', '838', 'nm', () => simulated().mean ?? Number.NaN),
        figure('u', '36', 'nm', () => simulated().standardDeviation ?? Number.NaN),
        within(
          figure('99 % interval, lower end', '745', 'nm', () => simulated().symmetric.lower),
          1.5,
        ),
        within(
          figure('upper end', '932', 'nm', () => simulated().symmetric.upper),
          1.5,
        ),
      ],
      note: 'Propagation gives u = 32 nm: a t of few degrees of freedom spreads more than its scale, and the product terms of H.1.7 come on top.',
    },
    {
      id: 's1-9.5-exact',
      clause: '9.5',
      title: 'the spread of the simulated end gauge is that of t shapes and product terms',
      status: 'recomputed',
      figures: [
        within(
          figure('u', '35.81', 'nm', () => simulated().standardDeviation ?? Number.NaN),
          0.1,
        ),
      ],
    },
  ];
}
