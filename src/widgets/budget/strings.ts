import type { SettingsWords } from '../parts/SettingRow.tsx';

/** Words of the budget. */
export const strings = {
  caption: { club: 'The club’s hidden transmitter', gauge: 'The Guide’s end gauge (GUM H.1)' },
  name: 'The expanded uncertainty, over the number of readings',
  description: (summary: string): string => `Strip: U to both sides of the result. ${summary}`,
  axes: {
    club: { up: 'dB: U about the result', along: 'readings taken', limit: '' },
    gauge: { up: 'nm: U about the result', along: 'comparisons made', limit: '' },
  },
  region: 'The budget, part by part',
  spoken: { u: 'Standard uncertainty', freedom: 'Degrees of freedom' },
  columns: {
    part: 'Part',
    u: 'u',
    sensitivity: 'c',
    contribution: '|c| u',
    share: 'Share of u²',
    freedom: 'ν',
  },
  combined: 'Together',
  parts: {
    readings: 'Scatter of the readings, mean',
    standard: 'Standard, by its certificate',
    repeatability: 'Repeated comparisons',
    'comparator, random': 'Comparator, random',
    'comparator, systematic': 'Comparator, systematic',
    'expansion difference': 'Difference of expansion',
    'temperature difference': 'Difference of temperature',
    expansion: 'Expansion',
    mean: 'Temperature of the bench',
    cycle: 'Its rise and fall',
  } as Readonly<Record<string, string>>,
  perKelvin: (ppm: string): string => `${ppm}/K`,
  infinite: '∞',
  stated: ({ k, probability }: { k: string; probability: string }): string =>
    `U = k u with k\u00a0=\u00a0${k}: about ${probability} for these degrees of freedom, if the sum is a bell`,
  uncertainty: (u: string): string => `u\u00a0=\u00a0${u}`,
  uncertaintyWords: ({ largest, share }: { largest: string; share: string }): string =>
    `the combined standard uncertainty; largest part: ${largest}, ${share} of its square`,
  freedom: (nu: string): string => `ν\u00a0=\u00a0${nu}`,
  freedomWords: (k95: string): string =>
    `effective degrees of freedom (Welch and Satterthwaite); from so many it takes k\u00a0=\u00a0${k95} for 95\u00a0%`,
  forms: 'The same result in other forms',
  form: {
    standard: ({ value, u }: { value: string; u: string }): string => `${value}, u\u00a0=\u00a0${u}`,
    bracket: 'the digits in brackets are u, in the last places of the number',
    watts: 'in watts, end by end: what is even in decibels is not even there',
    millimetres: 'U beside the value, in one unit',
    exact: (text: string): string => `nothing rounded on the way: ${text}`,
  },
  settings: {
    caption: 'The budget and how its result is written',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      subject: { club: 'The club’s hidden transmitter', gauge: 'The Guide’s example H.1: an end gauge' },
      coverage: {
        two: 'k = 2, as certificates do',
        p95: 'for 95 %, from the degrees of freedom',
        p99: 'for 99 %, from the degrees of freedom',
      },
      digits: { two: 'two', one: 'one' },
      rounding: { end: 'once, at the end', way: 'on the way, as print does' },
    },
    units: { count: 'none', scatter: 'dB' },
  } satisfies SettingsWords,
  note: {
    club: 'Strip: U over the number of readings; the dashed outline is k = 2, whatever their number. u: standard uncertainty of a part. c: how much of it the result takes. ν: its degrees of freedom, how well u itself is known; ∞ where it is taken as known. All of it is invented.',
    gauge:
      'The numbers are the Guide’s (GUM H.1.3 to H.1.6), where five comparisons were made. Strip: U over their number; the dashed outline is k = 2. Expansion and temperature of the bench stand with c = 0: they multiply differences that are estimated as 0. Products of two uncertainties, which the Guide adds in H.1.7, are not counted here.',
  },
  reset: 'Back to the club’s budget',
  noScript: 'Changing it needs JavaScript; the table and its numbers are complete without it.',
} as const;
