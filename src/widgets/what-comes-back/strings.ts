import type { Match } from '../../sheet/what-comes-back.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

/** Words of the line and of what comes back along it. */
export const strings = {
  name: 'Return loss at the transmitter, over the loss of the line',
  description: (summary: string): string =>
    `Along: the loss of the line. Up: the return loss that belongs to the transmitter’s end, in decibels; the broken line is that of the antenna itself, the band is what the meter may show. ${summary}`,
  axes: { up: 'dB: return loss at the transmitter', along: 'loss of the line, dB' },
  shares: {
    name: 'What becomes of the wave at the transmitter, and of what goes into the line',
    start: {
      whole: (power: string): string => `Forward at the transmitter: ${power}`,
      first: (power: string): string => `goes in: ${power}`,
      second: (power: string): string => `came back: ${power}`,
    },
    line: {
      whole: (power: string): string => `Into the line: ${power}`,
      first: (power: string): string => `antenna: ${power}`,
      second: (power: string): string => `heat: ${power}`,
    },
  },
  swr: (here: string): string => `SWR ${here} at the transmitter`,
  swrWords: ({ there, loss, range }: { there: string; loss: string; range: string }): string =>
    `${there} at the antenna; return loss ${loss} here. The meter may show ${range}`,
  range: ({ least, most }: { least: string; most: string }): string => `${least} to ${most}`,
  rangeOpen: (least: string): string => `${least} and anything above`,
  noLeast: ({ most }: { most: string }): string =>
    `1.0 to ${most}: its coupler leaks at least as much as comes back, so it gives no number but “at most”`,
  taken: (power: string): string => `${power} in the antenna`,
  takenWords: ({ change, given, heat }: { change: string; given: string; heat: string }): string =>
    `${change} of the ${given} that the transmitter gives; the line keeps ${heat}`,
  back: (power: string): string => `${power} comes back`,
  backWords: {
    none: 'and nobody knows what the transmitter makes of it: here it is taken as a matched source, which a real one is not',
    tuner: 'and the tuner sends it out again: the forward wave holds it already',
  } satisfies Readonly<Record<Match, string>>,
  caution: ({
    level,
    volts,
    matched,
    heat,
  }: Readonly<Record<'level' | 'volts' | 'matched' | 'heat', string>>): string =>
    `at ${level}, the most to reckon with here, up to ${volts} can stand on this line where a matched one has ${matched}, and the line takes up to ${heat} as heat.`,
  cautionHead: 'Before you key:',
  table: 'Powers along the line',
  columns: { what: 'What', power: 'Power', share: 'Of what is given' },
  rows: {
    forward: 'Forward, at the transmitter',
    back: 'Back, at the transmitter',
    into: 'Into the line: forward less back',
    heat: 'Heat in the line',
    arriving: 'Forward, at the antenna',
    turned: 'Turned back by the antenna',
    taken: 'Taken by the antenna',
  },
  settings: {
    caption: 'The transmitter, the line and the antenna',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      match: {
        none: 'Nothing: line and transmitter as they are',
        tuner: 'A tuner without loss, set to a match',
      } satisfies Record<Match, string>,
    },
    units: { level: 'dBm', swr: 'none', loss: 'dB', directivity: 'dB' },
  } satisfies SettingsWords,
  note: 'Line: the return loss that belongs to the transmitter’s end. Broken line: that of the antenna. Strip: where the meter may show it, by the directivity of its coupler. The tuner is taken as one without loss, which no tuner is.',
  reset: 'Back to the club’s line',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
