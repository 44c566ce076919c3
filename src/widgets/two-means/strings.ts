/** Words of the two means. */
export const strings = {
  name: 'Three readings and their two means',
  description: (summary: string): string =>
    `Levels in decibel-milliwatts on an even ruler, and the powers they stand for on one of the same length. ${summary}`,
  levelRuler: 'Level, dBm',
  powerRuler: 'Power, mW',
  decibelsLane: (text: string): string => `by dB: ${text}`,
  powersLane: (text: string): string => `by power: ${text}`,
  decibels: (figure: string): string => `${figure}, decibels averaged`,
  decibelsWords: (power: string): string =>
    `${power}: right where the power stands still and the instrument scatters in decibels`,
  powers: (figure: string): string => `${figure}, powers averaged`,
  powersWords: (power: string): string =>
    `${power}: right where the power itself changes; what a thermal meter would show, each reading lasting as long`,
  apart: (figure: string): string => `${figure} apart`,
  apartWords: ({ rule, scatter }: { rule: string; scatter: string }): string =>
    `the rule says ${rule}; the readings scatter by ${scatter}`,
  settings: {
    caption: 'The readings',
    columns: ['Reading', 'Set it'],
    slide: (label: string): string => `${label}: drag it`,
    choices: {},
    units: { first: 'dBm', second: 'dBm', third: 'dBm' },
  },
  reset: 'Back to the prepared readings',
  noScript:
    'Dragging and typing need JavaScript; the figure, its numbers and its table are complete without it.',
} as const;
