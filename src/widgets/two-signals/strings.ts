/** Words of the two signals. */
export const strings = {
  name: 'Two signals in one load',
  description: (summary: string): string =>
    `Levels in decibel-milliwatts on an even ruler, the powers they stand for and the volts across 50 ohms below it. ${summary}`,
  levels: 'Level, dBm',
  powers: 'Power',
  volts: 'Volts RMS',
  first: (text: string): string => `first ${text}`,
  second: (text: string): string => `second ${text}`,
  unrelatedLane: (text: string): string => `powers: ${text}`,
  coherentLane: (text: string): string => `volts: ${text}`,
  nothingLane: 'volts: nothing',
  unrelated: (figure: string): string => `${figure}, unrelated`,
  unrelatedWords: (powers: string): string => `${powers}: two frequencies, or noise; the powers add`,
  coherent: (figure: string): string => `${figure}, one frequency`,
  coherentWords: ({ volts, worst, best }: { volts: string; worst: string; best: string }): string =>
    `${volts}: the volts add as arrows; with the phase it is anything from ${worst} to ${best}`,
  cancel: 'Nothing, one frequency',
  cancelWords: 'equal volts against each other cancel in this load; the power stays elsewhere, or comes back',
  nothing: 'nothing',
  claimedFigure: (figure: string): string => `${figure}, dBm added`,
  claimedWords: ({ claimed, there }: { claimed: string; there: string }): string =>
    `would be ${claimed}, where both together bring ${there}`,
  settings: {
    caption: 'The two signals',
    columns: ['What', 'Set it'],
    slide: (label: string): string => `${label}: drag it`,
    choices: { claim: { none: 'no mistake', sumOfDbm: 'the sum of the dBm' } },
    units: { first: 'dBm', second: 'dBm', phase: 'none' },
  },
  reset: 'Back to the prepared signals',
  noScript:
    'Dragging and typing need JavaScript; the figure, its numbers and its table are complete without it.',
} as const;
