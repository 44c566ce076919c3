import type { SettingsWords } from '../parts/SettingRow.tsx';

/** Words of the meter in the line. */
export const strings = {
  name: 'What a forward reading may be wrong by, along the scale',
  description: (summary: string): string =>
    `Along: what the needle shows. Up: limits in decibels of a percentage of full scale; none where they are more than a third of the reading. ${summary}`,
  axes: { up: 'dB: limits of the reading', along: 'the needle shows forward, W', limit: '' },
  wanted: { net: 'forward less reflected', incident: 'forward' },
  found: ({ watts, what }: { watts: string; what: string }): string =>
    `${what}, U (k = 2): ${watts}. Scale, frequency response, directivity and needle together`,
  none: 'No power',
  noSwr: 'No SWR',
  offScale: 'a needle stands beyond the end of its scale: take a larger one',
  turnedRound: 'more comes back than goes out: the meter is connected the wrong way round, or out of order',
  noScale: 'No reading',
  spokenScale: (range: string): string => `By the scale alone, forward is ${range}`,
  spokenNoScale: 'By the scale alone there is no forward reading',
  noScaleWords: ({ forward, limit }: { forward: string; limit: string }): string =>
    `the scale allows ${limit} wherever the needle stands: more than a third of ${forward}`,
  scaleWords: ({ forward, limit }: { forward: string; limit: string }): string =>
    `what ${forward} may be by the scale alone: ${limit} wherever the needle stands`,
  swr: (swr: string): string => `SWR ${swr}`,
  swrWords: ({ range, loss }: { range: string; loss: string }): string =>
    `true SWR ${range}, worst case of both needles and the directivity; as read, reflection takes ${loss} of the power that arrives`,
  swrRange: ({ lower, upper }: { lower: string; upper: string }): string => `${lower} to ${upper}`,
  swrAbove: (lower: string): string => `${lower} or more`,
  settings: {
    caption: 'The meter in the line',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: { wanted: { net: 'What stays in the load: forward less reflected', incident: 'Forward alone' } },
    units: { forward: 'W', reflected: 'W', scale: 'W', percent: 'percent', directivity: 'dB' },
  } satisfies SettingsWords,
  note: 'Strip: limits of a forward reading by the scale alone; where there is no strip they are more than a third of the reading, and no number can be stood behind. Dashed outline: the same percentage taken for one of the reading, as it is often misread. Directivity acts on the SWR here; for the power it is judged to be ±0.1 dB, U-shaped. All figures are invented.',
  reset: 'Back to the club’s meter',
  noScript: 'Pulling and typing need JavaScript; the figure and its numbers are complete without it.',
} as const;
