import { type Interval, numericalTolerance, regularisedBeta, validatePropagation } from '#compute';
import type { Check } from './check.ts';
import { figure } from './figure.ts';

const tolerances = (): Check => ({
  id: 's1-7.9.2',
  clause: '7.9.2',
  title: 'half a unit of the last meaningful digit of the uncertainty is the tolerance of a simulation',
  status: 'published',
  figures: [
    figure('0.000 35 g, two digits', '0.000005', 'g', () =>
      numericalTolerance({ standardUncertainty: 0.00035, digits: 2 }),
    ),
    figure('0.000 4 g, one digit', '0.00005', 'g', () =>
      numericalTolerance({ standardUncertainty: 0.0004, digits: 1 }),
    ),
    figure('2 K, one digit', '0.5', 'K', () => numericalTolerance({ standardUncertainty: 2, digits: 1 })),
    figure('u = 2.0 of 9.2, two digits', '0.05', '', () =>
      numericalTolerance({ standardUncertainty: 2, digits: 2 }),
    ),
    figure('u = 2 of 9.2, one digit', '0.5', '', () =>
      numericalTolerance({ standardUncertainty: 2, digits: 1 }),
    ),
  ],
});

const simulated: Interval = { lower: 1.0834, upper: 1.3825 };

/** Propagation against the simulation of 9.3, both intervals as printed, to one digit of u. */
const against = (propagated: Interval) =>
  validatePropagation({ propagated, simulated, standardUncertainty: 0.0754, digits: 1 });
const first = () => against({ lower: 1.1285, upper: 1.3395 });
const second = () => against({ lower: 1.087, upper: 1.381 });
const yes = (valid: boolean): number => (valid ? 1 : 0);

const validation = (): Check => ({
  id: 's1-9.3-validation',
  clause: '9.3, Table 6',
  title: 'propagation of first order is not good enough for the weight, of second order it is',
  status: 'published',
  given: 'intervals as printed; valid is 1, not valid 0',
  figures: [
    figure('tolerance δ', '0.005', 'mg', () => first().tolerance),
    figure('first order, lower ends apart', '0.0451', 'mg', () => first().lowDifference),
    figure('first order, upper ends apart', '0.0430', 'mg', () => first().highDifference),
    figure('first order, valid', '0', '', () => yes(first().valid)),
    figure('second order, lower ends apart', '0.0036', 'mg', () => second().lowDifference),
    figure('second order, upper ends apart', '0.0015', 'mg', () => second().highDifference),
    figure('second order, valid', '1', '', () => yes(second().valid)),
  ],
});

/** Probability that at most `most` of so many trials fall within an interval of the given probability. */
const binomialAtMost = ({
  trials,
  most,
  probability,
}: {
  trials: number;
  most: number;
  probability: number;
}): number => regularisedBeta({ x: 1 - probability, a: trials - most, b: most + 1 });

const statisticalCoverage = (): Check => ({
  id: 's1-7.7-statistical',
  clause: '7.7, statistical coverage interval',
  title: 'the sorted values named in print hold 95 % of the distribution with a confidence of 99 %',
  status: 'recomputed',
  given: 'values r = 2420 and s = 97 581 of 10⁵; r = 24 747 and s = 975 254 of 10⁶',
  figures: [
    figure('confidence, 10⁵ trials', '0.990', '', () =>
      binomialAtMost({ trials: 1e5, most: 97_581 - 2420 - 1, probability: 0.95 }),
    ),
    figure('confidence, 10⁶ trials', '0.990', '', () =>
      binomialAtMost({ trials: 1e6, most: 975_254 - 24_747 - 1, probability: 0.95 }),
    ),
  ],
});

/** JCGM 101, 7.9 and 8.1: how near is near enough. */
export const numerics = (): Check[] => [tolerances(), validation(), statisticalCoverage()];
