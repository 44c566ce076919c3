import { normal, normalShareBelow, risksOf } from '#compute';
import type { Check, Figure } from './check.ts';
import { figure } from './figure.ts';

/** Resistors of 1500 ohm, +-0.2 ohm, sorted with a guard band of 0.02 ohm; all values as deviations in ohm. */
const sorted = (acceptanceOhm: number) =>
  risksOf({
    prior: normal({ mean: 0, standardDeviation: 0.12 }),
    measurementUncertainty: 0.04,
    specification: { lower: -0.2, upper: 0.2 },
    acceptance: { lower: -acceptanceOhm, upper: acceptanceOhm },
  });
const guarded = () => sorted(0.18);

/** A count that print made from counts already rounded. */
const counted = (
  what: string,
  printed: string,
  unit: string,
  exact: string,
  compute: () => number,
): Figure => ({
  ...figure(what, printed, unit, compute),
  differs: {
    exact,
    because:
      'Print works on with whole resistors: 90 good ones, 7 of them rejected, 1 bad one accepted, so that 84 are accepted and 7 of 16 rejected ones are good. Unrounded 84.5 are accepted, and of the 15.5 rejected 6.9 are good.',
  },
});

const resistors = (): Check => ({
  id: 'jcgm106-resistors',
  clause: 'Global risk, resistors',
  title:
    'of a hundred resistors sorted with a guard band as many are good, bad, wronged and let through as printed',
  status: 'published',
  given:
    'values spread by 0.12 Ω, measured with u = 0.04 Ω, accepted within ±0.18 Ω of a tolerance of ±0.2 Ω',
  figures: [
    figure('good ones', '0.90', '', () => guarded().conforming),
    figure('consumer’s risk', '0.01', '', () => guarded().consumer),
    figure('producer’s risk', '0.07', '', () => guarded().producer),
    counted('accepted of 100', '84', '', '84.53', () => 100 * guarded().accepted),
    counted('good among the rejected', '44', '%', '44.6', () => 100 * guarded().conformingAmongRejected),
  ],
  tried: { path: '/learn/measuring/inside-outside-cant-tell/', state: 'it=r&mu=0.25&v=1' },
});

const exact = (): Check => ({
  id: 'jcgm106-resistors-exact',
  clause: 'Global risk, resistors',
  title: 'the risks of the sorted resistors come out to the digits of a calculation apart from this site',
  status: 'recomputed',
  figures: [
    figure('good ones', '0.904419', '', () => guarded().conforming),
    figure('consumer’s risk', '0.0098783', '', () => guarded().consumer),
    figure('producer’s risk', '0.0690265', '', () => guarded().producer),
    figure('accepted', '0.845271', '', () => guarded().accepted),
    figure('good among the rejected', '0.44611', '', () => guarded().conformingAmongRejected),
    figure('consumer’s risk without guard band', '0.0189422', '', () => sorted(0.2).consumer),
    figure('producer’s risk without guard band', '0.0372078', '', () => sorted(0.2).producer),
  ],
});

const roundedTwice = {
  exact: '95.44997',
  because: 'Rounded twice: 95.449 97 % first to 95.45 and then to 95.5; at once it is 95.4.',
  slip: true,
} as const;

const normalShares = (): Check => ({
  id: 'jcgm106-a3',
  clause: 'A.3',
  title: 'one, two and three standard deviations hold the printed shares of a normal distribution',
  status: 'published',
  figures: (
    [
      [1, '68.3'],
      [2, '95.5'],
      [3, '99.7'],
    ] as const
  ).map(([k, printed]) => {
    const share = figure(`within ${k} σ`, printed, '%', () => 100 * (2 * normalShareBelow(k) - 1));
    return k === 2 ? { ...share, differs: roundedTwice } : share;
  }),
});

const guardBandOfU = (): Check => ({
  id: 'jcgm106-guard-u',
  clause: 'Guard band w = U = 2u',
  title: 'a guard band of U leaves a risk of at most 2.3 % per limit',
  status: 'published',
  figures: [figure('largest risk of a false accept', '2.3', '%', () => 100 * normalShareBelow(-2))],
  tried: { path: '/learn/measuring/inside-outside-cant-tell/', state: 're=27&v=1' },
});

/** JCGM 106: risks of sorting, and shares of a normal distribution. */
export const sortingRisks = (): Check[] => [resistors(), exact(), guardBandOfU(), normalShares()];
