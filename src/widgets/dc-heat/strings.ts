import { largestText } from '../parts/level-words.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const parts: Readonly<Record<string, string>> = {
  voltmeter: 'the voltmeter',
  ammeter: 'the ammeter',
  'rf-rise': 'the rise with RF',
  'dc-rise': 'the rise with DC',
  leak: 'unequal loss of heat',
};

/** Words of the load that is warmed twice. */
export const strings = {
  name: 'How far the result is off by what was not waited for, over the minutes with RF',
  description: (summary: string): string =>
    `Along: minutes waited with RF. Up: what that leaves the result off by, as a line, and the band that is claimed. ${summary}`,
  axes: { up: 'dB: what waiting leaves', along: 'minutes waited with RF', limit: '' },
  found: ({ watts, ids, share }: { watts: string; ids: readonly string[]; share: string }): string =>
    `U (k = 2): ${watts}. ${largestText(parts, { ids, share })}`,
  none: 'No result yet',
  noneWords: ({ off, within }: { off: string; within: string }): string =>
    `it still moves: waiting and the room shift it by ${off} of the rise with RF, more than the ${within} that a rise is known to`,
  off: (db: string): string => `${db} by waiting and room`,
  offWords: ({ rf, dc }: { rf: string; dc: string }): string =>
    `${rf} of its rise reached with RF, ${dc} with DC; waited alike and in a still room, it cancels`,
  spoken: {
    off: (text: string): string => `Error ${text}`,
    dc: (text: string): string => `Replaced by ${text}`,
  },
  dc: (power: string): string => `${power} of DC`,
  dcWords: ({ volts, amperes, ohms }: { volts: string; amperes: string; ohms: string }): string =>
    `${volts} times ${amperes}, read while warm; the load is then ${ohms}, and drops out`,
  settings: {
    caption: 'The load and its two runs',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {},
    units: {
      waitedRf: 'none',
      waitedDc: 'none',
      timeConstant: 'none',
      room: 'K',
      riseRf: 'K',
      riseDc: 'K',
      within: 'K',
      volts: 'V',
      amperes: 'A',
    },
  } satisfies SettingsWords,
  note: 'Line: how far the result is off after so many minutes with RF, while the DC run was waited for as set. Strip: what the result claims (U, k = 2), about nothing. The load is taken to warm up as one body. All figures are invented.',
  reset: 'Back to the club’s load',
  noScript: 'Pulling and typing need JavaScript; the figure and its numbers are complete without it.',
} as const;
