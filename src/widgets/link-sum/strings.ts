import type { Coverage, LinkShape, Sizes } from '../../sheet/link-sum.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const shapes: Readonly<Record<LinkShape, string>> = {
  rectangular: 'Rectangular: limits, nothing else known',
  triangular: 'Triangular: limits, the middle likelier',
  arcsine: 'U-shaped: limits of a mismatch',
  normal: 'Bell: an expanded uncertainty, k = 2',
};
const sizes: Readonly<Record<Sizes, string>> = {
  stated: 'As stated: limits, or U of a bell',
  standard: 'Standard uncertainties',
};
const coverages: Readonly<Record<Coverage, string>> = {
  two: 'What k = 2 holds of a bell',
  ninetyFive: '95 in a hundred',
};

/** Words of the sum of links. */
export const strings = {
  name: 'Links added, their whole distribution and the bell that stands in for it',
  description: (summary: string): string =>
    `Filled: how likely each deviation of the sum is. Dashed: a bell of the same standard uncertainty. Below, on the same axis, the intervals. ${summary}`,
  axes: { up: 'how likely, per dB', along: 'deviation of the sum, in dB' },
  lanes: {
    whole: 'Whole distribution',
    bell: (factor: string): string => `Bell, k = ${factor}`,
    worst: 'Worst case',
    noLimit: 'no limit',
    waiting: 'not yet',
  },
  answers: {
    whole: (share: string): string => `whole distribution, the middle ${share}: the filled strip`,
    waiting: 'Not worked out yet',
    bell: (factor: string): string =>
      `root of the sum of squares, times ${factor}, as if it were a bell: the dashed outline`,
    covered: 'of the whole distribution lie in the dashed interval',
    coveredNow: ({ factor, share }: { factor: string; share: string }): string =>
      `k = ${factor} holds ${share}`,
    factor: (share: string): string => `standard uncertainties that would reach to ${share}`,
    factorNow: (factor: string): string => `k = ${factor}`,
    worst: 'worst case, all links at their limits at once: the end marks',
    noWorst: 'No worst case',
    noWorstWords: 'a bell has no limit; nothing is guaranteed',
  },
  summary: ({ count, whole, bell }: { count: string; whole: string; bell: string }): string =>
    `Links in the sum: ${count}. Bell: ${bell}. Whole distribution: ${whole}.`,
  settings: {
    caption: 'How many links, and what is counted',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      coverage: coverages,
      sizes,
      firstShape: shapes,
      secondShape: shapes,
      thirdShape: shapes,
      fourthShape: shapes,
      fifthShape: shapes,
    },
    units: {
      count: 'none',
      first: 'dB',
      second: 'dB',
      third: 'dB',
      fourth: 'dB',
      fifth: 'dB',
    },
  } satisfies SettingsWords,
  more: 'Shapes of the links, and what is asked for',
  note: 'Thin line: the first link alone. Pull the knob to make it wider or narrower, or type its size. The links are independent of each other and even about nothing.',
  reset: 'Back to one link',
  noScript: 'Adding and pulling need JavaScript; the figure and its numbers are complete without it.',
} as const;
