import type { Meaning, StatedSlip } from '../../sheet/stated.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

/** Words of the stated number and what becomes of it. */
export const strings = {
  name: 'A bar as thick as values are likely, and two lumps that are as hard to twirl',
  description: (summary: string): string =>
    `Above: how likely each deviation is, drawn as a bar. Below it two lumps of the same weight, as far out as makes them just as hard to twirl about the middle. ${summary}`,
  figure: {
    limits: (text: string): string => `bar: limits ${text}`,
    endless: (text: string): string => `bar without ends: U = ${text}, k = 2`,
    lumps: (text: string): string => `two lumps, as hard to twirl: ${text}`,
    lumpsSaid: ({ right, said }: { right: string; said: string }): string =>
      `lumps ${right}; dashed: ${said}`,
    strip: (text: string): string => `twice as far, k = 2: ${text}`,
    axis: 'deviation, dB',
  },
  standard: (text: string): string => `u = ${text}`,
  divided: ({ stated, divisor, why }: { stated: string; divisor: string; why: string }): string =>
    `${stated} divided by ${divisor}: ${why}`,
  why: {
    nothing: 'limits, and every value between them as likely as any other',
    plateau: 'limits, a flat middle half as wide, and falling sides',
    middle: 'limits, and values near the middle are likelier',
    wave: 'limits of a wave whose phase nobody knows: its ends are the likeliest',
    certificate: 'an expanded uncertainty with its coverage factor, for a bell',
  } satisfies Record<Meaning, string>,
  /** Divisors as they are known, and for the ear. */
  divisors: {
    nothing: { shown: '√3', spoken: 'the root of 3' },
    middle: { shown: '√6', spoken: 'the root of 6' },
    wave: { shown: '√2', spoken: 'the root of 2' },
    certificate: { shown: 'k = 2', spoken: 'k, which is 2' },
  },
  within: (share: string, plusMinus: string): string => `${share} within ${plusMinus}u`,
  allWithin: 'nothing lies beyond the limits, and ±2u reaches farther than they do',
  mostWithin: (share: string): string => `${share} within ±2u, and nothing beyond the limits`,
  someBeyond: (share: string): string => `${share} lies beyond ±2u, which is U: it is no limit`,
  said: { asStandard: 'u itself', asExpanded: 'U with k = 2', rootThree: 'limits, divided by √3' },
  slip: ({ said, ratio }: { said: string; ratio: string }): string => `Said: u = ${said}, ${ratio}`,
  ratio: (text: string): string => `${text} times what it is`,
  tooSmall: (text: string): string => `${text} too small`,
  justRight: 'just right',
  slipWords: (what: string): string => `if the number is taken for ${what}, whatever the paper means`,
  expanded: (text: string): string => `U = ${text}`,
  expandedWords: 'twice u (k = 2), as it would stand in a result of this part alone',
  settings: {
    caption: 'What is stated, and how it is read',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      meaning: {
        nothing: 'Limits, and nothing else',
        plateau: 'Limits with a flat middle',
        middle: 'Limits, the middle likelier',
        wave: 'A mismatch, phase unknown',
        certificate: 'U with k = 2, on a certificate',
      } satisfies Record<Meaning, string>,
      slip: {
        none: 'For what it is',
        asStandard: 'For a standard uncertainty u',
        asExpanded: 'For U with k = 2',
        rootThree: 'For limits and nothing else',
      } satisfies Record<StatedSlip, string>,
    },
    units: { halfWidth: 'dB' },
  } satisfies SettingsWords,
  note: 'Bar: as thick as values there are likely, all bars of the same weight; one of a mismatch runs out of the figure near its ends. Lumps: each of half that weight. Upright lines: the limits, where there are any. Strip: twice as far as the lumps (k = 2). Dashed: what somebody says who reads the number otherwise.',
  reset: 'Back to the club’s pad',
  noScript:
    'Pulling, typing and choosing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
