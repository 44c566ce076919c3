import { largestText } from '../parts/level-words.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

/** Names of the parts of the line, by the ids of the club's sheet and of the line. */
const parts: Readonly<Record<string, string>> = {
  national: 'the national standard',
  laboratory: 'the laboratory',
  meter: 'the meter',
  mismatch: 'the mismatch',
  coax: 'the coax',
  connectors: 'the connectors',
  pad: 'the pad',
};

/** Words of the line through a pad into a meter. */
export const strings = {
  name: 'What mismatch may do to the result, over the pad in between',
  description: (summary: string): string =>
    `Along: attenuation of the pad. Up: correction for mismatch, limits as a strip and standard uncertainty as a line. ${summary}`,
  axes: { up: 'dB: correction for mismatch', along: 'attenuation of the pad, dB', limit: '' },
  match: ({ limits, u }: { limits: string; u: string }): string => `${limits}, u = ${u}`,
  matchWords: ({ limits, u }: { limits: string; u: string }): string =>
    `mismatch, as limits and standard uncertainty, every phase unknown; without any pad ${limits}, u = ${u}`,
  noPadWords: 'mismatch, as limits and standard uncertainty, phase unknown; there is no pad',
  step: {
    passed: (moved: string): string => `${moved} taken off: no overload seen`,
    'moved-too-little': (moved: string): string => `${moved} taken off: too little`,
    'moved-too-much': (moved: string): string => `${moved} taken off: too much`,
  },
  stepWords: {
    passed: (due: string): string => `the further pad has to take off ${due}`,
    'moved-too-little': (due: string): string =>
      `where ${due} is due: overload without the further pad, or the meter’s floor with it`,
    'moved-too-much': (due: string): string =>
      `where ${due} is due: a bad connection, or a pad that is not what it says`,
  },
  due: ({ step, allowed }: { step: string; allowed: string }): string => `${step} ${allowed}`,
  found: ({ watts, ids, share }: { watts: string; ids: readonly string[]; share: string }): string =>
    `at the socket, U (k = 2): ${watts}. ${largestText(parts, { ids, share })}`,
  none: 'No result',
  noneWords:
    'as long as the further pad does not move the reading by what it is, the reading stands for nothing',
  settings: {
    caption: 'The line and its readings',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {},
    units: {
      reading: 'dBm',
      moved: 'dB',
      pad: 'dB',
      within: 'dB',
      padSwr: 'none',
      source: 'none',
      meter: 'none',
    },
  } satisfies SettingsWords,
  note: 'Strip: limits of what mismatch may do, with a pad that reflects a little itself. Line: its standard uncertainty. Dashed outline: limits with a perfect pad, which nobody has. At 0 dB there is no pad. The power into an ideal load is meant. The meter holds from −30 dBm to 20 dBm; all figures are invented.',
  reset: 'Back to the club’s line',
  noScript: 'Pulling and typing need JavaScript; the figure and its numbers are complete without it.',
} as const;
