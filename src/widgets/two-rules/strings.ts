import type { Known } from '../../sheet/two-rules.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const known: Readonly<Record<Known, string>> = {
  nothing: 'Nothing: the marks are believed',
  promise: 'What their makers promise',
  compared: 'Both were compared with a better rule, and corrected',
};

/** Words of the two rules. */
export const strings = {
  name: 'The misfit of a frame built with two rules, over its length',
  description: (summary: string): string =>
    `Along: the length that both rules read. Up: how much farther apart the holes are than the posts. ${summary}`,
  axes: { up: 'mm: holes less posts', along: 'length, mm', limit: 'play of the joints' },
  fits: (misfit: string): string => `${misfit}: it fits`,
  fitsNot: (misfit: string): string => `${misfit}: it does not fit`,
  misfit: ({ length, play }: { length: string; play: string }): string =>
    `misfit at ${length}; the joints give way by ${play}`,
  corrected: 'Corrected: it fits',
  correctedWords: 'what is left lies somewhere within the strip',
  claim: (known: Known): string =>
    ({
      nothing: 'what the builders claim from the marks alone (U, k = 2)',
      promise: 'what they may claim, counting what the makers promise (U, k = 2)',
      compared: 'what they may claim after the comparison (U, k = 2)',
    })[known],
  covered: 'The claim holds',
  uncovered: 'The claim is too narrow',
  coveredWords: 'what is there lies within it',
  uncoveredWords: 'what is there lies outside: something was left out that no finer mark would show',
  longest: (length: string): string => `These two rules fit up to ${length}`,
  always: 'These two rules fit at any length',
  settings: {
    caption: 'The frame and its rules',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      step: { one: '1 mm', half: '0.5 mm', tenth: '0.1 mm' },
      known,
    },
    units: { length: 'mm', first: 'percent', second: 'percent' },
  } satisfies SettingsWords,
  note: 'Line: the misfit that is there; nobody at the bench knows it. Strip: what the builders claim, about no misfit. Dashed outline: the claim before the last change. Barbs point to the side that fits. A rule that reads too much makes things too short; a hundredth of a percent is a tenth of a millimetre in a metre.',
  reset: 'Back to the club’s frame',
  noScript: 'Pulling and typing need JavaScript; the figure and its numbers are complete without it.',
} as const;
