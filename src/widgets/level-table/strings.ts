import type { SettingsWords } from '../parts/Settings.tsx';

/** Words of the table of levels. */
export const strings = {
  caption: (resistance: string): string => `Levels, powers, and the volts of a sine across ${resistance}`,
  label: 'Levels as watts and volts, a table',
  settings: {
    caption: 'Across what the volts are meant',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {},
    units: { resistance: 'ohm' },
  } satisfies SettingsWords,
  reset: 'Back to 50 ohms',
  noScript: 'Another resistance needs JavaScript; for 50 ohms the table is complete without it.',
} as const;
