import { type Distribution, rectangular, transformed } from '#compute';
import { massModel } from '../sheet/published-models.ts';
import type { Check, Figure } from './check.ts';
import { figure } from './figure.ts';
import { simulatedOnce } from './simulated.ts';

/** 1/x of a density within limits. */
const inverseOf = (lower: number, upper: number): Distribution =>
  transformed({
    of: rectangular({ lower, upper }),
    forward: (x) => 1 / x,
    inverse: (y) => 1 / y,
    slope: (x) => -1 / x ** 2,
  });

const variance = ({ standardDeviation }: Distribution): number => (standardDeviation ?? Number.NaN) ** 2;
const meanOf = ({ mean }: Distribution): number => mean ?? Number.NaN;

/**
 * Exact standard deviation in mg: the air term has mean 0 and is independent of the masses, so that the variances are
 * those of the masses and E m^2 E (ra - ra0)^2 E (1/rW - 1/rR)^2.
 */
function exactUncertainty(): number {
  const [weight, reference] = [inverseOf(7000, 9000), inverseOf(7950, 8050)];
  const masses = 0.05 ** 2 + 0.02 ** 2;
  const air = variance(rectangular({ lower: 1.1, upper: 1.3 }));
  const inverse = variance(weight) + variance(reference) + (meanOf(weight) - meanOf(reference)) ** 2;
  return Math.sqrt(masses + (100_001.234 ** 2 + masses) * air * inverse);
}

const within = (of: Figure, amount: number): Figure => ({
  ...of,
  tolerance: {
    within: amount,
    because: 'both are simulations, each with its own noise; ends of a shortest interval scatter most',
  },
});

/** JCGM 101, 9.3: the weight by simulation, and exactly. */
export function massSimulated(): Check[] {
  const simulated = simulatedOnce(massModel, 0.95);
  return [
    {
      id: 's1-9.3-simulated',
      clause: '9.3, Table 6',
      title: 'a simulation of the weight gives the printed interval as nearly as simulations agree',
      status: 'published',
      given: 'shortest 95 % interval',
      tried: { path: '/learn/stacking/a-million-tries/', state: 'm=k&iv=s&tr=6&sd=101&v=1' },
      figures: [
        within(
          figure('deviation from 100 g', '1.2341', 'mg', () => simulated().mean ?? Number.NaN),
          0.0003,
        ),
        within(
          figure('u', '0.0754', 'mg', () => simulated().standardDeviation ?? Number.NaN),
          0.0002,
        ),
        within(
          figure('lower end', '1.0834', 'mg', () => simulated().shortest.lower),
          0.003,
        ),
        within(
          figure('upper end', '1.3825', 'mg', () => simulated().shortest.upper),
          0.003,
        ),
      ],
    },
    {
      id: 's1-9.3-exact',
      clause: '9.3, Table 6',
      title: 'the printed uncertainty of the weight carries the noise of its simulation',
      status: 'published',
      figures: [
        {
          ...figure('u', '0.0754', 'mg', exactUncertainty),
          differs: {
            exact: '0.07548',
            because:
              'A simulation’s own noise: the moments of this model can be had exactly and give 0.075 48. Ten million trials put the interval at 1.0845 to 1.3836, where a million in print have 1.0834 to 1.3825.',
          },
        },
      ],
    },
  ];
}
