import { type Distribution, evaluate, rice, transformed } from '#compute';
import { PART_U } from '../sheet/published-models.ts';
import type { Check, Figure } from './check.ts';
import { figure } from './figure.ts';

const MILLIONTHS = 1e6;

/** Comparison loss in millionths: the square of a reflection whose length follows the Rice distribution. */
const lossOf = (x1: number): Distribution =>
  transformed({
    of: rice({ offset: x1, scale: PART_U }),
    forward: (length) => MILLIONTHS * length ** 2,
    inverse: (loss) => Math.sqrt(loss / MILLIONTHS),
    slope: (length) => 2 * MILLIONTHS * length,
  });

const wholeOf = (x1: number) => {
  const input = { id: 'loss', distribution: lossOf(x1), degreesOfFreedom: Number.POSITIVE_INFINITY };
  const { whole } = evaluate({ model: { kind: 'sum', constant: 0, inputs: [input], sensitivities: [1] } });
  return 'unavailable' in whole ? undefined : whole;
};

const shortest = (x1: number, end: 'lower' | 'upper'): number => wholeOf(x1)?.shortest?.[end] ?? Number.NaN;
const symmetric = (x1: number, end: 'lower' | 'upper'): number => wholeOf(x1)?.symmetric[end] ?? Number.NaN;

/** Noise of a simulation in print, with the exact value beside it. */
const noisy = (of: Figure, exact: string, because: string): Figure => ({
  ...of,
  differs: { exact, because },
});

const flat =
  'A simulation’s own noise. The ends of a shortest interval are where the density is equal on both sides; moving both a little hardly changes the length, so that they scatter more than other results of a simulation.';

const simulated = (): Check[] => [
  {
    id: 's1-9.4-simulated-10',
    clause: '9.4, Table 8',
    title: 'a reflection of 0.010 has the printed mean and uncertainty, and nearly the printed interval',
    status: 'published',
    given: 'print from a simulation; shortest 95 % interval; in millionths',
    tried: { path: '/learn/stacking/a-million-tries/', state: 'm=l&x=10&iv=s&tr=6&sd=101&v=1' },
    figures: [
      figure('mean', '150', '10⁻⁶', () => lossOf(0.01).mean ?? Number.NaN),
      figure('u', '112', '10⁻⁶', () => lossOf(0.01).standardDeviation ?? Number.NaN),
      noisy(
        figure('upper end', '367', '10⁻⁶', () => shortest(0.01, 'upper')),
        '366.0',
        flat,
      ),
    ],
  },
  {
    id: 's1-9.4-simulated-50',
    clause: '9.4, Table 8',
    title: 'a reflection of 0.050 has the printed uncertainty, and nearly the printed mean and interval',
    status: 'published',
    given: 'print from a simulation; shortest 95 % interval; in millionths',
    tried: { path: '/learn/stacking/a-million-tries/', state: 'm=l&x=50&iv=s&tr=6&sd=101&v=1' },
    figures: [
      noisy(
        figure('mean', '2551', '10⁻⁶', () => lossOf(0.05).mean ?? Number.NaN),
        '2550.0',
        'A simulation’s own noise: the mean is exactly x₁² + 2u².',
      ),
      figure('u', '502', '10⁻⁶', () => lossOf(0.05).standardDeviation ?? Number.NaN),
      noisy(
        figure('lower end', '1590', '10⁻⁶', () => shortest(0.05, 'lower')),
        '1593.6',
        flat,
      ),
      noisy(
        figure('upper end', '3543', '10⁻⁶', () => shortest(0.05, 'upper')),
        '3548.6',
        flat,
      ),
    ],
  },
];

const exact = (): Check => ({
  id: 's1-9.4-whole-exact',
  clause: '9.4, noncentral chi-square of two degrees',
  title: 'the whole distribution of the loss ends where noncentral chi-square does',
  status: 'recomputed',
  given: 'in millionths',
  figures: [
    figure('x₁ = 0.010, shortest, upper end', '366.0', '10⁻⁶', () => shortest(0.01, 'upper')),
    figure('symmetric, lower end', '8.547', '10⁻⁶', () => symmetric(0.01, 'lower')),
    figure('symmetric, upper end', '427.12', '10⁻⁶', () => symmetric(0.01, 'upper')),
    figure('x₁ = 0.050, shortest, lower end', '1593.6', '10⁻⁶', () => shortest(0.05, 'lower')),
    figure('shortest, upper end', '3548.6', '10⁻⁶', () => shortest(0.05, 'upper')),
    figure('symmetric, lower end', '1638.48', '10⁻⁶', () => symmetric(0.05, 'lower')),
    figure('symmetric, upper end', '3603.36', '10⁻⁶', () => symmetric(0.05, 'upper')),
  ],
});

/** JCGM 101, 9.4: the whole distribution of the comparison loss. */
export const lossDistributions = (): Check[] => [...simulated(), exact()];
