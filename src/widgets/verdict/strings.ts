import type { Verdict } from '#compute';
import { ruleWords } from '../../text/words.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';
import type { Item } from './spec.ts';

const rule = {
  simple: 'Simple acceptance: the reading alone decides',
  guardBand: 'Guard band: a multiple of U is kept off the limits',
  probability: 'Required probability',
} as const;

const item: Readonly<Record<Item, string>> = {
  transmitter: 'The club’s transmitter',
  diode: 'A diode’s voltage, upper limit −5.40 V (JCGM 106)',
  container: 'A container’s strength, lower limit 490 (JCGM 106)',
  resistors: 'Resistors of 1500 Ω ± 0.2 Ω, sorted (JCGM 106)',
};

/** Words of a value held against a specification. */
export const strings = {
  name: 'A reading’s band beside the limits of a specification',
  description: (summary: string): string =>
    `Along: the quantity measured. Above, what any reading would be called; below, where the value may lie. ${summary}`,
  along: {
    transmitter: 'level at the socket, dBm',
    diode: 'voltage, V',
    container: 'bursts at, kPa',
    resistors: 'resistance, Ω',
  } satisfies Record<Item, string>,
  zones: { inside: 'inside', outside: 'outside', 'cant-tell': 'can’t tell' } satisfies Record<
    Verdict,
    string
  >,
  verdict: { inside: 'Inside', outside: 'Outside', 'cant-tell': 'Can’t tell' } satisfies Record<
    Verdict,
    string
  >,
  verdictWords: ({ reading, band, rule: chosen }: { reading: string; band: string; rule: string }): string =>
    `${reading} ${band} (k = 2), by ${chosen}`,
  ruleNamed: {
    simple: ruleWords.simple,
    guardBand: (multiplier: string): string => `a guard band of ${multiplier} times U`,
    probability: (percent: string): string => `a required probability of ${percent}`,
  },
  conforms: (share: string): string => `${share} within`,
  conformsWords: (distance: string, kept: boolean): string =>
    `chance that the value keeps to the limits, if nothing but this reading is known; the nearer limit is ${distance} u ${kept ? 'away' : 'behind it'}`,
  over: (share: string): string => `over ${share}`,
  under: (share: string): string => `under ${share}`,
  upTo: (value: string): string => `up to ${value}`,
  from: (value: string): string => `from ${value}`,
  accepted: (range: string): string => `Inside: ${range}`,
  called: (range: string): string => `Called inside: ${range}`,
  acceptedWords: (risk: string): string =>
    `readings that the rule calls inside; on the edge the risk of being wrong is ${risk}`,
  none: 'No reading is inside',
  noneWords: (needed: string, guarded: boolean): string =>
    `${guarded ? 'the guard bands meet' : 'none reaches the probability asked for'}: the method falls short, not what is measured. It would take U = ${needed}`,
  risks: {
    caption: 'Of a thousand such, measured and sorted',
    columns: [
      'Rule',
      'Called inside',
      'of these, wrongly (consumer’s risk)',
      'Sent back, though within (producer’s risk)',
    ],
    rules: {
      simple: 'Simple acceptance',
      guardBand: (multiplier: string): string => `Guard band of ${multiplier} U`,
      probability: (percent: string): string => `Probability of ${percent}`,
    },
    note: ({ good, among }: { good: string; among: string }): string =>
      `Of the thousand, ${good} keep to their limits. By the rule in use ${among} of those sent back keep to them as well. Sent back means: outside, or can’t tell.`,
  },
  settings: {
    caption: 'What is measured, and the rule',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: { item, rule },
    units: {
      multiplier: 'none',
      required: 'percent',
      reading: 'dBm',
      expanded: 'dB',
      lower: 'dBm',
      upper: 'dBm',
      spread: 'dB',
      diode: 'V',
      diodeU: 'V',
      container: 'none',
      containerU: 'none',
      resistor: 'ohm',
      resistorU: 'ohm',
      resistorSpread: 'ohm',
    },
  } satisfies SettingsWords,
  note: 'Firm lines: the limits, with barbs to the side that is allowed. Lane above: what any reading would be called; framed is inside, hatched is can’t tell. Strip: the reading with its U; above it the bell of values that it may stand for, dark beyond a limit. Dashed: the strip before the last change.',
  reset: 'Back to the club’s reading',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
