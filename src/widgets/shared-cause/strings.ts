import type { Combination } from '../../sheet/shared-cause.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const together: Readonly<Record<Combination, string>> = {
  sum: 'the sum of both (U, k = 2): what they share counts twice',
  difference: 'the difference of both (U, k = 2): what they share is not in it',
  mean: 'the mean of both (U, k = 2): what they share stays in full',
};

/** Words of two values with a common cause. */
export const strings = {
  name: 'What a common cause does to the result',
  description: (summary: string): string => `Strip: how far off the result may be. ${summary}`,
  axes: {
    pair: { up: 'dB: how far off the result may be', along: 'both are wrong alike, ± dB', limit: '' },
    impedance: {
      up: 'Ω: standard uncertainty',
      along: 'of the correlations is counted, %',
      limit: '',
    },
  },
  together: (combined: Combination): string => together[combined],
  coefficient: (r: string): string => `r\u00a0=\u00a0${r}`,
  independent: ({ width, judged }: { width: string; judged: string }): string =>
    `correlation of the two; counted as if they had nothing in common: ${width}, ${judged}`,
  tooNarrow: 'too little',
  tooWide: 'too much',
  same: 'the same',
  spoken: {
    result: (text: string): string => `The result is known to ${text}`,
    worst: (text: string): string => `Worst case ${text}`,
  },
  worst: 'worst case: every limit reached, at the worst sign',
  impedance: ({ output, value, u }: { output: string; value: string; u: string }): string =>
    `${output}\u00a0=\u00a0${value}, u\u00a0=\u00a0${u}`,
  impedanceWords: (counted: string): string =>
    `standard uncertainty by the law of propagation, ${counted} of the correlations counted`,
  read: { vi: 'V and I', vPhi: 'V and φ', iPhi: 'I and φ' },
  readCoefficient: ({ pair, r }: { pair: string; r: string }): string => `${pair}: r\u00a0=\u00a0${r}`,
  readWords: (others: string): string => `from five sets of readings taken at once; ${others}`,
  leftOut: (u: string): string => `u\u00a0=\u00a0${u} without them`,
  leftOutWords: (times: string): string => `${times} times what it is with all of them counted`,
  settings: {
    caption: 'What they have in common',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      of: {
        sum: 'Two pads, one behind the other: their sum',
        difference: 'Two readings of one instrument: their difference',
        mean: 'Two readings of one instrument: their mean',
        R: 'The Guide’s example H.2: resistance R',
        X: 'The Guide’s example H.2: reactance X',
        Z: 'The Guide’s example H.2: impedance Z',
      },
    },
    units: { own: 'dB', shared: 'dB', counted: 'percent' },
  } satisfies SettingsWords,
  note: {
    pair: 'Strip: the result with what is shared as a line of its own (U, k = 2). Dashed outline: the same two values as if they had nothing in common.',
    impedance:
      'Strip: standard uncertainty u (k = 1), as the Guide prints it; from five sets of readings k = 2 would promise too much. Dashed outline: none of the correlations counted. The readings are the Guide’s (GUM, table H.2).',
  },
  reset: 'Back to the club’s two pads',
  noScript: 'Pulling and typing need JavaScript; the figure and its numbers are complete without it.',
} as const;
