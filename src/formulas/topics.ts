import type { TopicId } from './index.ts';

/** Heading and a sentence for each topic of the formula sheet. */
export const TOPIC_WORDS: Readonly<Record<TopicId, { readonly title: string; readonly words: string }>> = {
  levels: { title: 'Levels and ratios', words: 'Decibels, levels in dBm, and what may be added to what.' },
  percentages: {
    title: 'Percentages and decibels',
    words: 'What a percentage of volts or watts is in decibels, both ways.',
  },
  voltages: { title: 'Voltages and sines', words: 'Peak, peak-to-peak, RMS and the power in a resistance.' },
  powers: {
    title: 'Which power',
    words: 'Mean and peak envelope power, keying, what an antenna radiates, heat and levels.',
  },
  mismatch: {
    title: 'Reflection and mismatch',
    words: 'Standing-wave ratio, return loss, and a mismatch whose phase nobody knows.',
  },
  methods: {
    title: 'Methods of measuring',
    words: 'From an oscilloscope, a detector, a meter or a heated load to a level.',
  },
  statements: {
    title: 'Statements and shapes',
    words: 'What limits, certificates and displays say as standard uncertainties.',
  },
  sums: { title: 'Adding up', words: 'Worst case, the law of propagation, and the whole distribution.' },
  readings: {
    title: 'Readings and comparisons',
    words: 'Means, scatter, lines, and whether two results agree.',
  },
  transfers: {
    title: 'Borrowing and calibrating',
    words: 'Corrections carried over from a better instrument, and pads measured at home.',
  },
  verdicts: { title: 'Verdicts', words: 'Inside, outside or can’t tell, with probabilities and risks.' },
  lengths: { title: 'Lengths', words: 'Gauge blocks and warm hands: the same sums on micrometres.' },
  units: {
    title: 'Units and constants',
    words: 'From volt, ohm, ampere and watt down to the defining constants.',
  },
  functions: {
    title: 'Special functions',
    words: 'The functions behind coverage factors and probabilities.',
  },
};
