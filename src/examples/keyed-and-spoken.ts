import {
  meanOfPeakEnvelope,
  meanOverPeakEnvelope,
  ohms,
  powerOfPeakToPeak,
  powerRatioToDb,
  powerToLevel,
  powerW,
  voltsPeakToPeak,
} from '#compute';
import type { Outcome, Step, SumExample } from './example.ts';
import { measuredBy } from './measured-by.ts';
import { formula, given, num, watts } from './said.ts';
import { stated } from './sheet-of.ts';

const PEAK_ENVELOPE_W = 2;
const TWO_TONE_V = 40;
const LOAD_OHM = 50;
/** What the supply gives, key down: more than comes out. The figure asks for it, the example does not. */
const SUPPLY_A = 0.4;

/** The keyed transmitter, as a figure of it begins. */
export const keyedUse = () =>
  ({
    keying: 'parisWord',
    peak: PEAK_ENVELOPE_W,
    kind: 'mean',
    swr: 1,
    coax: 0,
    amperes: SUPPLY_A,
  }) as const;

const share = (): number => meanOverPeakEnvelope('parisWord');
const keyedMean = () => meanOfPeakEnvelope({ peakEnvelope: powerW(PEAK_ENVELOPE_W), envelope: 'parisWord' });
const crest = () =>
  powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(TWO_TONE_V), resistance: ohms(LOAD_OHM) });
const twoToneMean = () => meanOfPeakEnvelope({ peakEnvelope: crest(), envelope: 'twoEqualTones' });

const steps = (): readonly Step[] => [
  {
    id: 'keyed',
    title: 'Keyed with a standard word',
    formula: formula(
      (style) =>
        `22 / 50 × ${watts(style, PEAK_ENVELOPE_W, 2)} = ${num(style, keyedMean(), 2, 'W')}, ${num(style, powerRatioToDb(share()), 2, 'dB')}`,
    ),
    words:
      'The word PARIS with the space after it lasts 50 units, and the key is down for 22 of them (common practice).',
  },
  {
    id: 'two-tones',
    title: 'Two equal tones, at their crest',
    formula: formula(
      (style) =>
        `P = Vpp² / (8 R) = (${num(style, TWO_TONE_V, 0, 'V')})² / (8 × ${num(style, LOAD_OHM, 0, 'ohm')}) = ${watts(style, crest(), 2)}`,
    ),
    words: 'What the oscilloscope shows from top to bottom is the crest of the envelope: PEP.',
  },
  {
    id: 'two-tones-mean',
    title: 'Their mean',
    formula: formula((style) => `${watts(style, crest(), 2)} / 2 = ${watts(style, twoToneMean(), 2)}`),
    words: 'Each tone by itself has a quarter of the crest’s power, and there are two.',
  },
];

const outcomes = (): readonly Outcome[] => [
  {
    name: 'Keyed: what a thermal meter shows',
    value: (style) =>
      `${num(style, keyedMean(), 2, 'W')} of ${watts(style, PEAK_ENVELOPE_W, 2)} PEP, ${num(style, powerRatioToDb(share()), 2, 'dB')}`,
  },
  {
    name: 'Two tones',
    value: (style) => `PEP ${watts(style, crest(), 2)}, mean ${watts(style, twoToneMean(), 2)}`,
  },
];

/** Scenario: keying and two tones on a thermal meter. Invented data. */
export const keyedAndSpoken: SumExample = {
  kind: 'sum',
  slug: 'keyed-and-spoken',
  title: 'Keyed, spoken, and the same meter',
  summary:
    'A thermal meter shows 0.88\u00a0W of a 2\u00a0W transmitter that is being keyed. Which of the two is its power?',
  question:
    'Key down my transmitter gives 2.0\u00a0W on a thermal meter. While I send, it shows less than half of that. And with two tones the oscilloscope says 40\u00a0V peak to peak, where the meter says 2\u00a0W. Which number belongs in the log?',
  wanted: 'peak envelope power and mean power at the socket, each by its name',
  method: 'No instrument is in doubt: two powers with two names. Both are given in watts.',
  space: 'none',
  known: () => [
    { what: 'Power key down', value: given(PEAK_ENVELOPE_W, 1, 'W') },
    { what: 'Two equal tones, trough to crest', value: given(TWO_TONE_V, 0, 'Vpp') },
    { what: 'Load', value: given(LOAD_OHM, 0, 'ohm') },
  ],
  outcomes,
  steps,
  dominates: (style) =>
    `Which power is meant decides: ${num(style, -powerRatioToDb(share()), 1, 'dB')} with keying, 3\u00a0dB with two tones. Few chains are that uncertain.`,
  help: () =>
    'Say which power is meant before anybody measures: carrier, PEP or mean. A specification, a licence and a rule on heat each mean their own.',
  mistake: () =>
    `“RMS power” is no power of its own: power comes from RMS volts, and what comes out is the mean. And a reading of ${num('shown', keyedMean(), 2, 'W')} turned into PEP by doubling it would be ${watts('shown', 2 * keyedMean(), 3)}: the word’s share is ${num('shown', 100 * share(), 0, 'percent')}, not half.`,
  assumptions: [
    'The key down gives the same power at every moment, and nothing with the key up.',
    'The two tones are equal and nothing is clipped; speech is neither and differs from speaker to speaker.',
  ],
  cautions: [
    'Keep two tones short: the final stage and the load take their mean power all the time.',
    'Ratings of pads and loads speak of heat, that is of the mean; what flashes over does so at the crest.',
  ],
  lesson: 'decibels/which-power',
  bench: () =>
    measuredBy({
      title: 'A keyed transmitter on a thermal meter',
      measurand: {
        power: 'peakEnvelope',
        keying: 'parisWord',
        plane: 'at the transmitter’s socket, into 50 Ω',
        conditions: 'while a standard word is sent',
      },
      setup: { method: 'padsIntoMeter', shows: 'mean' },
      specification: { lower: 32, upper: 34 },
      columns: { readings: [stated(powerToLevel(keyedMean()), 2)] },
    }),
  benchSays:
    'The bench opens with what the thermal meter shows while the word is sent, as a level, and makes peak envelope power of it. No uncertainty is stated here, so none stands there: add your meter’s.',
};
