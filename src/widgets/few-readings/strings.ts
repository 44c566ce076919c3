import type { ScatterKnown } from '../../sheet/evening.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const known: Readonly<Record<ScatterKnown, string>> = {
  own: 'These readings alone',
  pooled: 'Five evenings before',
};

/** Words of the repeated readings. */
export const strings = {
  name: 'What the mean of a few readings may be, and the bell that two standard uncertainties stand for',
  description: (summary: string): string =>
    `Filled: how likely each level is, knowing the readings. Dashed: the bell of the same standard uncertainty. Below, on the same axis, the intervals. ${summary}`,
  axes: { up: 'how likely, per dB', along: 'level, in dBm' },
  lanes: {
    whole: 'By the readings',
    careless: 'Bell, k = 2',
    common: 'Shared limits',
    unknown: 'nobody knows',
    none: 'none',
  },
  readings: (list: string): string => `Readings: ${list} dBm.`,
  answers: {
    whole: (share: string): string => `mean, and the middle ${share} of what it may be: the filled strip`,
    alone: 'the one reading',
    unknown: 'No band',
    unknownWords:
      'one reading says nothing of its scatter: take a second one, or know the scatter from before',
    careless: (share: string): string =>
      `two standard uncertainties as if many had been read: the dashed outline, which holds ${share}`,
    factor: (factor: string): string => `k = ${factor}`,
    factorWords: ({ u, degrees }: { u: string; degrees: string }): string =>
      `by the effective degrees of freedom, ${degrees}, for a standard uncertainty of ${u}`,
    many: 'very many',
    nothing: 'Nothing',
    floor: 'would be left however often it is read: what all readings share',
  },
  summary: ({ count, band, careless }: Readonly<Record<string, string>>): string =>
    `Readings taken: ${count}. Band: ${band}. Two standard uncertainties: ${careless}.`,
  settings: {
    caption: 'How many readings, and what is known of them',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: { known },
    units: { count: 'none', limits: 'dB' },
  } satisfies SettingsWords,
  note: 'Before each reading everything was unplugged and connected again. The readings, and those of five evenings before, are invented.',
  reset: 'Back to three readings',
  noScript: 'Setting needs JavaScript; the figure and its numbers are complete without it.',
} as const;
