import type { Between, MeterSays } from '../../sheet/pads-in-a-row.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';
import type { Claim, Lay } from './spec.ts';

/** Words of a row of pads, laid end to end or at right angles. */
export const strings = {
  name: {
    straight: 'The limits end to end, and how far most sums reach',
    angles: 'The standard uncertainties at right angles, one after another',
  } satisfies Record<Lay, string>,
  description: {
    straight: (summary: string): string =>
      `Above: how likely each sum of all deviations is, from nothing to the right. First bar: the stated numbers end to end. Second bar: how far 95 percent of the sums reach. ${summary}`,
    angles: (summary: string): string =>
      `Above: lengths laid at right angles one after another, the longest first, and from start to end their result. First bar: the same lengths end to end. Second bar: the result. ${summary}`,
  } satisfies Record<Lay, (summary: string) => string>,
  figure: {
    limits: (text: string): string => `limits end to end: ${text}`,
    endless: (text: string): string => `limits ${text}; the meter has no limit`,
    most: (text: string): string => `95 % of the sums: ${text}`,
    asked: '95 % of the sums: being worked out',
    lengths: (text: string): string => `u of each, end to end: ${text}`,
    together: (text: string): string => `at right angles: ${text}`,
    /** The same two with what is dashed, which takes their room. */
    short: {
      most: (text: string): string => `95 %: ${text}`,
      together: (text: string): string => `result: ${text}`,
    },
    said: (text: string): string => `; dashed: ${text}`,
    axis: { straight: 'off by, dB', angles: 'u, dB' } satisfies Record<Lay, string>,
  },
  guaranteed: 'guaranteed: every part at its limit at once, all in the same direction',
  open: (text: string): string => `${text} and no end`,
  openWords: 'no guarantee: the limits of the pads, and a meter whose U is no limit',
  most: (share: string, text: string): string => `${share} within ${text}`,
  asked: '95 % within …',
  askedWords: 'the whole distribution of the sum is being worked out',
  mostWords: (ratio: string): string => `of the whole distribution; the guarantee is ${ratio} times as wide`,
  mostOpen: 'of the whole distribution, the meter’s bell included',
  spoken: {
    limits: (text: string): string => `Limits end to end: ${text}`,
    share: (text: string): string => `${text} of the variance`,
  },
  rare: (share: string): string => `${share} come near`,
  rareWords: 'of all sums lie in the last tenth of the guarantee, at either end',
  rarely: (share: string): string => `less than ${share}`,
  nearly: (share: string): string => `more than ${share}`,
  beyondOpen: (share: string): string => `${share} farther out`,
  beyondOpenWords: 'of all sums lie beyond the stated numbers end to end: the meter’s U has values beyond it',
  standard: (text: string): string => `u = ${text}`,
  standardWords: (text: string): string => `root of the sum of squares; end to end it would be ${text}`,
  share: ({ part, share }: { part: string; share: string }): string => `${part}: ${share}`,
  parts: { meter: 'The meter', pad: 'Each pad' },
  meterWords: (without: string): string =>
    `of the variance; a meter that is never off would leave u = ${without}`,
  padWords: (share: string): string => `of the variance, all pads alike; the meter ${share}`,
  padsOnly: 'of the variance, all pads alike, and nothing else brings any',
  expanded: (text: string): string => `U = ${text}`,
  expandedWords: 'k = 2: twice as long as the result of the path',
  expandedHolds: (share: string): string => `k = 2; holds ${share} of all sums`,
  said: (text: string): string => `Said: ${text}`,
  saidHolds: ({ what, share, factor }: { what: string; share: string; factor: string }): string =>
    `${what}; holds ${share} of all sums, k = ${factor}`,
  saidWords: {
    sum: 'all stated numbers added',
    root: 'root of their squares',
  } satisfies Record<Exclude<Claim, 'none'>, string>,
  table: {
    caption: 'Lengths, and shares of the variance',
    columns: ['Part', 'u', 'Share'],
    pad: (index: number): string => `Pad\u00a0${index}`,
    meter: 'Meter',
  },
  settings: {
    caption: 'The row and what is known of it',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      between: {
        rectangular: 'Nothing else',
        triangular: 'The middle is likelier',
        arcsine: 'A mismatch: the ends are',
      } satisfies Record<Between, string>,
      says: {
        limits: 'Limits',
        certificate: 'U with k = 2',
      } satisfies Record<MeterSays, string>,
      claim: {
        none: 'Nothing',
        sum: 'All stated numbers added',
        root: 'Root of their squares',
      } satisfies Record<Claim, string>,
    },
    units: { count: 'none', pad: 'dB', meter: 'dB' },
  } satisfies SettingsWords,
  note: {
    straight:
      'Curve: how likely each sum is; the other half, below nothing, is its mirror image and left out. First bar: pads, then the meter, and a firm mark where they end; dashed, with an arrow, where one of them has no limit. Strip: 95 % of the sums (95.45 %, as k = 2 has for a bell). Dashed line: what somebody says.',
    angles:
      'Path: each length at a right angle to the straight line from the start, the longest first; thin lines and corners show the right angles. First bar: the same lengths end to end. Thick line, in the path and as second bar: the result. Dashed line: what somebody says.',
  } satisfies Record<Lay, string>,
  reset: 'Back to the club’s row',
  noScript:
    'Pulling, typing and choosing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
