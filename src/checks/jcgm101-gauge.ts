import { gaugeModel } from '../sheet/published-models.ts';
import type { Check, Figure } from './check.ts';
import { figure } from './figure.ts';
import { simulatedOnce } from './simulated.ts';

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
      tried: { path: '/learn/stacking/a-million-tries/', state: 'm=g&co=99&tr=6&sd=101&v=1' },
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
