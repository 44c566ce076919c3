import type { Spendable } from '../../sheet/spend.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const link: Readonly<Record<Spendable, string>> = {
  meter: 'The meter that was lent',
  mismatch: 'Mismatch',
  pad: 'The pad',
  coax: 'The thin coax',
  readings: 'More readings',
};

/** Words of a chain that is to be made better. */
export const strings = {
  name: 'The result’s band, over how good one link is made',
  description: (summary: string): string =>
    `Along: how good the chosen link is. Up: decibels from the reading; the strip is the result’s U. ${summary}`,
  up: 'dB from the reading',
  along: {
    meter: 'limits of the meter, ± dB',
    mismatch: 'limits of the mismatch, ± dB',
    pad: 'limits of the pad, ± dB',
    coax: 'limits of the coax, ± dB',
    readings: 'number of readings',
  } satisfies Record<Spendable, string>,
  limit: 'room to the nearer limit',
  link,
  verdict: { inside: 'Inside', outside: 'Outside', 'cant-tell': 'Can’t tell' },
  verdictFigure: ({ verdict, band }: { verdict: string; band: string }): string => `${verdict}: ${band}`,
  verdictWords: (needed: string): string => `a verdict takes ${needed} or less (k = 2, guard band U)`,
  dominantWords: ({ share, perfect }: { share: string; perfect: string }): string =>
    `brings ${share} of the variance; if it were perfect, ${perfect} would be left`,
  levelWords: ({ share, perfect }: { share: string; perfect: string }): string =>
    `bring ${share} of the variance each; if one were perfect, ${perfect} would be left`,
  others: 'What lies above the meter',
  othersWords: (share: string): string => `brings ${share} of the variance, and nothing can be spent on it`,
  enough: ({ name, amount }: { name: string; amount: string }): string => `${name} ${amount}`,
  enoughWords: (hours: string): string => `the cheapest single change that earns a verdict (hours: ${hours})`,
  decided: 'Nothing to buy',
  decidedWords: 'there is a verdict already; the money stays in the tin',
  none: 'No single link will do',
  noneWords: 'even perfect, each of them alone leaves too much: two changes, or another method',
  table: {
    caption: 'What each link would buy',
    columns: ['Link', 'If it were perfect', 'Half as uncertain', 'Enough for a verdict', 'Hours'],
    isEnough: 'as it is',
    never: 'never',
    upTo: (amount: string): string => `at ${amount}`,
    readings: (count: number): string => `at n = ${count}`,
  },
  note: ({ pay, standards }: { pay: string; standards: string }): string =>
    `The lent meter’s own standards bring another ${standards} (k = 2); nothing can be spent on them. Hours are invented. With this scatter ${pay}. Line: the reading. Strip: its U, if the chosen link were as good as the axis says. Firm lines: the room up to the nearer limit of 25.5 and 28.5 dBm; a strip within them earns “inside”. Dashed: the strip before the last change.`,
  pay: (count: number): string =>
    count === 1
      ? 'a second reading no longer pays: all further ones together would lower U by less than a twentieth'
      : `readings pay up to ${count}: all further ones together would lower U by less than a twentieth`,
  settings: {
    caption: 'The chain, and what is spent on',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: { link },
    units: {
      level: 'dBm',
      meter: 'dB',
      mismatch: 'dB',
      pad: 'dB',
      coax: 'dB',
      scatter: 'dB',
      count: 'none',
    },
  } satisfies SettingsWords,
  reset: 'Back to the club’s chain',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
