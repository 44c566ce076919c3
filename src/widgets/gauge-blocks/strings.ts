import type { Counted, Known } from '../../sheet/gauge-blocks.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const known: Readonly<Record<Known, string>> = {
  nominal: 'Their names alone',
  grade: 'The limits of their grade',
  own: 'A certificate each',
  shared: 'One certificate for the set',
};
const counted: Readonly<Record<Counted, string>> = {
  nothing: 'Is left out of the sum',
  each: 'Is counted, on each side',
};

const sum = (last: string, before: readonly number[]): string => [...before, last].join(' + ');

/** Words of the gauge blocks. */
export const strings = {
  name: 'A stack of gauge blocks against one block, their ends hugely magnified',
  description: (summary: string): string =>
    `Both to scale at the left, their ends hugely magnified at the right; hatched is what warmth adds. At the foot their difference. ${summary}`,
  figure: {
    scaled: 'to scale',
    /** Three digits would be more than anybody reads off a drawing. */
    magnified: (times: number): string => `ends magnified ${Math.round(times / 1000)}\u00a0000 times`,
    along: 'µm over nominal, or over the other',
  },
  lane: {
    /** A long sum needs the room, and says by itself that it is a stack. */
    stack: (last: string, before: readonly number[]): string =>
      before.length < 3 ? `Stack, ${sum(last, before)}` : sum(last, before),
    single: (last: string): string => `Single block, ${last}`,
    detail: ({ celsius, warmth }: { celsius: string; warmth: string }): string =>
      `at ${celsius}: warmth ${warmth}`,
  },
  difference: 'Stack less block (dot)',
  claimed: (claim: string): string => `strip: claimed ${claim}`,
  there: 'what the comparator shows, stack less single block: the dot',
  covered: 'The claim holds',
  uncovered: 'The claim is too narrow',
  coveredWords: 'the dot lies within the strip',
  uncoveredWords: 'the dot lies outside the strip: something was left out of the sum',
  roots: 'claimed, root of the sum of squares (U, k = 2): the strip',
  worst: {
    none: 'No worst case',
    noneWords: 'a certificate states an uncertainty and no limit; open end marks guarantee nothing',
    words: 'claimed, worst case, all limits at their worst at once: the end marks',
  },
  between: (lower: string, upper: string): string => `${lower} to ${upper}`,
  whole: {
    waiting: 'Not worked out yet',
    words: (share: string): string =>
      `claimed, whole distribution, ${share} of it in the middle: the thin curve`,
  },
  summary: ({ there, claim, cover }: { there: string; claim: string; cover: string }): string =>
    `Stack less single block: ${there}. Claimed: ${claim}. ${cover}.`,
  settings: {
    caption: 'Warmth, and what is counted',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: { known, counted },
    units: {
      stackC: 'degC',
      singleC: 'degC',
      count: 'none',
      first: 'um',
      second: 'um',
      third: 'um',
      fourth: 'um',
      single: 'um',
      off: 'um',
      stackPpm: 'ppm',
      singlePpm: 'ppm',
    },
  } satisfies SettingsWords,
  more: 'Each block, and what it is made of',
  note: 'Pull an end to warm that side, or type its temperature. Hatched: what warmth adds. Heavy lines between blocks: wringing films. Dashed: before the last change. The comparator itself is taken as perfect here.',
  reset: 'Back to the club’s first evening',
  noScript: 'Pulling and typing need JavaScript; the figure and its numbers are complete without it.',
} as const;
