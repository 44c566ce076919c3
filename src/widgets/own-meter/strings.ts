import type { Verdict } from '#compute';
import type { SettingsWords } from '../parts/SettingRow.tsx';

/** Words of the meter with a table of corrections. */
export const strings = {
  name: 'Error of what is written down, over what the meter shows',
  description: (summary: string): string =>
    `Along: what the meter shows. Up: what is written down less what is there, by the certificate. ${summary}`,
  axes: {
    up: 'dB: written down less what is there',
    along: 'the meter shows, dBm',
    limit: 'maximum permissible error',
  },
  asRead: (error: string): string =>
    `written down as shown; by the certificate ${error} off, and nothing in it says so`,
  corrected: (months: string): string =>
    `corrected; U (k = 2) of the certificate, ${months} of drift and the display’s step`,
  adjusted: (error: string): string =>
    `after turning the screw: by the old table ${error} off, and the table is void. No band until the meter is calibrated again`,
  months: (count: number): string => (count === 1 ? 'a month' : count === 0 ? 'no month' : `${count} months`),
  correction: (text: string): string => `Correction ${text}`,
  correctionWords: ({ error, expanded }: { error: string; expanded: string }): string =>
    `to be added: the meter’s error here is ${error} (reading less reference), known to ${expanded}`,
  correctionVoid: 'from a table that was made before the screw was turned',
  verdict: { inside: 'meets it', outside: 'fails it', 'cant-tell': 'can’t tell' } satisfies Record<
    Verdict,
    string
  >,
  notVerified: 'Not verified',
  spoken: {
    result: (text: string): string => `Written down: ${text}`,
    limit: (text: string): string => `Maximum permissible error ${text}`,
  },
  limit: ({ verdict, limit }: { verdict: string; limit: string }): string => `${limit}: ${verdict}`,
  verdictWords:
    'verification of what the meter shows here, with U as guard band; whether the result is corrected does not matter',
  notVerifiedWords: 'nobody has compared it since the screw was turned',
  table: {
    caption: 'The certificate',
    shows: 'The meter shows',
    correction: 'Correction',
    expanded: 'U (k = 2)',
  },
  settings: {
    caption: 'The meter and what is done with its table',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      treatment: {
        asRead: 'Stays in the drawer',
        corrected: 'Is used: the correction is added',
        adjusted: 'Is replaced by turning the screw at 0 dBm',
      },
    },
    units: { reading: 'dBm', months: 'none', permissible: 'dB' },
  } satisfies SettingsWords,
  note: 'Line: the error by the certificate; circles are its table, bars their U. Strip: where the error may lie (U, k = 2), drift included; the dashed outline is the same on the day of the calibration. Barbs point to the side that the maximum permissible error of the meter allows; it does not apply to a corrected result.',
  reset: 'Back to the club’s meter',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
