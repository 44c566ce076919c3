/** Words of one band on three rulers. */
export const strings = {
  name: 'One band on three rulers',
  description: (summary: string): string =>
    `Three rulers, each even in its own unit, with the same band on all of them and its middle in one line. ${summary}`,
  level: 'Level',
  power: 'Power',
  volts: 'Volts RMS',
  decibelsWords: (level: string): string => `around ${level}`,
  powerWords: (text: string): string => `of power: ${text}`,
  voltsWords: (load: string, text: string): string => `of volts across ${load}: ${text}`,
  smallRule: (text: string): string => `${text} by the rule`,
  smallRuleWords: ({ perDb, off }: { perDb: string; off: string }): string =>
    `one decibel is about ${perDb} of power: good for small bands; here the upper end is ${off}`,
  ruleExact: 'right to the digits shown',
  ruleOff: (percent: string): string => `off by ${percent} of power`,
  claimed: (text: string): string => `${text} claimed`,
  claims: {
    samePercent: (band: string): string =>
      `so many dB taken for as many percent (dashed); the band is ${band}`,
    tenPercent: (band: string): string => `every dB taken for ten percent (dashed); the band is ${band}`,
    squared: (band: string): string =>
      `the percentage of volts itself squared (dashed), where it is the voltage that is squared; the band is ${band}`,
    mirrored: (band: string): string =>
      `the upper end taken for both (dashed); the band is ${band}, and its lower end is nearer`,
    mirroredEven: 'the upper end taken for both: right here, where the band is even in watts',
  },
  settings: {
    caption: 'The band',
    columns: ['What', 'Set it'],
    slide: (label: string): string => `${label}: drag it`,
    choices: {
      even: { decibels: 'decibels', watts: 'watts, in percent', volts: 'volts, in percent' },
      claim: {
        none: 'no mistake',
        samePercent: 'dB taken for percent',
        tenPercent: 'a dB taken for ten percent',
        squared: 'the percentage squared',
        mirrored: 'the upper end on both sides',
      },
    },
    units: { level: 'dBm', halfDb: 'dB', halfPercent: 'percent' },
  },
  reset: 'Back to the prepared band',
  noScript:
    'Dragging and typing need JavaScript; the figure, its numbers and its table are complete without it.',
} as const;
