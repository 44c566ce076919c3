/** The topics of the bank in the order in which they build on each other. */
export const TOPICS = {
  ratios: { title: 'Ratios and levels', words: 'Decibels, dBm, and what may be added to what.' },
  volts: { title: 'Volts and watts', words: 'Peak, peak to peak, RMS, and the power they bring.' },
  powers: { title: 'Kinds of power', words: 'Peak envelope, mean, radiated, and what is left as heat.' },
  lines: { title: 'Pads and lines', words: 'What a pad or a cable leaves, and what it keeps as heat.' },
  reflections: { title: 'Reflections', words: 'Standing-wave ratio, return loss, mismatch.' },
  methods: { title: 'Methods', words: 'Oscilloscope, detector, receiver, in-line meter, warm resistor.' },
  bands: { title: 'Tolerances and bands', words: 'What limits add up to, and how sure that is.' },
  verdicts: { title: 'Readings and verdicts', words: 'Scatter, agreement, inside, outside, can’t tell.' },
  traceability: { title: 'Calibration and traceability', words: 'What a reading was compared with.' },
  cautions: { title: 'Cautions', words: 'What can be burnt, broken or radiated, and how not to.' },
} as const;

export type TopicId = keyof typeof TOPICS;
