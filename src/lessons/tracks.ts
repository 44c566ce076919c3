/** The four tracks, in the order in which they build on each other. */
export const TRACKS = {
  decibels: {
    title: 'Decibels',
    words: 'Ratios, levels and which power is meant: the language in which everything else is written.',
  },
  traceability: {
    title: 'Traceability',
    words: 'What a reading was compared with, all the way up to the definition of the watt.',
  },
  stacking: {
    title: 'Stacking tolerances',
    words: 'How much several parts together may be wrong, and which of them decides.',
  },
  measuring: {
    title: 'Measuring a transmitter',
    words: 'Five ways to get from a socket to a result that can be defended.',
  },
} as const;

export type Track = keyof typeof TRACKS;
